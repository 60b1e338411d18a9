package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.heat.CutOff;
import org.leafward.climate.core.heat.DegreeDays;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.climate.core.heat.HeatThresholds;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Sums of heat, soil and cool days of a real station, and as markers of a place. */
class HeatMarkersTests {

	private static final GeoPoint POINT = new GeoPoint(40.7789, -73.9692, 39.6);

	private static StationClimate centralPark() {
		return new StationClimate(new Station(RecordFixture.CENTRAL_PARK, "Central Park", POINT, false),
				RecordFixture.real(RecordFixture.CENTRAL_PARK));
	}

	/** The table's head names the source and where the tolerance comes from. */
	@Test
	void yearlySumsAgreeWithTheNormalsOfNcei() {
		DailyRecord record = RecordFixture.real(RecordFixture.CENTRAL_PARK);
		List<String[]> rows = SharedData.table("heat/ncei-central-park-normals.csv");
		assertThat(rows).hasSize(10);
		for (String[] row : rows) {
			HeatThresholds thresholds = row[2].isEmpty() ? HeatThresholds.above(Double.parseDouble(row[1]))
					: new HeatThresholds(Double.parseDouble(row[1]), Double.parseDouble(row[2]), CutOff.HORIZONTAL);
			LongToDoubleFunction daily = DegreeDaySearch.daily(record,
					new HeatMeasure(DegreeDays.valueOf(row[0]), thresholds, true), 0);
			double sum = 0;
			for (LocalDate day = LocalDate.of(1991, 1, 1); day.getYear() <= 2019; day = day.plusDays(1)) {
				sum += daily.applyAsDouble(day.toEpochDay());
			}
			double published = Double.parseDouble(row[3]);
			assertThat(sum / 29).as(String.join(",", row)).isCloseTo(published, within(published * 0.025));
		}
	}

	/**
	 * NCEI's daily normals above 50 °F reach 200 from 1 March on 1 May (same file); a sum
	 * of means and a median of sums are not quite the same thing.
	 */
	@Test
	void medianDateAgreesWithTheNormalsOfNcei() {
		Sample sample = DegreeDaySearch.sample(RecordFixture.real(RecordFixture.CENTRAL_PARK),
				new SeasonPeriod(1991, 2018), Hemisphere.NORTH, HeatMeasure.average(50, true), HeatGoal.of(200), 0);
		assertThat(sample.quantile(50)).isCloseTo(SeasonDay.of(LocalDate.of(2001, 5, 1), 2001), within(3.0));
	}

	@Test
	void datesAgreeWithAnIndependentCount() {
		StationClimate climate = centralPark();
		List<String[]> rows = SharedData.table("heat/central-park-dates.csv");
		assertThat(rows).hasSize(9);
		for (String[] row : rows) {
			MarkerKind kind = Arrays.stream(MarkerKind.values())
				.filter((one) -> one.code().equals(row[0]))
				.findFirst()
				.orElseThrow();
			HeatGoal goal = row[2].isEmpty() ? null
					: new HeatGoal(Integer.parseInt(row[2]), MonthDay.parse("--" + row[3]));
			Sample sample = climate.sample(
					new MarkerKey(kind, row[1].isEmpty() ? null : TemperatureThreshold.parse(row[1]), 50, goal), 0,
					Hemisphere.NORTH, new SeasonPeriod(1981, 2010));
			assertThat(sample.used()).isEqualTo(30);
			assertThat(List.of(date(sample, 10), date(sample, 50), date(sample, 90))).as(String.join(",", row))
				.containsExactly(row[4], row[5], row[6]);
		}
	}

	/** The upper soil warms and cools before the soil below it. */
	@Test
	void theUpperSoilIsAheadOfTheSoilBelow() {
		TemperatureThreshold threshold = TemperatureThreshold.parse("55F");
		PlaceMarkers place = at(POINT);
		assertThat(place.on(new MarkerKey(MarkerKind.UPPER_SOIL_WARMS_TO, threshold, 50), 2026).orElseThrow().date())
			.isBefore(place.on(new MarkerKey(MarkerKind.SOIL_WARMS_TO, threshold, 50), 2026).orElseThrow().date());
		assertThat(place.on(new MarkerKey(MarkerKind.UPPER_SOIL_COOLS_TO, threshold, 50), 2026).orElseThrow().date())
			.isBefore(place.on(new MarkerKey(MarkerKind.SOIL_COOLS_TO, threshold, 50), 2026).orElseThrow().date());
		assertThat(text(place.on(new MarkerKey(MarkerKind.DE_ICING_END, null, 50), 2026).orElseThrow().explanation()))
			.contains("End of de-icing", "An estimate", "Central Park");
	}

	private static String date(Sample sample, int below) {
		return SeasonDay.toDate(sample.quantile(below), 2001).toString().substring(5);
	}

	@Test
	void markersOfAPlaceCarryTheirExplanation() {
		PlaceMarkers place = at(POINT);
		TemperatureThreshold threshold = TemperatureThreshold.parse("55F");
		List<MarkerKey> keys = new ArrayList<>();
		for (MarkerKind kind : List.of(MarkerKind.DEGREE_DAYS, MarkerKind.SOIL_WARMS_TO, MarkerKind.SOIL_COOLS_TO,
				MarkerKind.DAYS_COOL_TO)) {
			keys.add(new MarkerKey(kind, threshold, 50, kind.needsGoal() ? HeatGoal.of(150) : null));
		}
		assertThat(keys).allSatisfy((key) -> {
			SeasonMarker marker = place.on(key, 2026).orElseThrow();
			assertThat(marker.date()).isBetween(marker.earliest(), marker.latest());
			assertThat(text(marker.explanation())).contains("55 °F (12.8 °C)", "Central Park", "The middle date",
					"Seasons used, 30, from 1989 to 2018");
		});
		assertThat(text(place.on(keys.get(0), 2026).orElseThrow().explanation()))
			.contains("Degree-days above 55 °F (12.8 °C), sum 150, counted from 1 March", "bridged");
		assertThat(text(place.on(keys.get(1), 2026).orElseThrow().explanation())).contains("Soil warms to 55 °F",
				"Zheng, Hunt and Running 1993");
		assertThat(text(place.on(keys.get(3), 2026).orElseThrow().explanation())).contains("mean maximum of five days");
	}

	/** 650 m up is 4.2 °C colder: heat comes weeks later, cool days weeks earlier. */
	@Test
	void aHigherPlaceIsLaterInSpringAndEarlierInFall() {
		GeoPoint high = new GeoPoint(POINT.latitude(), POINT.longitude(), POINT.elevationMetres() + 650);
		TemperatureThreshold threshold = TemperatureThreshold.parse("50F");
		for (MarkerKind kind : List.of(MarkerKind.DEGREE_DAYS, MarkerKind.SOIL_WARMS_TO, MarkerKind.SOIL_COOLS_TO,
				MarkerKind.DAYS_COOL_TO)) {
			MarkerKey key = new MarkerKey(kind, threshold, 50, kind.needsGoal() ? HeatGoal.of(200) : null);
			LocalDate low = at(POINT).on(key, 2026).orElseThrow().date();
			LocalDate other = at(high).on(key, 2026).orElseThrow().date();
			if (kind.spring()) {
				assertThat(other).as(kind.code()).isAfter(low.plusDays(7));
			}
			else {
				assertThat(other).as(kind.code()).isBefore(low.minusDays(7));
			}
		}
	}

	@Test
	void aSumThatNoYearReachesSaysWhy() {
		MarkerKey key = new MarkerKey(MarkerKind.DEGREE_DAYS, TemperatureThreshold.parse("50F"), 50,
				HeatGoal.of(15_000));
		assertThat(at(POINT).on(key, 2026)).isEmpty();
		assertThat(at(POINT).whyMissing(key)).contains("sum 15000", "fewer than one in ten");
	}

	private static PlaceMarkers at(GeoPoint point) {
		StationClimate climate = centralPark();
		return new BlendedPlace(Hemisphere.NORTH,
				Neighbour.choose(point, List.of(climate.station()), (station) -> Optional.of(climate)));
	}

	private static String text(Explanation step) {
		return Arrays.asList(step.label(), step.value(), step.detail(), step.source()) + "\n"
				+ step.steps().stream().map(HeatMarkersTests::text).collect(Collectors.joining());
	}

}
