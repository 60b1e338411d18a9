package org.leafward.climate.core.drought;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.climate.DroughtReading;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class StationDroughtTests {

	private static final Station STATION = new Station(RecordFixture.CENTRAL_PARK, "Central Park",
			new GeoPoint(40.7789, -73.9692, 39.6), false);

	private static final LocalDate TODAY = LocalDate.parse("2020-07-01");

	/** The table's head names the source. */
	@Test
	void indexOfRealStationsAgreesWithAnIndependentCount() {
		List<String[]> rows = SharedData.table("drought/station-spi.csv");
		assertThat(rows).hasSize(8);
		for (String[] row : rows) {
			DailyRecord record = RecordFixture.real(new StationId(row[0]));
			LocalDate last = LocalDate.parse(row[1]);
			RainSums rain = new RainSums(record);
			double[] before = rain.before(last);
			PrecipitationIndex index = PrecipitationIndex.of(before).orElseThrow();
			assertThat(rain.upTo(last)).isCloseTo(Double.parseDouble(row[2]), within(0.051));
			assertThat(before).hasSize(Integer.parseInt(row[3]));
			assertThat(index.rain().shape()).isCloseTo(Double.parseDouble(row[4]), within(0.0001));
			assertThat(index.rain().scale()).isCloseTo(Double.parseDouble(row[5]), within(0.0001));
			assertThat(StationDrought.read(STATION, record, last.plusDays(1)).orElseThrow().index())
				.as(String.join(",", row))
				.isCloseTo(Math.min(3, Double.parseDouble(row[6])), within(0.001));
		}
	}

	/** The drought of the 1960s is the worst in New York's record (common knowledge). */
	@Test
	void aReadingOpensToItsYears() {
		DroughtReading reading = StationDrought
			.read(STATION, RecordFixture.real(RecordFixture.CENTRAL_PARK), LocalDate.parse("1965-09-01"))
			.orElseThrow();
		assertThat(reading.severity()).isEqualTo(4);
		assertThat(reading.words()).isEqualTo("exceptional drought (D4)");
		assertThat(text(reading.explanation())).contains("not the weekly drought map", "\u22122.5", "113 mm",
				"Of 96 years before", "up to Tue 31 Aug 1965");
	}

	@Test
	void tooFewYearsOrStaleRainAreNotKnown() {
		assertThat(StationDrought.read(STATION, rain(20, 0), TODAY)).isPresent();
		assertThat(StationDrought.read(STATION, rain(19, 0), TODAY)).isEmpty();
		assertThat(StationDrought.read(STATION, rain(30, 9), TODAY)).isPresent();
		assertThat(StationDrought.read(STATION, rain(30, 10), TODAY)).isEmpty();
		assertThat(StationDrought.read(STATION, DailyRecord.builder().build(), TODAY)).isEmpty();
	}

	/** Four days of ninety may be missing, and count like the others. */
	@Test
	void fewMissingDaysAreBridgedAndManyAreNot() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (int back = 1; back <= 90; back++) {
			if (back % 20 != 0) {
				builder.set(Element.PRCP, TODAY.minusDays(back), 10);
			}
		}
		assertThat(new RainSums(builder.build()).upTo(TODAY.minusDays(1))).isCloseTo(90, within(1e-9));
		assertThat(new RainSums(builder.build()).upTo(TODAY)).isNaN();
	}

	/** A record of some years and this spring, whose last days are missing. */
	private static DailyRecord rain(int years, int missing) {
		Random random = new Random(1);
		DailyRecord.Builder builder = DailyRecord.builder();
		LocalDate from = TODAY.minusYears(years).minusDays(90);
		for (LocalDate day = from; day.isBefore(TODAY.minusDays(missing)); day = day.plusDays(1)) {
			builder.set(Element.PRCP, day, random.nextInt(3) * random.nextInt(80));
		}
		return builder.build();
	}

	private static String text(Explanation step) {
		return Arrays.asList(step.label(), step.value(), step.detail(), step.source()) + "\n"
				+ step.steps().stream().map(StationDroughtTests::text).collect(Collectors.joining());
	}

}
