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

/** The plan of a new tree over HTTP, as a stranger uses it. */
@EmptyServer
class NewTreeCalculatorTests {

	@Autowired
	private MockMvc web;

	@Test
	void aPlanHasItsDaysAndWithoutADayItsWeeks() throws Exception {
		Document page = page(200, "/calculators/new-tree?calliper=2%20in&planted=2027-05-03&count=1&flow=");
		assertThat(page.selectFirst(".lead").text()).startsWith("About 7.6 to 11 litres (2 to 3 gal) for each watering")
			.endsWith("until Thu 2 May 2030.");
		assertThat(page.select("tbody tr")).hasSize(26);
		assertThat(page.select("tbody tr").get(0).text()).contains("3 May", "9 May");
		assertThat(page.select(".why").text()).contains("University of Minnesota Extension");
		assertThat(page.select("ul.dates li").eachText()).hasSize(3)
			.first()
			.asString()
			.contains("Weeks 1 to 2", "daily");
		Document undated = page(200, "/calculators/new-tree?calliper=50&planted=");
		assertThat(undated.select("table")).isEmpty();
		assertThat(undated.select("ul.dates li")).hasSize(3);
		assertThat(page(200, "/calculators").select("a[href=/calculators/new-tree]")).hasSize(1);
		assertThat(page(200, "/calculators/new-tree").select("[role=alert]")).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "calliper=thin&planted=soon&count=few&flow=much;calliper,planted,count,flow",
					"calliper=4;calliper", "calliper=50&count=0;count", "calliper=50&planted=1700-01-01;planted",
					"calliper=;calliper" })
	void tellsWhatCantBeUsed(String query, String fields) throws Exception {
		Document page = page(400, "/calculators/new-tree?" + query);
		assertThat(page.select("[role=alert] a").eachAttr("href")).containsExactlyInAnyOrder(
				List.of(fields.split(",")).stream().map((one) -> "#" + one).toArray(String[]::new));
	}

	@Test
	void theApiAnswersTheSame() throws Exception {
		MockHttpServletResponse response = this.web
			.perform(get("/api/calculators/new-tree").param("calliper", "2 in").param("planted", "2027-05-03"))
			.andReturn()
			.getResponse();
		JsonNode plan = new JsonMapper().readTree(response.getContentAsString());
		assertThat(plan.get("lowLitres").asDouble()).isEqualTo(7.6);
		assertThat(plan.get("stages").get(2).get("to").asString()).isEqualTo("2030-05-02");
		assertThat(plan.get("weeks").get(0).get("days")).hasSize(7);
		assertThat(this.web.perform(get("/api/calculators/new-tree")).andReturn().getResponse().getStatus())
			.isEqualTo(400);
	}

	private Document page(int status, String address) throws Exception {
		MockHttpServletResponse response = this.web.perform(get(URI.create(address))).andReturn().getResponse();
		assertThat(response.getStatus()).as(address).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

}
