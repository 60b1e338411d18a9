package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Freeze dates against tables from outside the project. */
class PublishedFreezeDatesTests {

	/**
	 * Published: the table's head. Our sample has the seasons 1841 to 2002, the published
	 * one goes on to 2011 with another station, hence the tolerances.
	 */
	@Test
	void torontoAgreesWithThePublishedProbabilities() {
		DailyRecord record = RecordFixture.real(RecordFixture.TORONTO);
		List<SeasonOutcome> springs = outcomes(record, 1841, 2002, true, 0);
		List<SeasonOutcome> falls = outcomes(record, 1841, 2002, false, 0);
		Sample spring = Sample.ofDates(springs);
		Sample fall = Sample.ofDates(falls);
		Sample length = new Sample(IntStream.range(0, springs.size())
			.mapToDouble((at) -> FreezeSearch.frostFreeDays(springs.get(at), falls.get(at)).getAsInt())
			.toArray(), 0, 0);
		int exactToADay = 0;
		for (String[] row : SharedData.table("climate/toronto-freeze-probabilities.csv")) {
			int percent = Integer.parseInt(row[0]);
			double springDay = Math.floor(spring.quantile(100 - percent) + 0.5);
			double fallDay = Math.floor(fall.quantile(percent) + 0.5);
			double days = length.quantile(percent);
			assertThat(springDay).as("spring %d %%", percent).isCloseTo(day(row[1]), within(1.0));
			assertThat(fallDay).as("fall %d %%", percent).isCloseTo(day(row[2]), within(3.0));
			assertThat(days).as("length %d %%", percent).isCloseTo(Double.parseDouble(row[3]), within(2.5));
			exactToADay += (Math.abs(springDay - day(row[1])) <= 1) ? 1 : 0;
			exactToADay += (Math.abs(fallDay - day(row[2])) <= 1) ? 1 : 0;
			exactToADay += (Math.abs(Math.floor(days + 0.5) - Double.parseDouble(row[3])) <= 1) ? 1 : 0;
		}
		assertThat(exactToADay).as("of 21 values within a day").isGreaterThanOrEqualTo(16);
		assertThat(spring.used()).isEqualTo(162);
	}

	/** What the table rules out: a strict comparison is days too early in spring. */
	@Test
	void aStrictComparisonWouldMissThePublishedTable() {
		Sample strict = Sample.ofDates(outcomes(RecordFixture.real(RecordFixture.TORONTO), 1841, 2002, true, -1));
		assertThat(strict.quantile(50)).isLessThan(day("04-28") - 2.0);
	}

	/**
	 * Every yearly date of both stations at all thresholds, against a table made by a
	 * script that shares no code with the project.
	 */
	@Test
	void everyYearAgreesWithAnIndependentCount() {
		List<String[]> rows = SharedData.rows(SharedData.file("climate/independent-annual-freeze-dates.csv"));
		assertThat(rows).hasSizeGreaterThan(760);
		for (String[] row : rows) {
			DailyRecord record = RecordFixture.real(new StationId(row[0]));
			Season season = new Season(Integer.parseInt(row[1]), Hemisphere.NORTH);
			int limit = Limits.minimum(TemperatureThreshold.parse(row[2]), 0, new StationId(row[0]));
			SeasonOutcome spring = FreezeSearch.lastSpring(record, season, limit);
			SeasonOutcome fall = FreezeSearch.firstFall(record, season, limit);
			assertThat(spring.date()).as("spring of %s", String.join(",", row)).isEqualTo(LocalDate.parse(row[3]));
			assertThat(fall.date()).as("fall of %s", String.join(",", row)).isEqualTo(LocalDate.parse(row[4]));
			assertThat(FreezeSearch.frostFreeDays(spring, fall)).hasValue(Integer.parseInt(row[5]));
			assertThat(spring.missing()).isEqualTo(Integer.parseInt(row[6]));
			assertThat(fall.missing()).isEqualTo(Integer.parseInt(row[7]));
		}
	}

	/** Published: weathergamut.com, 13 December 2011, on the Central Park record. */
	@Test
	void latestFirstFreezeOfCentralPark() {
		SeasonOutcome latest = outcomes(RecordFixture.real(RecordFixture.CENTRAL_PARK), 1870, 2010, false, 0).stream()
			.max((one, other) -> Integer.compare(SeasonDay.of(one.date(), one.season()),
					SeasonDay.of(other.date(), other.season())))
			.orElseThrow();
		assertThat(latest.date()).isEqualTo(LocalDate.of(1998, 12, 22));
	}

	/**
	 * Published: News 12, growing season of 2015 "at or above 32 F" from late March into
	 * January 2016, the longest on record; so the strict rule, minimum below 32 °F.
	 */
	@Test
	void theSeasonOf2015ReachesIntoTheNextYear() {
		DailyRecord record = RecordFixture.real(RecordFixture.CENTRAL_PARK);
		Season season = new Season(2015, Hemisphere.NORTH);
		SeasonOutcome spring = FreezeSearch.lastSpring(record, season, -1);
		SeasonOutcome fall = FreezeSearch.firstFall(record, season, -1);
		assertThat(spring.date()).isEqualTo(LocalDate.of(2015, 3, 29));
		assertThat(fall.date()).isEqualTo(LocalDate.of(2016, 1, 4));
		assertThat(SeasonDay.of(fall.date(), 2015)).isEqualTo(369);
		assertThat(FreezeSearch.frostFreeDays(spring, fall)).hasValue(280);
	}

	/**
	 * 28 °F is kept as -2.2 °C, which is 28.04 °F, or as -2.1 °C: compared unrounded with
	 * 28.0, eight spring and six fall dates of 1991 to 2019 move (counted by an
	 * independent script).
	 */
	@Test
	void wholeFahrenheitThresholdsCatchWholeFahrenheitMinima() {
		DailyRecord record = RecordFixture.real(RecordFixture.CENTRAL_PARK);
		int limit = Limits.minimum(TemperatureThreshold.parse("28F"), 0, RecordFixture.CENTRAL_PARK);
		int unrounded = (int) Math.floor((28.0 - 32) / 0.18);
		assertThat(differing(record, true, limit, unrounded)).isEqualTo(8);
		assertThat(differing(record, false, limit, unrounded)).isEqualTo(6);
		Sample spring = Sample.ofDates(outcomes(record, 1991, 2019, true, limit));
		assertThat(SeasonDay.toDate(spring.quantile(90), 2001)).isEqualTo(LocalDate.of(2001, 3, 31));
	}

	/** Independent count, 10, 50 and 90 % of 1981 to 2010. */
	@Test
	void centralParkOverANormalPeriod() {
		StationClimate climate = new StationClimate(
				new Station(RecordFixture.CENTRAL_PARK, "Central Park", new GeoPoint(40.7789, -73.9692, 39.6), false),
				RecordFixture.real(RecordFixture.CENTRAL_PARK));
		assertThat(dates(climate, "32F")).isEqualTo("04-09 03-29 03-19 11-09 11-18 12-04");
		assertThat(dates(climate, "28F")).isEqualTo("04-06 03-22 03-13 11-19 11-30 12-18");
	}

	private static String dates(StationClimate climate, String threshold) {
		SeasonPeriod period = new SeasonPeriod(1981, 2010);
		TemperatureThreshold value = TemperatureThreshold.parse(threshold);
		Sample spring = climate.sample(MarkerKind.LAST_SPRING_FREEZE, value, 0, Hemisphere.NORTH, period);
		Sample fall = climate.sample(MarkerKind.FIRST_FALL_FREEZE, value, 0, Hemisphere.NORTH, period);
		return String.join(" ", text(spring, 90), text(spring, 50), text(spring, 10), text(fall, 10), text(fall, 50),
				text(fall, 90));
	}

	private static String text(Sample sample, int below) {
		return SeasonDay.toDate(sample.quantile(below), 2001).toString().substring(5);
	}

	private static long differing(DailyRecord record, boolean spring, int limit, int other) {
		List<SeasonOutcome> rounded = outcomes(record, 1991, 2019, spring, limit);
		List<SeasonOutcome> unrounded = outcomes(record, 1991, 2019, spring, other);
		return IntStream.range(0, rounded.size()).filter((at) -> !rounded.get(at).equals(unrounded.get(at))).count();
	}

	private static List<SeasonOutcome> outcomes(DailyRecord record, int from, int to, boolean spring, int limit) {
		return new SeasonPeriod(from, to).stream(Hemisphere.NORTH)
			.map((season) -> spring ? FreezeSearch.lastSpring(record, season, limit)
					: FreezeSearch.firstFall(record, season, limit))
			.toList();
	}

	private static double day(String monthAndDay) {
		return SeasonDay.of(LocalDate.parse("2001-" + monthAndDay), 2001);
	}

}
