package org.leafward;

import jakarta.servlet.http.Cookie;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Microclimate.Lie;
import org.leafward.climate.Observations;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.EmptyServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.patch;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

/** A site that turns out to lie in a hollow gets other dates and other tasks. */
@EmptyServer
class PlaceChangeTests {

	private static final String TOKEN = EmptyServer.TOKEN;

	private static final GeoPoint POINT = new GeoPoint(45, -90, 200);

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private JdbcClient database;

	@Autowired
	private MockMvc web;

	@Test
	void tasksAndDatesFollowTheLieOfTheSite() throws Exception {
		StationId station = new StationId("XX000000001");
		this.stations.register(new Station(station, "Made up", POINT, true));
		this.observations.load(station, new ByteArrayInputStream(record(station)), "record.csv");
		SiteId site = this.register
			.addSite(this.people.join("Ada", "places@example.org", ZoneId.of("America/Chicago")).id(), new NewSite(
					"Garden", "", POINT, ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		assertThat(this.register.require(site).microclimate()).isEqualTo(Microclimate.NONE);
		this.register.addPlantings(site,
				List.of(new NewPlanting(new SpeciesId("solanum-lycopersicum"), "tomatoes", 3, LocalDate.of(2015, 5, 20),
						Placement.GROUND, false, false),
						new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 3, LocalDate.of(2015, 5, 20),
								Placement.GROUND, false, false)));
		List<String> before = tasks(site);
		assertThat(before).isNotEmpty();
		this.web
			.perform(patch("/api/v1/sites/" + site).header("Authorization", "Bearer " + TOKEN)
				.contentType(MediaType.APPLICATION_JSON)
				.content("{\"lie\": \"hollow\"}"))
			.andExpect(status().isOk())
			.andExpect(jsonPath("$.lie").value("hollow"));
		Place hollow = new Place(POINT, new Microclimate(Lie.HOLLOW, false, false, null));
		assertThat(this.register.require(site).place()).isEqualTo(hollow);
		List<String> after = tasks(site);
		assertThat(after).as("derived when the change returns").isNotEqualTo(before);
		this.web
			.perform(patch("/api/v1/sites/" + site).header("Authorization", "Bearer " + TOKEN)
				.contentType(MediaType.APPLICATION_JSON)
				.content("{\"lie\": \"flat\", \"measuredOffsetCelsius\": -2}"))
			.andExpect(status().isOk());
		assertThat(tasks(site)).as("a thermometer that says two degrees is a hollow by measure").isEqualTo(after);
		this.register.changePlace(site, Place.of(POINT));
		assertThat(tasks(site)).as("and back again").isEqualTo(before);
		freezes(site);
		refusals(site);
	}

	private void freezes(SiteId site) throws Exception {
		this.web
			.perform(get("/api/v1/sites/%s/freeze-dates?threshold=28F&period=1991-2020".formatted(site))
				.header("Authorization", "Bearer " + TOKEN))
			.andExpect(status().isOk())
			.andExpect(jsonPath("$.threshold").value("28F"))
			.andExpect(jsonPath("$.lastSpringFreeze.probabilities.length()").value(9))
			.andExpect(jsonPath("$.stations[0].weight").value(1.0))
			.andExpect(jsonPath("$.stations[0].invented").value(true))
			.andExpect(jsonPath("$.periods.length()").value(4));
		Cookie session = this.web.perform(post("/sign-in").param("token", TOKEN).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
		this.web.perform(get("/sites/%s/freezes?threshold=-1C&period=all".formatted(site)).cookie(session))
			.andExpect(status().isOk())
			.andExpect(content().string(containsString("Made up")));
		this.web.perform(get("/sites/%s/place".formatted(site)).cookie(session)).andExpect(status().isOk());
	}

	private void refusals(SiteId site) throws Exception {
		for (String body : List.of("{\"hollow\": true}", "{\"lie\": \"valley\"}", "{\"measuredOffsetCelsius\": 11}",
				"{\"latitude\": 91}")) {
			this.web
				.perform(patch("/api/v1/sites/" + site).header("Authorization", "Bearer " + TOKEN)
					.contentType(MediaType.APPLICATION_JSON)
					.content(body))
				.andExpect(status().isBadRequest())
				.andExpect(jsonPath("$.mend").isNotEmpty());
		}
		for (String query : List.of("threshold=warm", "period=1961-1990")) {
			this.web.perform(get("/api/v1/sites/%s/freeze-dates?%s".formatted(site, query)).header("Authorization",
					"Bearer " + TOKEN))
				.andExpect(status().isBadRequest());
		}
		assertThat(this.register.require(site).place()).isEqualTo(Place.of(POINT));
		assertThatThrownBy(() -> this.database.sql("update register.site set measured_offset_celsius = 10.5").update())
			.isInstanceOf(DataIntegrityViolationException.class);
		assertThatThrownBy(() -> this.database.sql("update register.site set lie = 'VALLEY'").update())
			.isInstanceOf(DataIntegrityViolationException.class);
	}

	/** Of the season to come; what lies in the past is never rewritten. */
	private List<String> tasks(SiteId site) {
		return this.database.sql("""
				select rule || ' ' || season || ' ' || from_day || ' ' || to_day from care.task
				where site = ? and state = 'PLANNED' and season = (select max(season) from care.task) order by 1""")
			.param(site.value())
			.query(String.class)
			.list();
	}

	/** A year's wave with noise, always the same. */
	private static byte[] record(StationId station) {
		Random random = new Random(7);
		StringBuilder lines = new StringBuilder();
		for (LocalDate day = LocalDate.of(1990, 1, 1); day.getYear() < 2026; day = day.plusDays(1)) {
			double wave = -12 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
			long low = Math.round(10 * (6 + wave + random.nextGaussian() * 4));
			String date = day.toString().replace("-", "");
			lines.append("%s,%s,TMIN,%d,,,C,\n%s,%s,TMAX,%d,,,C,\n".formatted(station.value(), date, low,
					station.value(), date, low + 90));
		}
		return lines.toString().getBytes(StandardCharsets.US_ASCII);
	}

}
