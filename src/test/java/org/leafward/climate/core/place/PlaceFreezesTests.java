package org.leafward.climate.core.place;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.FreezeClimatology.LeftOut;
import org.leafward.climate.FreezeClimatology.PeriodRow;
import org.leafward.climate.FreezeClimatology.StationUse;
import org.leafward.climate.FreezeDates;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Microclimate.Lie;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.RecordFixture;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.SeasonDay;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PlaceFreezesTests {

	private static final TemperatureThreshold FREEZING = TemperatureThreshold.parse("0C");

	private static final GeoPoint HERE = new GeoPoint(45, 10, 200);

	/** Length of a degree of latitude on the sphere of {@link GeoPoint}, km. */
	private static final double DEGREE = 111.195;

	private final List<StationClimate> climates = new ArrayList<>();

	@Test
	void aHollowHasTheDatesOfAThresholdTwoDegreesUp() {
		wave("XX000000001", HERE, 1);
		assertSame(of(new Microclimate(Lie.HOLLOW, false, false, null), "0C"), of(Microclimate.NONE, "2C"));
		assertThat(of(new Microclimate(Lie.HOLLOW, false, false, null), "0C").spring().at(50))
			.isGreaterThan(of(Microclimate.NONE, "0C").spring().at(50));
		assertThat(of(new Microclimate(Lie.HOLLOW, false, false, null), "0C").fall().at(50))
			.isLessThan(of(Microclimate.NONE, "0C").fall().at(50));
	}

	@Test
	void aWallInTownHasTheDatesOfAThresholdTwoDegreesDown() {
		wave("XX000000001", HERE, 1);
		assertSame(of(new Microclimate(Lie.FLAT, true, true, null), "0C"), of(Microclimate.NONE, "-2C"));
	}

	@Test
	void aThermometerReplacesTheEstimates() {
		wave("XX000000001", HERE, 1);
		FreezeClimatology measured = of(new Microclimate(Lie.HOLLOW, true, true, -1.2), "0C");
		assertSame(measured, of(Microclimate.NONE, "1.2C"));
		assertThat(measured.stations().get(0).colderByCelsius()).isCloseTo(1.2, within(1e-9));
	}

	/** ICAO: 100 m higher are 0.65 °C; with a hollow's 2 °C the threshold is 2.65 °C. */
	@Test
	void heightAndMicroclimateAddUp() {
		wave("XX000000001", new GeoPoint(45, 10, 100), 1);
		FreezeClimatology high = of(new Microclimate(Lie.HOLLOW, false, false, null), "0C");
		assertThat(high.stations().get(0).colderByCelsius()).isCloseTo(2.65, within(1e-9));
		// 2.65 °C is compared in whole tenths: at most 2.6 °C.
		this.climates.clear();
		wave("XX000000001", HERE, 1);
		assertSame(high, of(Microclimate.NONE, "2.6C"));
	}

	@Test
	void soilAndDaysDoNotKnowTheMicroclimate() {
		wave("XX000000001", HERE, 1);
		PlaceMarkers hollow = markers(new Place(HERE, new Microclimate(Lie.HOLLOW, false, false, null)));
		PlaceMarkers level = markers(Place.of(HERE));
		for (MarkerKind kind : MarkerKind.values()) {
			if (kind.needsDaylight() || kind == MarkerKind.DE_ICING_END) {
				// The record here has no rain, and daylight needs no record.
				continue;
			}
			MarkerKey key = new MarkerKey(kind, kind.needsThreshold() ? TemperatureThreshold.parse("5C") : null, 50,
					kind.needsGoal() ? HeatGoal.of(300) : null);
			LocalDate one = hollow.on(key, 2026).orElseThrow().date();
			LocalDate other = level.on(key, 2026).orElseThrow().date();
			if (kind.nightShare() > 0) {
				assertThat(one).as(kind.code()).isNotEqualTo(other);
				assertThat(one.isAfter(other)).as(kind.code()).isEqualTo(kind.spring());
			}
			else {
				assertThat(one).as(kind.code()).isEqualTo(other);
			}
		}
	}

	@Test
	void theExplanationHasTheStep() {
		wave("XX000000001", HERE, 1);
		MarkerKey key = new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, FREEZING, 10);
		assertThat(text(markers(new Place(HERE, new Microclimate(Lie.HOLLOW, false, true, null))).on(key, 2026)
			.orElseThrow()
			.explanation())).contains("Cold hollow, 2 °C colder, from memory",
					"Built-up town, 1 °C warmer, from memory", "Its temperatures carried to the site, 1.00 °C colder",
					"order of magnitude only");
		assertThat(text(markers(new Place(HERE, new Microclimate(Lie.HOLLOW, false, true, -1.2))).on(key, 2026)
			.orElseThrow()
			.explanation())).contains("Your thermometer, 1.2 °C colder").doesNotContain("Cold hollow");
	}

	@Test
	void theBlendIsThatOfTheMarkersAndItsWeightsAddUpToOne() {
		wave("XX000000001", new GeoPoint(45.1, 10, 150), 1);
		wave("XX000000002", new GeoPoint(44.7, 10.2, 400), 2);
		wave("XX000000003", new GeoPoint(45.3, 9.8, 90), 3);
		wave("XX000000004", new GeoPoint(45.9, 9.8, 90), 4);
		Microclimate slope = new Microclimate(Lie.SLOPE, false, false, null);
		FreezeClimatology freezes = of(slope, "0C");
		assertThat(freezes.stations()).hasSize(Neighbour.MOST);
		assertThat(freezes.stations().stream().mapToDouble(StationUse::weight).sum()).isCloseTo(1, within(1e-12));
		PlaceMarkers markers = markers(new Place(HERE, slope));
		for (FreezeDates.Point point : freezes.spring().points()) {
			assertThat(SeasonDay.toDate(point.value(), 2026))
				.isEqualTo(markers.on(new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, FREEZING, point.probability()), 2026)
					.orElseThrow()
					.date());
		}
		for (FreezeDates.Point point : freezes.fall().points()) {
			assertThat(SeasonDay.toDate(point.value(), 2026))
				.isEqualTo(markers.on(new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, FREEZING, point.probability()), 2026)
					.orElseThrow()
					.date());
		}
		double[] medians = freezes.stations().stream().mapToDouble((one) -> one.spring().median()).sorted().toArray();
		assertThat(freezes.spread().spring()).isEqualTo(medians[2] - medians[0]);
		assertThat(freezes.check().springCount()).as("the fourth station is checked too").isEqualTo(4);
	}

	/**
	 * By hand: stations 0, 20 and 40 km along a line freeze last on days 100, 110, 120
	 * and first on day 300. The middle one is foretold as 110; the outer ones, from 20
	 * and 40 km with weights 4 to 1, as 112 and 108. Mean error (12 + 0 + 12) / 3 = 8.
	 */
	@Test
	void leavingOneOutOnAFieldWhoseAnswerIsKnown() {
		yearly("XX000000001", 0, 100);
		yearly("XX000000002", 20, 110);
		yearly("XX000000003", 40, 120);
		FreezeClimatology freezes = of(Microclimate.NONE, "0C");
		assertThat(freezes.check().rows()).extracting(LeftOut::springOwn).containsExactly(100.0, 110.0, 120.0);
		assertThat(freezes.check().rows().get(0).springForetold()).isCloseTo(112, within(0.01));
		assertThat(freezes.check().rows().get(1).springForetold()).isCloseTo(110, within(0.01));
		assertThat(freezes.check().rows().get(2).springForetold()).isCloseTo(108, within(0.01));
		assertThat(freezes.check().springError()).isCloseTo(8, within(0.01));
		assertThat(freezes.check().springCount()).isEqualTo(3);
		assertThat(freezes.check().fallError()).isCloseTo(0, within(1e-9));
		assertThat(freezes.spread().spring()).isEqualTo(20);
		assertThat(freezes.length().at(50)).as("days between 300 and the spring day, counted with the weights")
			.isCloseTo(299 - freezes.spring().at(50), within(1e-9));
		// A hollow at the place changes the place, not the stations.
		assertThat(of(new Microclimate(Lie.HOLLOW, false, false, null), "0C").check().springError()).isCloseTo(8,
				within(0.01));
	}

	@Test
	void oneStationAloneCanNotBeChecked() {
		wave("XX000000001", HERE, 1);
		FreezeClimatology freezes = of(Microclimate.NONE, "0C");
		assertThat(freezes.check().springError()).isNull();
		assertThat(freezes.check().springCount()).isZero();
		assertThat(freezes.spread().spring()).isNull();
	}

	@Test
	void withoutAStationOrAFreezeTheReasonIsSaid() {
		FreezeClimatology nowhere = of(Microclimate.NONE, "0C");
		assertThat(nowhere.spring().points()).isEmpty();
		assertThat(nowhere.spring().undefined()).contains("no station within 150 km");
		assertThat(nowhere.periods()).hasSize(4).allSatisfy((row) -> assertThat(row.spring().value()).isNull());
		wave("XX000000001", HERE, 1);
		assertThat(of(Microclimate.NONE, "-60C").fall().undefined()).contains("fewer than one in ten");
	}

	/** The record ends in January 2020, after the first freeze of the fall of 2019. */
	@Test
	void centralParkHas29SeasonsOfTheNormalsPeriod() {
		real(LocalDate.of(2020, 1, 3));
		Place park = Place.of(this.climates.get(0).station().point());
		Map<NormalsPeriod, PeriodRow> rows = of(park, "32F", NormalsPeriod.NORMALS_1991_2020).periods()
			.stream()
			.collect(Collectors.toMap(PeriodRow::period, (row) -> row));
		assertThat(years(rows.get(NormalsPeriod.NORMALS_1991_2020))).isEqualTo("1991 to 2019");
		assertThat(of(park, "32F", NormalsPeriod.NORMALS_1991_2020).stations().get(0)).satisfies((one) -> {
			assertThat(one.spring().used()).isEqualTo(29);
			assertThat(one.fall().used()).isEqualTo(29);
		});
		// The window of the fall of 2019 ends in July 2020, after the record.
		assertThat(years(rows.get(NormalsPeriod.LATEST_30))).isEqualTo("1989 to 2018");
		assertThat(years(rows.get(NormalsPeriod.LATEST_15))).isEqualTo("2004 to 2018");
		assertThat(rows.get(NormalsPeriod.ALL).from()).isEqualTo(1870);
		assertThat(rows.get(NormalsPeriod.LATEST_30).spring().later()).isZero();
		PeriodRow all = rows.get(NormalsPeriod.ALL);
		assertThat(all.springMedian().later())
			.isEqualTo(all.springMedian().value() - rows.get(NormalsPeriod.LATEST_30).springMedian().value());
		assertThat(all.springMedian().later()).as("spring came later in the nineteenth century").isPositive();
	}

	/** Independent yearly dates of a script that shares no code with the project. */
	@Test
	void centralParkAgreesWithIndependentYearlyDates() {
		real(LocalDate.of(2020, 1, 3));
		Place park = Place.of(this.climates.get(0).station().point());
		List<String[]> rows = SharedData.rows(SharedData.file("climate/independent-annual-freeze-dates.csv"))
			.stream()
			.filter((row) -> row[0].equals(RecordFixture.CENTRAL_PARK.value()) && row[2].equals("32F"))
			.filter((row) -> Integer.parseInt(row[1]) >= 2004 && Integer.parseInt(row[1]) <= 2018)
			.toList();
		assertThat(rows).hasSize(15);
		int[] days = rows.stream()
			.mapToInt((row) -> SeasonDay.of(LocalDate.parse(row[3]), Integer.parseInt(row[1])))
			.sorted()
			.toArray();
		FreezeClimatology freezes = of(park, "32F", NormalsPeriod.LATEST_15);
		assertThat(freezes.spring().at(50)).as("the eighth of fifteen").isEqualTo(days[7]);
		assertThat(freezes.stations().get(0).spring().used()).isEqualTo(15);
	}

	/** Independent count, 10, 50 and 90 % of 1981 to 2010. */
	@Test
	void centralParkOverAPeriodThatWasCountedIndependently() {
		real(LocalDate.of(2011, 7, 31));
		Place park = Place.of(this.climates.get(0).station().point());
		FreezeClimatology freezes = of(park, "32F", NormalsPeriod.LATEST_30);
		assertThat(freezes.stations().get(0)).satisfies((one) -> {
			assertThat(one.from()).isEqualTo(1981);
			assertThat(one.to()).isEqualTo(2010);
		});
		assertThat(date(freezes.spring().at(10)) + date(freezes.spring().at(50)) + date(freezes.spring().at(90)))
			.isEqualTo("04-09 03-29 03-19 ");
		assertThat(date(freezes.fall().at(10)) + date(freezes.fall().at(50)) + date(freezes.fall().at(90)))
			.isEqualTo("11-09 11-18 12-04 ");
	}

	private static String date(Double day) {
		return SeasonDay.toDate(day, 2001).toString().substring(5) + " ";
	}

	private static String years(PeriodRow row) {
		return row.from() + " to " + row.to();
	}

	private void real(LocalDate last) {
		DailyRecord all = RecordFixture.real(RecordFixture.CENTRAL_PARK);
		DailyRecord.Builder some = DailyRecord.builder();
		for (LocalDate day = all.firstDay(Element.TMIN).orElseThrow(); !day.isAfter(last); day = day.plusDays(1)) {
			short value = all.value(Element.TMIN, day);
			if (value != DailyRecord.MISSING) {
				some.set(Element.TMIN, day, value);
			}
		}
		this.climates.add(new StationClimate(
				new Station(RecordFixture.CENTRAL_PARK, "Central Park", new GeoPoint(40.7789, -73.9692, 39.6), false),
				some.build()));
	}

	private void wave(String id, GeoPoint point, long seed) {
		this.climates.add(new StationClimate(new Station(new StationId(id), id, point, false),
				RecordFixture.wave(seed, 1985, 2021, 8, false)));
	}

	/** The same last and first freeze every year, at the height of the place. */
	private void yearly(String id, double north, int springDay) {
		Map<String, Integer> others = new HashMap<>();
		for (int year = 1985; year <= 2021; year++) {
			others.put(SeasonDay.toDate(springDay, year).toString(), -300);
			others.put(SeasonDay.toDate(300, year).toString(), -300);
		}
		this.climates.add(new StationClimate(
				new Station(new StationId(id), id, new GeoPoint(45 + north / DEGREE, 10, 200), false),
				RecordFixture.constant("1984-12-31", "2022-12-31", 300, others)));
	}

	private FreezeClimatology of(Microclimate microclimate, String threshold) {
		return of(new Place(HERE, microclimate), threshold, NormalsPeriod.LATEST_30);
	}

	private FreezeClimatology of(Place place, String threshold, NormalsPeriod period) {
		return PlaceFreezes.of(place, TemperatureThreshold.parse(threshold), period, stations(), this::open);
	}

	private PlaceMarkers markers(Place place) {
		return new BlendedPlace(place.point().hemisphere(),
				Neighbour.choose(place, NormalsPeriod.LATEST_30, stations(), this::open, Neighbour.MOST));
	}

	private List<Station> stations() {
		return this.climates.stream().map(StationClimate::station).toList();
	}

	private Optional<StationClimate> open(Station station) {
		return this.climates.stream().filter((one) -> one.station().equals(station)).findFirst();
	}

	private static void assertSame(FreezeClimatology one, FreezeClimatology other) {
		assertThat(values(one.spring())).hasSize(19).containsExactly(values(other.spring()), within(1e-9));
		assertThat(values(one.fall())).hasSize(19).containsExactly(values(other.fall()), within(1e-9));
		assertThat(values(one.length())).hasSize(19).containsExactly(values(other.length()), within(1e-9));
	}

	private static double[] values(FreezeClimatology.Blended curve) {
		return curve.points().stream().mapToDouble(FreezeDates.Point::value).toArray();
	}

	private static String text(Explanation step) {
		return String.join(", ", Arrays.asList(step.label(), step.value(), step.detail(), step.source())) + "\n"
				+ step.steps().stream().map(PlaceFreezesTests::text).collect(Collectors.joining());
	}

}
