package org.leafward.climate.web;

import com.zaxxer.hikari.HikariDataSource;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.climate.ClimateFixture;
import org.leafward.climate.LocalWeatherFixture;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.support.TestDatabase;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import static org.assertj.core.api.Assertions.assertThat;

class EvapotranspirationApiTests {

	private static HikariDataSource source;

	private static MockMvcTester mvc;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
		ClimateFixture wired = ClimateFixture.on(source);
		StationId id = new StationId("XX000000001");
		wired.stations().register(new Station(id, "Lyon", new GeoPoint(45 + 43 / 60.0, 4.9, 200), false));
		wired.observations()
			.load(id, List.of(new ObservedDay(LocalDate.of(2027, 7, 15), 148, 266, 0, null, null),
					new ObservedDay(LocalDate.of(2027, 7, 16), 148, 266, 0, null, 20)));
		mvc = MockMvcTester.of(new EvapotranspirationApi(LocalWeatherFixture.on(wired)));
	}

	@AfterAll
	static void close() {
		source.close();
	}

	/** The first day is example 20 of FAO-56, which has 5.0 mm by Hargreaves-Samani. */
	@Test
	void daysComeWithTheirFormula() {
		assertThat(get("?from=2027-07-15&to=2027-07-17")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.days.length()", (days) -> assertThat(days).isEqualTo(3))
			.hasPathSatisfying("$.days[0].millimetres", (amount) -> assertThat(amount).isEqualTo(5.03))
			.hasPathSatisfying("$.days[0].method", (method) -> assertThat(method).isEqualTo("Hargreaves-Samani"))
			.hasPathSatisfying("$.days[1].method", (method) -> assertThat(method).isEqualTo("Penman-Monteith"))
			.hasPathSatisfying("$.days[1].substitutes.length()", (number) -> assertThat(number).isEqualTo(2))
			.hasPathSatisfying("$.days[2].millimetres", (amount) -> assertThat(amount).isNull())
			.hasPathSatisfying("$.daysMissing", (days) -> assertThat(days).isEqualTo(1))
			.hasPathSatisfying("$.explanation.steps.length()", (steps) -> assertThat(steps).isEqualTo(5));
	}

	@Test
	void badPeriodsAreRefused() {
		assertRefused(get("?from=2027-07-15"), BadInput.class, "to is missing");
		assertRefused(get("?from=july&to=2027-07-15"), BadInput.class, "from 'july'");
		assertRefused(get("?from=2027-07-15&to=2027-07-14"), BadInput.class, "no period");
		assertRefused(get("?from=2020-07-15&to=2027-07-14"), BadInput.class, "more than 1096");
		assertRefused(mvc.get()
			.uri("/api/v1/stations/XX000000009/evapotranspiration?from=2027-07-15&to=2027-07-15")
			.exchange(), NotThere.class, "XX000000009");
	}

	private static MvcTestResult get(String query) {
		return mvc.get().uri("/api/v1/stations/XX000000001/evapotranspiration" + query).exchange();
	}

	private static void assertRefused(MvcTestResult result, Class<? extends Exception> kind, String word) {
		assertThat(result).failure().satisfies((failure) -> {
			Throwable cause = (failure.getCause() != null) ? failure.getCause() : failure;
			assertThat(cause).isInstanceOf(kind).hasMessageContaining(word);
		});
	}

}
