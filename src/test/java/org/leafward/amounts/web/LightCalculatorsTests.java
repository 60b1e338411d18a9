package org.leafward.amounts.web;

import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.measure.GeoPoint;
import org.leafward.support.EmptyServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** The calculators of light and cover over HTTP. */
@EmptyServer
class LightCalculatorsTests {

	private static final String TOKEN = EmptyServer.TOKEN;

	private static final String RAMP = "latitude=42.1&longitude=-91.6&zone=America/Chicago&date=2027-05-20"
			+ "&start=south-window&site=full-sun";

	@Autowired
	private MockMvc web;

	@Test
	void theFormComesEmptyWithWhatIsUsual() throws Exception {
		Document page = page(200, "/calculators/light");
		assertThat(page.getElementById("days").val()).isEqualTo("14");
		assertThat(page.getElementById("date").val()).matches("\\d{4}-\\d\\d-\\d\\d");
		assertThat(page.select("#site option[selected]").val()).isEqualTo("full-sun");
		assertThat(page.select("[role=alert], svg.light-ramp")).isEmpty();
		assertThat(page.select(".caution").text()).contains("GFCI", "heavy", "local rules");
		assertThat(page("/calculators/cover").select(".caution").text()).contains("under cloth");
		for (var one : Calculators.ALL) {
			assertThat(page(one.value()).select("form[method=get]").attr("action")).isEqualTo(one.value());
		}
	}

	@Test
	void aRampSaysTheResultFirstAndShowsEveryDay() throws Exception {
		Document page = page(200, "/calculators/light?" + RAMP);
		assertThat(page.selectFirst(".lead").text())
			.isEqualTo("Begin on Thu 6 May 2027; after 14 days it can be set out on Thu 20 May 2027.");
		assertThat(page.select("tbody tr")).hasSize(14);
		assertThat(page.select("tbody tr").first().text()).contains("3 hours outside from", "shade");
		assertThat(page.select("tbody tr").last().text()).contains("Out day and night");
		assertThat(page.select("svg.light-ramp path.ramp-light")).hasSize(1);
		assertThat(page.select(".why").text()).contains("equations 21 and 37", "from memory");
		assertThat(page.getElementById("latitude").val()).as("the form keeps what was given").isEqualTo("42.1");
	}

	@Test
	void heldDaysMoveTheRest() throws Exception {
		Document page = page(200, "/calculators/light?" + RAMP + "&held=3, 4");
		assertThat(page.selectFirst(".lead").text()).contains("after 16 days", "Sat 22 May 2027");
		assertThat(page.select("rect.mark-hold-off")).hasSize(2);
		assertThat(page.select("tbody tr").get(2).text()).contains("It stays in. Step 3 waits", "inside");
		assertThat(page.select("tbody tr").get(4).text()).contains("outside from");
		Document never = page(200, "/calculators/light?" + RAMP + "&days=3&held=1 2 3 4 5 6");
		assertThat(never.selectFirst(".lead").text()).contains("isn’t hardened");
	}

	@Test
	void whatHasTheLightAlreadyGetsAShortRampThatEndsOnTheSameDay() throws Exception {
		Document page = page(200,
				"/calculators/light?latitude=42.1&longitude=-91.6&zone=America/Chicago&date=2027-05-20&start=glasshouse&site=part-shade");
		assertThat(page.selectFirst(".lead").text()).contains("after 5 days", "Thu 20 May 2027");
		assertThat(page.text()).contains("It has the light already, and only wind and cooler air are new to it");
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "latitude=x&longitude=y&zone=Mars/One&date=soon;latitude,longitude,zone,date",
					"latitude=142&longitude=0&zone=UTC&date=2027-05-01;latitude",
					"latitude=42&longitude=-91&zone=Asia/Tokyo&date=2027-05-01;zone",
					"latitude=42&longitude=0&zone=UTC&date=2027-05-01&days=90;days",
					"latitude=42&longitude=0&zone=UTC&date=2027-05-01&start=lamp;level,hours",
					"latitude=42&longitude=0&zone=UTC&date=2027-05-01&start=lamp&level=1e9&hours=30&unit=lux;level",
					"latitude=42&longitude=0&zone=UTC&date=2027-05-01&held=3,900;held",
					"latitude=42&longitude=0&zone=UTC&date=2027-05-01&nightCelsius=90&site=moon;site,nightCelsius",
					"latitude=85&longitude=0&zone=UTC&date=2027-12-24;date",
					"latitude=42&longitude=0&zone=UTC&date=%2B999999999-12-31;date" })
	void whatCantBeUsedIsToldAtItsFieldAndKept(String query, String fields) throws Exception {
		Document page = page(400, "/calculators/light?" + query);
		assertThat(page.select("[role=alert] a").eachAttr("href")).containsExactlyInAnyOrder(
				List.of(fields.split(",")).stream().map((one) -> "#" + one).toArray(String[]::new));
		assertThat(page.select("svg.light-ramp")).isEmpty();
		assertThat(page.select("[aria-invalid=true]").eachAttr("id")).containsExactlyInAnyOrder(fields.split(","));
		if (query.contains("latitude=x")) {
			assertThat(page.getElementById("date").val()).isEqualTo("soon");
		}
	}

	/** The last day by hand: the clear sky of FAO-56 at 2.057 mol/MJ. */
	@Test
	void theApiGivesTheSameDays() throws Exception {
		JsonNode ramp = json(200, "/api/calculators/light?" + RAMP + "&held=3");
		assertThat(ramp.get("days")).hasSize(15);
		assertThat(ramp.get("readyOn").asString()).isEqualTo("2027-05-21");
		JsonNode last = ramp.get("days").get(14);
		assertThat(last.get("siteLight").asDouble())
			.isCloseTo(DailyLight.clearSky(new GeoPoint(42.1, -91.6, 0), LocalDate.of(2027, 5, 20)), within(0.05));
		assertThat(last.get("place").asString()).isEqualTo("its-place");
		assertThat(ramp.at("/days/2/held").asBoolean()).isTrue();
		assertThat(ramp.at("/days/2/hoursOutside").asInt()).isZero();
		assertThat(ramp.at("/days/7/sunUntil").asString()).matches("(09|1\\d):(00|15|30|45)");
		JsonNode lamp = json(200, "/api/calculators/light?latitude=42&longitude=0&zone=UTC&date=2027-05-01&start=lamp"
				+ "&level=7400&unit=lux&source=cool-white-fluorescent&hours=14");
		// 7,400 lx of a cool white tube are 100 µmol/m²s (74 lx each), 5.04 mol/m² in 14
		// hours.
		assertThat(lamp.get("presentLight").asDouble()).isEqualTo(5.0);
		assertThat(lamp.get("words").asString()).contains("stands under a lamp of 100 µmol/m²s for 14 hours");
		JsonNode wrong = json(400, "/api/calculators/light?latitude=x&longitude=y&zone=UTC&date=2027-05-20");
		assertThat(wrong.toString()).contains("latitude", "longitude", "\"mend\":");
		JsonNode night = json(200, "/api/calculators/cover?forecast=36&hurt=33&unit=fahrenheit");
		assertThat(night.get("verdict").asString()).isEqualTo("cover");
		assertThat(night.get("plantCelsius").asDouble()).isEqualTo(-0.8);
		assertThat(json(400, "/api/calculators/cover?forecast=cold").get("problems")).hasSize(2);
		assertThat(json(200, "/api/docs").toString()).contains("/api/calculators/light", "nightCelsius");
	}

	@Test
	void aNightIsJudgedInBothUnits() throws Exception {
		Document page = page(200, "/calculators/cover?forecast=36&hurt=33&unit=fahrenheit&sky=clear-and-calm&have=any");
		assertThat(page.selectFirst(".lead").text()).startsWith("Cover with heavy or double row cover");
		assertThat(page("/calculators/cover?forecast=2,2&hurt=0.6&unit=celsius").selectFirst(".lead").text())
			.startsWith("Cover with heavy or double row cover");
		assertThat(page("/calculators/cover?forecast=45&hurt=33&unit=fahrenheit").selectFirst(".lead").text())
			.startsWith("No cover needed");
		Document wrong = page(400, "/calculators/cover?forecast=200&hurt=33&have=tent&unit=celsius");
		assertThat(wrong.select("[aria-invalid=true]").eachAttr("id")).containsExactly("have");
		assertThat(page(400, "/calculators/cover?forecast=200&hurt=3").select("[aria-invalid=true]").eachAttr("id"))
			.containsExactly("forecast");
	}

	private Document page(String address) throws Exception {
		return page(200, address);
	}

	private Document page(int status, String address) throws Exception {
		Cookie session = this.web.perform(post("/sign-in").param("token", TOKEN).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
		MockHttpServletResponse response = this.web.perform(get(uri(address)).cookie(session))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

	private static URI uri(String address) {
		return URI.create(address.replace(" ", "%20"));
	}

	private JsonNode json(int status, String address) throws Exception {
		MockHttpServletResponse response = this.web
			.perform(get(uri(address)).header("Authorization", "Bearer " + TOKEN))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return JsonMapper.shared().readTree(response.getContentAsString());
	}

}
