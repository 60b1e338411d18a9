package org.leafward.amounts.web;

import java.net.URI;
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
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

/** The calculators of salt and soil tests over HTTP, asked by a stranger. */
@EmptyServer
class SaltCalculatorsTests {

	private static final String SODIC = "ph=8.8&ec=2&esp=25&cec=15&area=10";

	@Autowired
	private MockMvc web;

	@Test
	void aStrangerFindsThem() throws Exception {
		Document page = page(200, "/calculators");
		assertThat(page.select("main a").eachAttr("href")).contains("/calculators/salt", "/calculators/soil-test");
		assertThat(page.select("nav [aria-current=page]").text()).isEqualTo("Calculators");
		for (String address : new String[] { "/calculators/salt", "/calculators/soil-test" }) {
			Document form = page(200, address);
			assertThat(form.select("form[method=get]").attr("action")).isEqualTo(address);
			assertThat(form.select("[role=alert], .why, form[method=post] input[name=_csrf]")).isEmpty();
			assertThat(form.select(".caution").text()).contains("backflow", "GFCI");
			assertThat(form.select("#drainage option[selected]").val()).isEqualTo("untested");
		}
		assertThat(page(200, "/calculators/soil-test").select(".caution").text()).contains("dust mask", "lift", "well",
				"label", "local rules");
		assertThat(page(200, "/calculators/salt").select(".caution").text()).contains("drains", "drinking water",
				"well", "heavy");
	}

	/**
	 * Purdue and A&amp;L Great Lakes Laboratories, read: about 372 gallons on 100 square
	 * feet take half of the salt out of a foot of soil.
	 */
	@Test
	void saltSaysTheResultFirst() throws Exception {
		Document page = page(200,
				"/calculators/salt?area=100 sq ft&rootDepth=1 ft&drainage=good&walk=true&spray=true&product=sodium-chloride");
		assertThat(page.selectFirst(".lead").text()).startsWith("About 1,400 litres (370 gal) of clear water");
		assertThat(page.select(".why").text()).contains("Reeve", "from memory", "Purdue");
		assertThat(page.select("dl.facts").text()).contains("Shovel first", "rinse them", "burlap", "tested for sodium")
			.doesNotContain("ploughed");
		assertThat(page.getElementById("area").val()).as("the form keeps what was given").isEqualTo("100 sq ft");
		assertThat(page.getElementById("walk").hasAttr("checked")).isTrue();
		assertThat(page.getElementById("road").hasAttr("checked")).isFalse();
		Document feed = page(200, "/calculators/salt?area=10&cause=fertiliser&ec=5 mmhos/cm&wanted=2&waterEc=0.5");
		assertThat(feed.selectFirst(".lead").text()).contains("as soon as you can");
		assertThat(feed.select("dl.facts")).isEmpty();
		// FAO-56, page 180: 0.5/(5 x 2 - 0.5) is 5 %.
		assertThat(feed.select(".why").text()).contains("5 % of what the bed is watered with");
	}

	@Test
	void aSoilTestSaysTheResultFirst() throws Exception {
		Document page = page(200, "/calculators/soil-test?" + SODIC);
		assertThat(page.selectFirst(".lead").text()).startsWith("The soil is sodic. Spread about 5.9 kg (13 lb)");
		assertThat(page.select("main").text()).contains("Test again: Next spring");
		assertThat(page.select("#soil option[selected]").val()).as("the form shows what counted").isEqualTo("loam");
		assertThat(page.select(".why > details > summary").text()).contains("What the test asks for",
				"gypsum, then water");
		assertThat(page(200, "/calculators/soil-test?ph=7&ec=1&sar=3&area=10").selectFirst(".lead").text())
			.isEqualTo("The soil is normal. Gypsum does nothing here: there is no sodium to drive out.");
		assertThat(page(200, "/calculators/soil-test?ph=7,8&ec=3500 µS/cm&extract=one-to-two&soil=clay&sar=3&area=10")
			.selectFirst(".lead")
			.text()).startsWith("The soil is saline. Gypsum does nothing here but add salt").contains("Leach with");
		assertThat(page(200, "/calculators/soil-test?" + SODIC + "&drainage=none").selectFirst(".lead").text())
			.contains("as long as water can’t drain");
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {
			"salt?area=big&rootDepth=3 miles&ec=much&wanted=x&drainage=well&waterEc=-1&product=magic&cause=rain;"
					+ "area,rootDepth,ec,wanted,drainage,waterEc,product,cause",
			"salt?area=10&ec=40;wanted", "salt?area=10&rootDepth=3 m;rootDepth",
			"salt?area=10&soil=moon&extract=tea&ec=3;soil,extract", "salt?area=10&waterEc=5;waterEc",
			"salt?area=0;area", "salt?area=1&ec=1000;ec", "soil-test?ph=&ec=&area=;ph,ec,sar,area",
			"soil-test?ph=7&ec=1&sar=900&area=1;sar", "soil-test?ph=70&ec=1&sar=9&area=1;ph",
			"soil-test?ph=7&ec=1&esp=90&area=1;esp",
			"soil-test?ph=7&ec=1&esp=9&cec=lots&area=1&depth=deep&purity=1e400&espWanted=ten;"
					+ "cec,depth,purity,espWanted",
			"soil-test?ph=8&ec=1&esp=20&cec=9&area=1&espWanted=20;espWanted",
			"soil-test?ph=8&ec=1&esp=20&cec=9&area=1&purity=0;purity" })
	void whatCantBeUsedIsToldAtItsFieldAndKept(String query, String fields) throws Exception {
		Document page = page(400, "/calculators/" + query);
		assertThat(page.select("[aria-invalid=true]").eachAttr("id")).containsExactlyInAnyOrder(fields.split(","));
		assertThat(page.select("[role=alert] a")).hasSize(fields.split(",").length);
		assertThat(page.select(".why")).isEmpty();
		assertThat(page.select(".wrong-text").text()).doesNotContain("null", "NaN", "Exception");
		if (query.contains("area=big")) {
			assertThat(page.getElementById("area").val()).isEqualTo("big");
			assertThat(page.getElementById("ec").val()).isEqualTo("much");
		}
	}

	@Test
	void theApiGivesTheSame() throws Exception {
		JsonNode salt = json(200, "/api/calculators/salt?area=10&rootDepth=30&ec=10&drainage=slow");
		assertThat(salt.at("/leaching/outcome").asString()).isEqualTo("leach");
		assertThat(salt.at("/leaching/millimetres").asDouble()).isEqualTo(375);
		assertThat(salt.at("/leaching/litres").asDouble()).isEqualTo(3750);
		assertThat(salt.at("/leaching/passes").asInt()).isEqualTo(15);
		assertThat(salt.at("/explanation/steps")).isNotEmpty();
		assertThat(json(200, "/api/calculators/salt?rootDepth=30").at("/leaching/litres").isNull()).isTrue();
		JsonNode test = json(200, "/api/calculators/soil-test?" + SODIC);
		assertThat(test.get("soilClass").asString()).isEqualTo("sodic");
		assertThat(test.get("remedy").asString()).isEqualTo("gypsum");
		assertThat(test.get("gypsumKilograms").asDouble()).isCloseTo(5.93, within(0.01));
		assertThat(test.get("applications")).hasSize(1);
		JsonNode wrong = json(400, "/api/calculators/soil-test?ph=x&ec=y&area=z");
		assertThat(wrong.get("problems")).hasSize(4);
		assertThat(wrong.toString()).contains("\"mend\":");
	}

	private Document page(int status, String address) throws Exception {
		MockHttpServletResponse response = answer(status, address);
		return Jsoup.parse(response.getContentAsString());
	}

	private JsonNode json(int status, String address) throws Exception {
		return JsonMapper.shared().readTree(answer(status, address).getContentAsString());
	}

	private MockHttpServletResponse answer(int status, String address) throws Exception {
		MockHttpServletResponse response = this.web.perform(get(URI.create(address.replace(" ", "%20"))))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return response;
	}

}
