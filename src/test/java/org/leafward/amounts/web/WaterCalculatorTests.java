package org.leafward.amounts.web;

import java.net.URI;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.support.EmptyServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

/** The calculator of water over HTTP, as a stranger uses it. */
@EmptyServer
class WaterCalculatorTests {

	@Autowired
	private MockMvc web;

	@Test
	void theFormComesWithWhatIsUsual() throws Exception {
		Document page = page(200, "/calculators/water");
		assertThat(page.select("#soil option[selected]").val()).isEqualTo("loam");
		assertThat(page.select(".caution").text()).contains("vacuum breaker", "GFCI", "local codes");
		assertThat(page.select("[role=alert]")).isEmpty();
	}

	@Test
	void saysTheResultFirstInBothUnits() throws Exception {
		Document page = page(200, "/calculators/water?what=bed&soil=clay&area=10&flow=12&depth=30 cm&missing=25&rain=0"
			.replace(" ", "%20"));
		assertThat(page.selectFirst(".lead").text()).isEqualTo(
				"About 250 litres (66 gal): 21 minutes in all, in 5 rounds an hour apart; that wets the soil to 30 cm (12 in).");
		assertThat(page.select(".why").text()).contains("FAO Irrigation and Drainage Paper 56", "from memory");
		assertThat(page.getElementById("missing").val()).isEqualTo("25");
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "what=young-tree&calliper=2%20in&weeks=20;7.6 to 11 litres (2 to 3 gal)",
					"what=tree&calliper=4%20in&dryDays=20;150 to 230 litres (40 to 60 gal)",
					"what=young-shrub&pot=12;3 to 4 litres", "what=pot&pot=5%20gal;until a tenth to a fifth runs out" })
	void answersForTreesAndPots(String query, String words) throws Exception {
		assertThat(page(200, "/calculators/water?" + query).selectFirst(".lead").text()).contains(words);
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "what=bed&soil=mud&area=x&flow=much&depth=900;area,flow,soil",
					"what=tree&dryDays=-1;calliper,dryDays", "what=pot&warmest=mild;pot,warmest",
					"what=bed&depth=9000;depth", "what=lake;what" })
	void tellsWhatCantBeUsed(String query, String fields) throws Exception {
		Document page = page(400, "/calculators/water?" + query);
		assertThat(page.select("[role=alert] a").eachAttr("href")).containsExactlyInAnyOrder(
				List.of(fields.split(",")).stream().map((one) -> "#" + one).toArray(String[]::new));
	}

	/** Colorado State University Extension, Fact Sheet 7.211: above 40 °F, thawed. */
	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "frozen=true;Not today. The ground is frozen", "warmest=39%20F;Not today. The day gets no warmer",
					"warmest=45%20F;About ", "warmest=5%20C;About ", "frozen=true&warmest=60F;Not today." })
	void inWinterItTellsWhetherToday(String query, String words) throws Exception {
		assertThat(page(200, "/calculators/water?what=bed&area=10&" + query).selectFirst(".lead").text())
			.startsWith(words);
	}

	@Test
	void theApiAnswersStrangersToo() throws Exception {
		JsonNode answer = JsonMapper.shared()
			.readTree(answer("/api/calculators/water?what=bed&area=100%20sq%20ft&missing=1%20in").getContentAsString());
		assertThat(answer.get("words").asString()).contains("240 litres (62 gal)");
		assertThat(answer.at("/explanation/steps")).isNotEmpty();
		assertThat(answer("/api/calculators/water?what=bed&depth=deep").getStatus()).isEqualTo(400);
	}

	private MockHttpServletResponse answer(String address) throws Exception {
		return this.web.perform(get(URI.create(address))).andReturn().getResponse();
	}

	private Document page(int status, String address) throws Exception {
		MockHttpServletResponse response = answer(address);
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

}
