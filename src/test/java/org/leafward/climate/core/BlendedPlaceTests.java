package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class BlendedPlaceTests {

	/** The stations here measure nothing else, and daylight needs no station. */
	private static final List<MarkerKind> FROM_TEMPERATURES = Arrays.stream(MarkerKind.values())
		.filter((kind) -> !kind.needsDaylight() && kind != MarkerKind.DE_ICING_END)
		.toList();

	private static final TemperatureThreshold FREEZING = TemperatureThreshold.parse("0C");

	private static final MarkerKey SPRING = new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, FREEZING, 10);

	private final List<Station> stations = new ArrayList<>();

	private final Map<StationId, DailyRecord> records = new HashMap<>();

	@Test
	void atTheStationItselfTheStationsOwnDateComesOut() {
		station("XX000000001", 45, 10, 200, 8, 1);
		PlaceMarkers place = at(45, 10, 200);
		StationClimate climate = new StationClimate(this.stations.get(0), this.records.get(this.stations.get(0).id()));
		Sample sample = climate.sample(MarkerKind.LAST_SPRING_FREEZE, FREEZING, 0, Hemisphere.NORTH,
				new SeasonPeriod(1991, 2020));
		assertThat(place.on(SPRING, 2026).orElseThrow().date()).isEqualTo(SeasonDay.toDate(sample.quantile(90), 2026));
	}

	/** By hand: 20 km and 40 km, so weights 4 to 1. */
	@Test
	void weightsAreTheInverseSquareOfTheDistance() {
		station("XX000000001", 45 + 20 / 111.195, 10, 0, 8, 1);
		station("XX000000002", 45 - 40 / 111.195, 10, 0, 8, 2);
		List<Neighbour> neighbours = Neighbour.choose(new GeoPoint(45, 10, 0), this.stations, opener());
		assertThat(neighbours).hasSize(2);
		assertThat(neighbours.get(0).weight() / neighbours.get(1).weight()).isCloseTo(4, within(0.01));
		Blend blend = Blend.of(SPRING, neighbours, Hemisphere.NORTH);
		assertThat(blend.parts().get(0).weight()).isCloseTo(0.8, within(0.001));
		assertThat(blend.day()).isCloseTo(blend.parts().get(0).day() * 0.8 + blend.parts().get(1).day() * 0.2,
				within(0.05));
	}

	/**
	 * Against a count of the seasons one by one; nothing on earth stays above 20 °C all
	 * year at 45 degrees north or falls to -80 °C there.
	 */
	@Test
	void theShareOfYearsWithAFreezeIsThatOfTheStations() {
		assertThat(at(45, 10, 200).yearsWithFreeze(FREEZING)).as("no station").isEmpty();
		station("XX000000001", 45, 10, 200, 8, 1);
		PlaceMarkers place = at(45, 10, 200);
		assertThat(place.yearsWithFreeze(TemperatureThreshold.parse("20C"))).hasValue(1);
		assertThat(place.yearsWithFreeze(TemperatureThreshold.parse("-80C"))).hasValue(0);
		StationClimate climate = new StationClimate(this.stations.get(0), this.records.get(this.stations.get(0).id()));
		for (int degrees = -15; degrees <= 5; degrees++) {
			TemperatureThreshold threshold = TemperatureThreshold.parse(degrees + "C");
			double spring = share(climate, MarkerKind.LAST_SPRING_FREEZE, threshold);
			double fall = share(climate, MarkerKind.FIRST_FALL_FREEZE, threshold);
			assertThat(place.yearsWithFreeze(threshold).orElseThrow()).as("%d °C", degrees)
				.isCloseTo(Math.max(spring, fall), within(1e-9));
		}
	}

	/** Seasons counted one by one, without the steps kept for all limits. */
	private static double share(StationClimate climate, MarkerKind kind, TemperatureThreshold threshold) {
		List<SeasonOutcome> outcomes = climate.outcomes(kind, threshold, 0, Hemisphere.NORTH,
				new SeasonPeriod(1991, 2020));
		long told = outcomes.stream().filter((one) -> one.state() != SeasonOutcome.State.LEFT_OUT).count();
		return (double) outcomes.stream().filter((one) -> one.date() != null).count() / told;
	}

	/** By hand: 300 m count like 30 km, so 10 km away and 300 m up is like 40 km. */
	@Test
	void heightCountsLikeDistance() {
		assertThat(Neighbour.effectiveDistance(new GeoPoint(45, 10, 300), new GeoPoint(45 + 10 / 111.195, 10, 0)))
			.isCloseTo(40, within(0.01));
		assertThat(Neighbour.effectiveDistance(new GeoPoint(45, 10, 0), new GeoPoint(45, 10, 5))).isEqualTo(1);
	}

	/** ICAO standard atmosphere: 6.5 °C per km, so 1000 m are the threshold 6.5 °C up. */
	@Test
	void aHigherSiteIsColder() {
		station("XX000000001", 45, 10, 200, 8, 1);
		StationClimate climate = new StationClimate(this.stations.get(0), this.records.get(this.stations.get(0).id()));
		Sample warmer = climate.sample(MarkerKind.LAST_SPRING_FREEZE, TemperatureThreshold.parse("6.5C"), 0,
				Hemisphere.NORTH, new SeasonPeriod(1991, 2020));
		assertThat(at(45, 10, 1200).on(SPRING, 2026).orElseThrow().date())
			.isEqualTo(SeasonDay.toDate(warmer.quantile(90), 2026));
	}

	@Test
	void atMostThreeStationsWithin150Kilometres() {
		for (int km = 10; km <= 200; km += 10) {
			station("XX0000000%02d".formatted(km / 10), 45 + km / 111.195, 10, 0, 8, km);
		}
		List<Neighbour> chosen = Neighbour.choose(new GeoPoint(45, 10, 0), this.stations, opener());
		assertThat(chosen).extracting((one) -> Math.round(one.distance())).containsExactly(10L, 20L, 30L);
		assertThat(Neighbour.choose(new GeoPoint(42, 10, 0), this.stations, opener())).isEmpty();
	}

	@Test
	void stationsWithTooShortARecordAreSkipped() {
		station("XX000000001", 45, 10, 0, 8, 1);
		this.records.put(this.stations.get(0).id(), RecordFixture.wave(1, 2010, 2015, 8, false));
		station("XX000000002", 45.5, 10, 0, 8, 2);
		assertThat(Neighbour.choose(new GeoPoint(45, 10, 0), this.stations, opener()))
			.extracting((one) -> one.climate().station().id().value())
			.containsExactly("XX000000002");
	}

	@Test
	void datesKeepTheOrderOfTheirProbabilities() {
		station("XX000000001", 45, 10, 0, 8, 1);
		station("XX000000002", 45.5, 10, 300, 6, 2);
		PlaceMarkers place = at(45.2, 10.1, 120);
		for (MarkerKind kind : FROM_TEMPERATURES) {
			TemperatureThreshold threshold = kind.needsThreshold() ? TemperatureThreshold.parse("5C") : null;
			LocalDate before = null;
			for (int probability = 1; probability <= 99; probability++) {
				SeasonMarker marker = place.on(key(kind, threshold, probability), 2026).orElseThrow();
				assertThat(marker.earliest()).isBeforeOrEqualTo(marker.latest());
				if (before != null && kind.spring()) {
					assertThat(marker.date()).as(kind.code()).isBeforeOrEqualTo(before);
				}
				else if (before != null) {
					assertThat(marker.date()).as(kind.code()).isAfterOrEqualTo(before);
				}
				before = marker.date();
			}
		}
		SeasonMarker late = place.on(SPRING, 2026).orElseThrow();
		assertThat(late.date()).isEqualTo(late.latest());
		SeasonMarker fall = place.on(new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, FREEZING, 10), 2026).orElseThrow();
		assertThat(fall.date()).isEqualTo(fall.earliest());
	}

	@Test
	void southernSitesHaveTheirSpringInTheSecondHalfOfTheYear() {
		this.stations.add(new Station(new StationId("XX000000009"), "South", new GeoPoint(-43, 172, 10), false));
		this.records.put(new StationId("XX000000009"), RecordFixture.wave(9, 1988, 2021, 8, true));
		PlaceMarkers place = at(-43, 172, 10);
		assertThat(place.on(SPRING, 2026).orElseThrow().date()).isBetween(LocalDate.of(2026, 8, 1),
				LocalDate.of(2026, 12, 31));
		assertThat(place.on(new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, FREEZING, 50), 2026).orElseThrow().date())
			.isBetween(LocalDate.of(2027, 2, 1), LocalDate.of(2027, 7, 31));
	}

	@Test
	void theExplanationOpensDownToTheStations() {
		station("XX000000001", 45 + 20 / 111.195, 10, 100, 8, 1);
		this.stations.add(new Station(new StationId("XX000000002"), "Madeup", new GeoPoint(45, 10.4, 300), true));
		this.records.put(new StationId("XX000000002"), RecordFixture.wave(2, 1988, 2021, 7, false));
		SeasonMarker marker = at(45, 10, 200).on(SPRING, 2026).orElseThrow();
		String text = text(marker.explanation());
		assertThat(text).contains("Last spring freeze at 0 °C")
			.contains("In 10 of 100 seasons that have it, it comes on this date or later.")
			.contains("NCEI")
			.contains("ICAO")
			.contains("Hyndman and Fan")
			.contains("Measured daily record of station XX000000001.")
			.contains("Invented station XX000000002")
			.contains("Thu 23 Apr 2026")
			.contains("100 m higher")
			.contains("100 m lower")
			.contains("0.65 °C colder")
			.contains("0.65 °C warmer")
			.contains("Seasons used, 30, from 1991 to 2020");
		assertThat(marker.explanation().detail()).as("names the stations at once")
			.startsWith("From the daily records of Station 1 (20.0 km away, 100 m lower) and Madeup (31.5 km away, "
					+ "100 m higher, invented station). ");
		List<Explanation> parts = marker.explanation().steps().get(0).steps();
		double weights = parts.stream()
			.mapToDouble((part) -> Double.parseDouble(part.steps().get(0).value().replace(" %", "")))
			.sum();
		assertThat(weights).isCloseTo(100, within(0.11));
	}

	@Test
	void aPlaceThatNeverFreezesSaysWhyThereIsNoDate() {
		station("XX000000001", 10, 10, 0, 8, 1);
		this.records.put(this.stations.get(0).id(), RecordFixture.constant("1988-01-01", "2021-12-31", 200, Map.of()));
		PlaceMarkers place = at(10, 10, 0);
		assertThat(place.on(SPRING, 2026)).isEmpty();
		assertThat(place.whyMissing(SPRING)).contains("Station 1, 0.0 km away, at the same height")
			.contains("0 of 30 seasons, fewer than one in ten");
		assertThat(at(70, 100, 0).on(SPRING, 2026)).isEmpty();
		assertThat(at(70, 100, 0).whyMissing(SPRING)).contains("within 150 km", "ask whoever runs this server");
	}

	@Test
	void theSameKeyGivesTheSameMarkerAgain() {
		station("XX000000001", 45, 10, 0, 8, 1);
		PlaceMarkers place = at(45, 10, 50);
		assertThat(place.on(SPRING, 2026)).isEqualTo(at(45, 10, 50).on(SPRING, 2026));
		assertThat(place.on(SPRING, 2026).orElseThrow()).isSameAs(place.on(SPRING, 2026).orElseThrow());
	}

	@Test
	void manyThreadsGetTheSameMarkers() throws Exception {
		station("XX000000001", 45, 10, 0, 8, 1);
		PlaceMarkers shared = at(45, 10, 50);
		List<MarkerKey> keys = new ArrayList<>();
		for (MarkerKind kind : FROM_TEMPERATURES) {
			for (int probability = 10; probability < 100; probability += 10) {
				keys.add(key(kind, kind.needsThreshold() ? FREEZING : null, probability));
			}
		}
		Callable<List<Optional<SeasonMarker>>> ask = () -> keys.stream().map((key) -> shared.on(key, 2026)).toList();
		ExecutorService threads = Executors.newFixedThreadPool(4);
		try {
			List<Optional<SeasonMarker>> expected = keys.stream().map((key) -> at(45, 10, 50).on(key, 2026)).toList();
			for (Future<List<Optional<SeasonMarker>>> answer : threads.invokeAll(Collections.nCopies(8, ask))) {
				assertThat(answer.get()).isEqualTo(expected);
			}
		}
		finally {
			threads.shutdown();
		}
	}

	private static MarkerKey key(MarkerKind kind, TemperatureThreshold threshold, int probability) {
		return new MarkerKey(kind, threshold, probability, kind.needsGoal() ? HeatGoal.of(300) : null);
	}

	private void station(String id, double latitude, double longitude, double elevation, double mean, long seed) {
		StationId station = new StationId(id);
		this.stations.add(new Station(station, "Station " + seed, new GeoPoint(latitude, longitude, elevation), false));
		this.records.put(station, RecordFixture.wave(seed, 1988, 2021, mean, false));
	}

	private PlaceMarkers at(double latitude, double longitude, double elevation) {
		GeoPoint site = new GeoPoint(latitude, longitude, elevation);
		return new BlendedPlace(site.hemisphere(), Neighbour.choose(site, this.stations, opener()));
	}

	private Function<Station, Optional<StationClimate>> opener() {
		Map<StationId, StationClimate> open = this.stations.stream()
			.collect(Collectors.toMap(Station::id,
					(station) -> new StationClimate(station, this.records.get(station.id()))));
		return (station) -> Optional.of(open.get(station.id()));
	}

	private static String text(Explanation step) {
		return Arrays.asList(step.label(), step.value(), step.detail(), step.source()) + "\n"
				+ step.steps().stream().map(BlendedPlaceTests::text).collect(Collectors.joining());
	}

}
