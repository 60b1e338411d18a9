package org.leafward.register.web;

import jakarta.servlet.http.Cookie;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.NamedState;
import org.leafward.measure.GeoPoint;
import org.leafward.register.NewSite;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.leafward.support.FarrowHouse;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** The weather of a site over HTTP, with the invented region behind it. */
@DemoServer
class SiteWeatherTests {

	private static final String TOKEN = DemoServer.TOKEN;

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Test
	void aSeasonComesWithHeatChillAndLabels() throws Exception {
		JsonNode season = JsonMapper.shared().readTree(api(200, "/season"));
		assertThat(season.get("station").asString()).startsWith("ZZKB");
		assertThat(season.at("/heat/normal")).hasSize(306);
		assertThat(season.at("/heat/goals")).hasSize(5);
		assertThat(season.at("/chill/normalWhole/portions").asDouble()).isPositive();
		assertThat(season.at("/labels/zone").asString()).matches("\\d+[ab]");
		assertThat(season.at("/labels/light")).hasSize(12);
		assertThat(season.at("/explanation/steps")).isNotEmpty();
	}

	@Test
	void statesAreTheNamedOnesOrThoseAskedFor() throws Exception {
		JsonNode named = JsonMapper.shared().readTree(api(200, "/states"));
		assertThat(named).hasSameSizeAs(NamedState.values());
		assertThat(named.get(0).get("state").asString()).isEqualTo("frost-ahead");
		assertThat(named.get(0).get("question").asString()).isEqualTo("forecast-min-at-most-32f");
		assertThat(named.get(0).get("holds").isBoolean()).isTrue();
		assertThat(named.findValuesAsString("state")).contains("drought");
		assertThat(named.toString()).contains("not the weekly drought map", "Standardized Precipitation Index",
				"(invented station)");
		JsonNode asked = JsonMapper.shared()
			.readTree(api(200,
					"/states?ask=forecast-min-at-most-100f&ask=dry-days-60d&ask=forecast-max-at-most-minus-40f"));
		assertThat(asked).hasSize(3);
		assertThat(asked.get(0).get("holds").asBoolean()).isTrue();
		assertThat(asked.get(1).get("state").asString()).isEqualTo("dry-days-60d");
		assertThat(asked.get(2).get("holds").asBoolean()).isFalse();
	}

	@Test
	void markersHoldDaylightAndTheEndOfDeIcing() throws Exception {
		JsonNode markers = JsonMapper.shared().readTree(api(200, "/markers?season=2027"));
		assertThat(markers.findValuesAsString("marker")).contains("de-icing-end", "upper-soil-warms-to",
				"daylight-lengthens-to", "daylight-shortens-to");
		for (JsonNode marker : markers) {
			if (marker.get("marker").asString().equals("daylight-lengthens-to")) {
				assertThat(marker.get("daylight").asString()).isEqualTo("14h");
				assertThat(marker.get("date").asString()).startsWith("2027-0");
			}
			if (marker.get("marker").asString().equals("de-icing-end")) {
				assertThat(marker.get("explanation").toString()).contains("An estimate");
				assertThat(marker.get("date").asString()).startsWith("2027-0");
			}
		}
	}

	@Test
	void waterComesDayByDay() throws Exception {
		JsonNode water = JsonMapper.shared().readTree(api(200, "/water?from=2025-06-01&to=2025-06-30"));
		assertThat(water.get("days")).hasSize(30);
		JsonNode deep = JsonMapper.shared()
			.readTree(api(200, "/water?from=2025-06-01&to=2025-06-30&rootDepthMetres=0.9&plantFactor=0.8"));
		assertThat(deep.get("availableMillimetres").asDouble())
			.isEqualTo(2 * water.get("availableMillimetres").asDouble());
	}

	@ParameterizedTest
	@CsvSource({ "/season?season=1500, season 1500 is outside", "/season?season=spring, not a whole number",
			"/water?from=2025-06-01, to is missing", "/states?ask=frost, there is no state 'frost'",
			"/states?ask=dry-days-99d, is outside 1 to 90", "/water?from=2025-06-02&to=2025-06-01, is no period",
			"/water?from=2020-06-01&to=2025-06-01, more than 1096",
			"/water?from=2025-06-01&to=2025-06-02&rootDepthMetres=9, rootDepthMetres 9.0 is outside",
			"/water?from=2025-06-01&to=2025-06-02&plantFactor=much, is not a number" })
	void whatCantBeAnsweredIsRefused(String address, String words) throws Exception {
		assertThat(api(400, address)).contains(words).contains("\"mend\":");
	}

	@Test
	void thereIsNoWeatherOfASiteThatIsNotThere() throws Exception {
		for (String what : List.of("season", "water?from=2025-06-01&to=2025-06-02")) {
			assertThat(this.web
				.perform(get("/api/v1/sites/00000000-0000-4000-8000-000000000000/" + what).header("Authorization",
						"Bearer " + TOKEN))
				.andReturn()
				.getResponse()
				.getStatus()).isEqualTo(404);
		}
	}

	@Test
	void thePageSaysWhatMattersFirstAndDrawsThree() throws Exception {
		Site site = site();
		Document page = Jsoup.parse(page(200, site, site.owner().value().toString(), ""));
		assertThat(page.selectFirst(".lead").text()).matches(".*(degree-days so far|Heat is counted from).*");
		assertThat(page.select("svg.picture")).hasSize(3);
		assertThat(page.select("details table")).hasSize(4);
		if (!page.selectFirst(".lead").text().contains("Heat is counted from")) {
			assertThat(page.text()).contains("How far to trust the sum", "other stations would give");
		}
		assertThat(page.text()).contains("Waterings");
		assertThat(page.text()).contains("The forecast for", "is invented", "half zone", "estimates",
				"What care waits for", "frost ahead", "Standardized Precipitation Index");
		Document wrong = Jsoup
			.parse(page(400, site, site.owner().value().toString(), "?rootDepthMetres=9&plantFactor=0.5"));
		assertThat(wrong.select("svg.water-balance")).isEmpty();
		assertThat(wrong.getElementById("rootDepthMetres").attr("aria-invalid")).isEqualTo("true");
	}

	@Test
	void aWateringIsRecordedDrawnAndTakenBack() throws Exception {
		Site site = site();
		String owner = site.owner().value().toString();
		String day = LocalDate.ofInstant(Instant.now(), site.zone()).minusDays(9).toString();
		int before = Jsoup.parse(page(200, site, owner, "")).select("rect.watering-bar").size();
		Cookie session = session(owner);
		MockHttpServletResponse wrong = send(session, "/sites/" + site.id() + "/waterings", "day", "2999-13-01",
				"amount", "a lot", "unit", "gallons", "note", "kept");
		assertThat(wrong.getStatus()).isEqualTo(400);
		Document form = Jsoup.parse(wrong.getContentAsString());
		assertThat(form.select("[role=alert] a").eachAttr("href")).containsExactly("#day", "#amount", "#area");
		assertThat(form.getElementById("amount").val()).isEqualTo("a lot");
		assertThat(form.getElementById("note").val()).isEqualTo("kept");
		MockHttpServletResponse saved = send(session, "/sites/" + site.id() + "/waterings", "day", day, "amount",
				"62,3", "unit", "gallons", "area", "100", "note", "hose");
		assertThat(saved.getStatus()).isEqualTo(302);
		Document page = Jsoup.parse(page(200, site, owner, ""));
		assertThat(page.select("rect.watering-bar")).hasSize(before + 1);
		assertThat(page.select(".waterings li").text()).contains("25 mm (1 in)", "hose; entered by");
		JsonNode listed = JsonMapper.shared()
			.readTree(api(200, "/waterings?size=50"))
			.valueStream()
			.filter((one) -> one.get("day").asString().equals(day))
			.findFirst()
			.orElseThrow();
		String undo = "/sites/" + site.id() + "/waterings/" + listed.get("id").asString() + "/undo";
		assertThat(send(session(other(site)), undo).getStatus()).as("a stranger").isEqualTo(404);
		assertThat(
				send(session(other(site)), "/sites/" + site.id() + "/waterings", "day", day, "amount", "5").getStatus())
			.isEqualTo(404);
		assertThat(send(session, undo).getStatus()).isEqualTo(302);
		assertThat(Jsoup.parse(page(200, site, owner, "")).select("rect.watering-bar")).hasSize(before);
	}

	@Test
	void wateringsComeAndGoByApi() throws Exception {
		String address = "/api/v1/sites/" + site().id() + "/waterings";
		String day = LocalDate.ofInstant(Instant.now(), site().zone()).minusDays(3).toString();
		MockHttpServletResponse created = this.web
			.perform(post(address).header("Authorization", "Bearer " + TOKEN)
				.contentType("application/json")
				.content("{\"day\":\"%s\",\"amount\":0.5,\"unit\":\"inches\"}".formatted(day)))
			.andReturn()
			.getResponse();
		assertThat(created.getStatus()).as(created.getContentAsString()).isEqualTo(201);
		JsonNode watering = JsonMapper.shared().readTree(created.getContentAsString());
		assertThat(watering.get("millimetres").asDouble()).isEqualTo(12.7);
		JsonNode water = JsonMapper.shared().readTree(api(200, "/water?from=%s&to=%s".formatted(day, day)));
		assertThat(water.at("/days/0/watering").asDouble()).isEqualTo(12.7);
		String refused = this.web
			.perform(post(address).header("Authorization", "Bearer " + TOKEN)
				.contentType("application/json")
				.content("{\"day\":\"soon\",\"amount\":\"\"}"))
			.andReturn()
			.getResponse()
			.getContentAsString();
		assertThat(JsonMapper.shared().readTree(refused).get("problems")).hasSize(2);
		assertThat(this.web
			.perform(delete(address + "/" + watering.get("id").asString()).header("Authorization", "Bearer " + TOKEN))
			.andReturn()
			.getResponse()
			.getStatus()).isEqualTo(204);
		assertThat(api(400, "/waterings?size=1000")).contains("\"mend\":");
	}

	@Test
	void aSiteFormTellsAllThatIsWrong() throws Exception {
		MockHttpServletResponse wrong = send(session(site().owner().value().toString()), "/sites/new", "name", "",
				"latitude", "100", "longitude", "200", "elevationMetres", "1", "zone", "Nowhere/Here", "county",
				"Kept");
		assertThat(wrong.getStatus()).isEqualTo(400);
		Document form = Jsoup.parse(wrong.getContentAsString());
		assertThat(form.select("[role=alert] a").eachAttr("href")).containsExactly("#name", "#latitude", "#longitude",
				"#zone");
		assertThat(form.select("[aria-invalid=true]").eachAttr("id")).containsExactly("name", "latitude", "longitude",
				"zone");
		assertThat(form.getElementById("county").val()).isEqualTo("Kept");
	}

	@Test
	void othersDontSeeThePage() throws Exception {
		Site site = site();
		assertThat(page(404, site, other(site), "")).doesNotContain(site.name());
	}

	private String other(Site site) {
		return this.register.sites(0, 50)
			.stream()
			.map((one) -> one.owner().value().toString())
			.filter((owner) -> !owner.equals(site.owner().value().toString()))
			.findFirst()
			.orElseThrow();
	}

	@Test
	void whereNoStationIsNearItIsSaid() throws Exception {
		NewSite far = new NewSite("Zenith", "Nowhere", new GeoPoint(10, 10, 0), ZoneId.of("UTC"), SoilTexture.LOAM,
				Sun.FULL_SUN, Wind.AVERAGE);
		Site site = this.register.addSite(site().owner(), far);
		Document page = Jsoup.parse(page(200, site, site.owner().value().toString(), ""));
		assertThat(page.selectFirst(".lead").text()).startsWith("No weather station");
		assertThat(page.select("svg.picture")).isEmpty();
		assertThat(page.text()).contains("isn’t known", "Light by month");
		String season = this.web
			.perform(get("/api/v1/sites/" + site.id() + "/season").header("Authorization", "Bearer " + TOKEN))
			.andReturn()
			.getResponse()
			.getContentAsString();
		assertThat(season).contains("\"heat\":null", "\"missing\":\"No weather station");
		assertThat(
				this.web
					.perform(get("/api/v1/sites/" + site.id() + "/water?from=2025-06-01&to=2025-06-02")
						.header("Authorization", "Bearer " + TOKEN))
					.andReturn()
					.getResponse()
					.getStatus())
			.isEqualTo(404);
	}

	private Site site() {
		return FarrowHouse.in(this.register);
	}

	private Cookie session(String person) throws Exception {
		return this.web.perform(post("/people/" + person).with(csrf())).andReturn().getResponse().getCookie("SESSION");
	}

	private MockHttpServletResponse send(Cookie session, String address, String... fields) throws Exception {
		MockHttpServletRequestBuilder request = post(address).with(csrf()).cookie(session);
		for (int i = 0; i < fields.length; i += 2) {
			request.param(fields[i], fields[i + 1]);
		}
		return this.web.perform(request).andReturn().getResponse();
	}

	private String page(int status, Site site, String person, String query) throws Exception {
		Cookie session = session(person);
		MockHttpServletResponse response = this.web
			.perform(get("/sites/" + site.id() + "/weather" + query).cookie(session))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).isEqualTo(status);
		return response.getContentAsString();
	}

	private String api(int status, String address) throws Exception {
		MockHttpServletResponse response = this.web
			.perform(get("/api/v1/sites/" + site().id() + address).header("Authorization", "Bearer " + TOKEN))
			.andReturn()
			.getResponse();
		assertThat(response.getContentAsString()).isNotEmpty();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return response.getContentAsString();
	}

}
