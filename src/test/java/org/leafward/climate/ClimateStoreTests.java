package org.leafward.climate;

import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.climate.store.ClimateTables;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.support.SharedData;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Stations and observations in a real PostgreSQL. */
class ClimateStoreTests {

	private static final MarkerKey SPRING = new MarkerKey(MarkerKind.LAST_SPRING_FREEZE,
			TemperatureThreshold.parse("0C"), 10);

	private static HikariDataSource source;

	private List<Object> events;

	private ClimateTables tables;

	private Stations stations;

	private Observations observations;

	private LocalClimate climate;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@BeforeEach
	void wire() {
		JdbcClient.create(source).sql("truncate climate.station cascade").update();
		ClimateFixture wired = ClimateFixture.on(source);
		this.tables = wired.tables();
		this.stations = wired.stations();
		this.observations = wired.observations();
		this.climate = wired.climate();
		this.events = wired.events();
	}

	@Test
	void registeringTwiceChangesTheStationInPlace() {
		Station first = station("XX000000001", 45, 10, 100);
		assertThat(this.stations.register(first)).isTrue();
		Station moved = new Station(first.id(), "Moved", new GeoPoint(45.1, 10, 120), true);
		assertThat(this.stations.register(moved)).isFalse();
		assertThat(this.stations.find(first.id())).hasValue(moved);
		assertThat(this.stations.page(0, 10).total()).isEqualTo(1);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.stations.register(new Station(first.id(), " ", first.point(), false)));
	}

	@Test
	void stationsArePagedAndFoundNearby() {
		for (int number = 1; number <= 7; number++) {
			this.stations.register(station("XX00000000" + number, 45 + number / 10.0, 10, 0));
		}
		StationPage page = this.stations.page(1, 3);
		assertThat(page.stations()).extracting((station) -> station.id().value())
			.containsExactly("XX000000004", "XX000000005", "XX000000006");
		assertThat(page.total()).isEqualTo(7);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.stations.page(-1, 3));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.stations.page(0, 201));
		assertThat(this.stations.near(new GeoPoint(45.31, 10, 0), 12)).extracting((station) -> station.id().value())
			.containsExactly("XX000000003", "XX000000004");
	}

	@Test
	void stationsAreFoundAcrossTheDateLine() {
		this.stations.register(station("XX000000001", -17, 179.9, 0));
		assertThat(this.stations.near(new GeoPoint(-17, -179.9, 0), 30)).hasSize(1);
	}

	@Test
	void noStationWithinTheCircleIsOverlooked() {
		Random random = new Random(3);
		List<Station> all = new ArrayList<>();
		for (int number = 0; number < 600; number++) {
			double latitude = (number % 3 == 0) ? 90 - 3 * random.nextDouble() : 60 + 4 * random.nextDouble();
			double longitude = (number % 2 == 0) ? 360 * random.nextDouble() - 180
					: (random.nextBoolean() ? 1 : -1) * (180 - 4 * random.nextDouble());
			all.add(station("XX%09d".formatted(number), latitude, longitude, 0));
			this.stations.register(all.get(number));
		}
		int found = 0;
		for (Station from : all.subList(0, 120)) {
			List<Station> near = this.stations.near(from.point(), 150);
			assertThat(near).containsExactlyInAnyOrderElementsOf(
					all.stream().filter((station) -> from.point().distanceKilometres(station.point()) <= 150).toList());
			found += near.size();
		}
		assertThat(found).isGreaterThan(500);
	}

	@Test
	void loadingTwiceChangesNothingAndSaysNothing() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		List<ObservedDay> days = made(1, 2000, 2002);
		LoadReport first = load(days);
		assertThat(first.daysInserted()).isEqualTo(days.size());
		assertThat(first.daysChanged()).isZero();
		assertThat(this.events).containsExactly(
				new ObservationsLoaded("XX000000001", 45, 10, LocalDate.of(2000, 1, 1), LocalDate.of(2002, 12, 31)));
		LoadReport second = load(days);
		assertThat(second.daysInserted()).isZero();
		assertThat(second.daysChanged()).isZero();
		assertThat(this.events).hasSize(1);
		assertThat(version()).isEqualTo(1);
	}

	@Test
	void onlyWhatIsGivenIsReplaced() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		load(List.of(new ObservedDay(LocalDate.of(2020, 1, 1), -10, 20, null, null, null),
				new ObservedDay(LocalDate.of(2020, 1, 2), -11, null, null, 300, null)));
		LoadReport report = load(List.of(new ObservedDay(LocalDate.of(2020, 1, 2), -12, 5, null, null, null),
				new ObservedDay(LocalDate.of(2020, 1, 4), 1, null, null, null, null)));
		assertThat(report.daysInserted()).isEqualTo(1);
		assertThat(report.daysChanged()).isEqualTo(1);
		assertThat(this.events.get(1)).isEqualTo(
				new ObservationsLoaded("XX000000001", 45, 10, LocalDate.of(2020, 1, 2), LocalDate.of(2020, 1, 4)));
		DailyRecord record = this.tables.observations().read(new StationId("XX000000001")).record();
		DailyRecord.Builder expected = DailyRecord.builder();
		expected.set(Element.TMIN, LocalDate.of(2020, 1, 1), -10);
		expected.set(Element.TMAX, LocalDate.of(2020, 1, 1), 20);
		expected.set(Element.TMIN, LocalDate.of(2020, 1, 2), -12);
		expected.set(Element.TMAX, LocalDate.of(2020, 1, 2), 5);
		expected.set(Element.SNWD, LocalDate.of(2020, 1, 2), 300);
		expected.set(Element.TMIN, LocalDate.of(2020, 1, 4), 1);
		assertThat(record).isEqualTo(expected.build());
	}

	@Test
	void anotherNodeSeesNewObservationsAtOnce() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		load(made(1, 1988, 2021));
		LocalClimate other = ClimateFixture.on(source).climate();
		GeoPoint site = new GeoPoint(45.1, 10, 50);
		LocalDate before = other.markersAt(site).on(SPRING, 2026).orElseThrow().date();
		assertThat(this.climate.markersAt(site).on(SPRING, 2026).orElseThrow().date()).isEqualTo(before);
		List<ObservedDay> colder = made(1, 1988, 2021).stream()
			.map((day) -> new ObservedDay(day.day(), day.minimum() - 50, day.maximum(), null, null, null))
			.toList();
		assertThat(load(colder).daysChanged()).isEqualTo(colder.size());
		assertThat(other.markersAt(site).on(SPRING, 2026).orElseThrow().date()).isAfter(before);
		assertThat(version()).isEqualTo(2);
	}

	@Test
	void anAnswerKeepsToOneVersionOfARecord() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		load(made(1, 1988, 2021));
		List<ObservedDay> colder = made(1, 1988, 2021).stream()
			.map((day) -> new ObservedDay(day.day(), day.minimum() - 50, day.maximum() - 50, null, null, null))
			.toList();
		MarkerKey fall = new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, TemperatureThreshold.parse("0C"), 50);
		Place site = Place.of(new GeoPoint(45.1, 10, 50));
		List<LocalDate> springs = new ArrayList<>();
		List<LocalDate> answer = this.climate.answer(site, (markers) -> {
			LocalDate spring = markers.on(SPRING, 2026).orElseThrow().date();
			springs.add(spring);
			if (springs.size() == 1) {
				load(colder);
				// Somebody else's question takes the record of before out of memory.
				this.climate.markersAt(site).on(SPRING, 2026);
			}
			return List.of(spring, markers.on(fall, 2026).orElseThrow().date());
		});
		PlaceMarkers fresh = ClimateFixture.on(source).climate().markersAt(site);
		assertThat(springs).as("asked again from the start").hasSize(2).doesNotHaveDuplicates();
		assertThat(answer).containsExactly(fresh.on(SPRING, 2026).orElseThrow().date(),
				fresh.on(fall, 2026).orElseThrow().date());
	}

	@Test
	void aPlaceWithoutStationsSaysSo() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		PlaceMarkers markers = this.climate.markersAt(new GeoPoint(45, 10, 0));
		assertThat(markers.on(SPRING, 2026)).isEmpty();
		assertThat(markers.whyMissing(SPRING)).contains("No weather station");
	}

	@Test
	void freezeDatesOfAStationHaveACurveAndRows() {
		this.stations.register(station("XX000000001", 45, 10, 0));
		load(made(1, 1988, 2021));
		StationId id = new StationId("XX000000001");
		FreezeDates dates = this.climate.freezeDates(id, null, null, TemperatureThreshold.parse("32F"));
		assertThat(dates.from()).isEqualTo(1991);
		assertThat(dates.to()).isEqualTo(2020);
		assertThat(dates.seasons()).hasSize(30);
		assertThat(dates.spring().points()).hasSize(99);
		assertThat(dates.spring().points().get(0).value()).isGreaterThan(dates.spring().points().get(98).value());
		assertThat(dates.fall().points().get(0).value()).isLessThan(dates.fall().points().get(98).value());
		assertThat(dates.length().points().get(0).value()).isLessThan(dates.length().points().get(98).value());
		FreezeDates few = this.climate.freezeDates(id, 2000, 2004, TemperatureThreshold.parse("32F"));
		assertThat(few.spring().points()).isEmpty();
		assertThat(few.spring().undefined()).contains("only 5 seasons");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.climate.freezeDates(id, 2004, 2000, TemperatureThreshold.parse("32F")));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.climate.freezeDates(id, 2004, null, TemperatureThreshold.parse("32F")));
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.climate
			.freezeDates(new StationId("XX000000002"), null, null, TemperatureThreshold.parse("32F")));
	}

	@Test
	void nothingIsStoredForAnUnknownStationOrABadFile() throws IOException {
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> load(made(1, 2000, 2000)));
		this.stations.register(station("XX000000001", 45, 10, 0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.observations.load(new StationId("XX000000001"),
				new ByteArrayInputStream("no data".getBytes(StandardCharsets.US_ASCII)), "file"));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> load(List.of(new ObservedDay(LocalDate.of(2020, 1, 1), 9999, null, null, null, null))));
		assertThat(this.events).isEmpty();
		assertThat(version()).isZero();
	}

	/** Size of the record: counted with the shell in the file itself. */
	@Test
	void aCenturyAndAHalfOfRealDataComesBackUnchanged() throws IOException {
		this.stations.register(
				new Station(RecordFixture.CENTRAL_PARK, "Central Park", new GeoPoint(40.7789, -73.9692, 39.6), false));
		byte[] file = Files.readAllBytes(SharedData.file("climate/USW00094728.dly.gz"));
		LoadReport report = this.observations.load(RecordFixture.CENTRAL_PARK, new ByteArrayInputStream(file),
				"USW00094728.dly.gz");
		assertThat(report.problemsInAll()).isZero();
		assertThat(report.firstDay()).isEqualTo(LocalDate.of(1869, 1, 1));
		assertThat(this.tables.observations().read(RecordFixture.CENTRAL_PARK).record())
			.isEqualTo(RecordFixture.real(RecordFixture.CENTRAL_PARK));
		assertThat(this.observations.load(RecordFixture.CENTRAL_PARK, new ByteArrayInputStream(file), "again")
			.daysChanged()).isZero();
		FreezeDates dates = this.climate.freezeDates(RecordFixture.CENTRAL_PARK, 1981, 2010,
				TemperatureThreshold.parse("32F"));
		// counted by an independent script: 9 April, 29 March, 19 March
		assertThat(dates.spring().points().get(9).date()).hasToString("--04-09");
		assertThat(dates.spring().points().get(49).date()).hasToString("--03-29");
		assertThat(dates.spring().points().get(89).date()).hasToString("--03-19");
	}

	private LoadReport load(List<ObservedDay> days) {
		return this.observations.load(new StationId("XX000000001"), days);
	}

	private long version() {
		return this.tables.stations().find(new StationId("XX000000001")).orElseThrow().recordVersion();
	}

	private static Station station(String id, double latitude, double longitude, double elevation) {
		return new Station(new StationId(id), "Station " + id, new GeoPoint(latitude, longitude, elevation), false);
	}

	private static List<ObservedDay> made(long seed, int from, int to) {
		Random random = new Random(seed);
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(from, 1, 1); day.getYear() <= to; day = day.plusDays(1)) {
			double wave = -12 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
			int low = (int) Math.round(10 * (8 + wave + random.nextGaussian() * 4));
			days.add(new ObservedDay(day, low, low + 90, null, null, null));
		}
		return days;
	}

}
