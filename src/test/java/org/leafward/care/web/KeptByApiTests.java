package org.leafward.care.web;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.care.SiteYears;
import org.leafward.climate.Microclimate;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.leafward.support.FarrowHouse;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;

/** Thermometer, kept calculations and beds by API. */
@DemoServer
class KeptByApiTests {

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private SiteYears years;

	private Site site() {
		Site like = FarrowHouse.in(this.register);
		return this.register.addSite(like.owner(), new NewSite("By API", like.county(), like.point(), like.zone(),
				like.soil(), like.sun(), like.wind(), Microclimate.NONE, "", Set.of()));
	}

	private Planting pot(Site site) {
		return this.register
			.addPlantings(site.id(), List.of(new NewPlanting(new SpeciesId("salvia-rosmarinus"), "rosemary", 1,
					LocalDate.of(2024, 5, 1), Placement.CONTAINER, true, false)))
			.get(0);
	}

	@Test
	void aThermometerIsComparedUsedAndForgotten() throws Exception {
		Site site = site();
		String at = "/api/v1/sites/" + site.id() + "/thermometer";
		LocalDate night = this.years.today(site).minusDays(20);
		JsonNode first = json(post(at + "/compared"), readings(night, 0), 200);
		double estimated = first.get("nights").get(0).get("estimated").asDouble();
		JsonNode colder = json(post(at + "/compared"), readings(night, estimated - 2), 200);
		assertThat(colder.get("offsetCelsius").asDouble()).isCloseTo(-2, within(0.06));
		assertThat(colder.get("few").asBoolean()).isTrue();
		assertThat(colder.get("markers")).isNotEmpty();
		assertThat(offset(site)).as("looking changes nothing").isNull();
		json(put(at), readings(night, estimated - 2), 200);
		assertThat(offset(site)).isCloseTo(-2, within(0.06));
		json(put(at), "{\"readings\": \"soon\"}", 400);
		json(put(at), "{}", 400);
		json(put(at), "{\"readings\": \"2020-01-01 3\", \"unit\": \"kelvin\"}", 400);
		assertThat(offset(site)).as("what is refused changes nothing").isCloseTo(-2, within(0.06));
		assertThat(ask(delete(at), "", 204).getContentAsString()).isEmpty();
		assertThat(offset(site)).isNull();
	}

	private Double offset(Site site) {
		return this.register.require(site.id()).microclimate().measuredOffsetCelsius();
	}

	private static String readings(LocalDate night, double celsius) {
		return "{\"readings\": \"%s %s\"}".formatted(night, String.format(Locale.ROOT, "%.2f", celsius));
	}

	@Test
	void anAnswerIsLookedAtKeptListedAndDeleted() throws Exception {
		Site site = site();
		Planting planting = pot(site);
		String at = "/api/v1/plantings/" + planting.id() + "/kept";
		String water = "{\"calculator\": \"water\", \"inputs\": {\"what\": \"pot\", \"pot\": \"5\"}}";
		JsonNode looked = json(post(at + "/looked-at"), water, 200);
		assertThat(looked.get("changes").get(0).get("now").asString()).contains("5");
		assertThat(pot(planting)).as("looking changes nothing").isNull();
		json(post(at), water, 201);
		json(post(at), water, 201);
		assertThat(pot(planting)).isEqualTo(5);
		JsonNode kept = json(get(at), "", 200);
		assertThat(kept).as("the same answer on the same day is kept once").hasSize(1);
		assertThat(kept.get(0).get("inputs").get("pot").asString()).isEqualTo("5");
		json(post(at), "{\"calculator\": \"tea\"}", 400);
		json(post(at), "{\"calculator\": \"water\", \"inputs\": {\"what\": \"pot\", \"pot\": \"1e309\"}}", 400);
		ask(delete("/api/v1/sites/" + site.id() + "/kept/" + kept.get(0).get("id").asString()), "", 204);
		assertThat(json(get(at), "", 200)).isEmpty();
	}

	private Double pot(Planting planting) {
		return this.register.find(planting.id()).orElseThrow().size().potLitres();
	}

	@Test
	void bedsAreMadeFilledChangedAndRemoved() throws Exception {
		Site site = site();
		Planting planting = pot(site);
		String at = "/api/v1/sites/" + site.id() + "/beds";
		String bed = json(post(at), "{\"name\": \"front\", \"sun\": \"shade\", \"flow\": \"3 gal/min\"}", 201).get("id")
			.asString();
		json(post(at), "{\"name\": \"FRONT\"}", 400);
		json(post(at), "{\"name\": \"back\", \"sun\": \"dusk\"}", 400);
		JsonNode placed = json(put("/api/v1/plantings/" + planting.id() + "/bed"), "{\"bed\": \"" + bed + "\"}", 200);
		assertThat(placed.get("bed").asString()).isEqualTo(bed);
		json(put("/api/v1/plantings/" + pot(site()).id() + "/bed"), "{\"bed\": \"" + bed + "\"}", 400);
		JsonNode changed = json(put("/api/v1/beds/" + bed), "{\"name\": \"front bed\"}", 200);
		assertThat(changed.get("name").asString()).isEqualTo("front bed");
		assertThat(changed.get("sun").isNull()).isTrue();
		assertThat(json(get(at), "", 200)).hasSize(1);
		ask(delete("/api/v1/beds/" + bed), "", 204);
		assertThat(json(get(at), "", 200)).isEmpty();
		assertThat(this.register.find(planting.id()).orElseThrow().bed()).isNull();
	}

	private JsonNode json(MockHttpServletRequestBuilder request, String body, int status) throws Exception {
		return JsonMapper.shared().readTree(ask(request, body, status).getContentAsString(StandardCharsets.UTF_8));
	}

	private MockHttpServletResponse ask(MockHttpServletRequestBuilder request, String body, int status)
			throws Exception {
		if (!body.isEmpty()) {
			request.contentType(MediaType.APPLICATION_JSON).content(body);
		}
		MockHttpServletResponse answer = this.web.perform(request.header("Authorization", "Bearer " + DemoServer.TOKEN))
			.andReturn()
			.getResponse();
		assertThat(answer.getStatus()).as(answer.getContentAsString(StandardCharsets.UTF_8)).isEqualTo(status);
		return answer;
	}

}
