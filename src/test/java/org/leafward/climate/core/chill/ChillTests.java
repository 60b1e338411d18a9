package org.leafward.climate.core.chill;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

/** Chill against the tables in shared/chill, which name their sources. */
class ChillTests {

	@Test
	void utahUnitsHaveThePublishedWeights() {
		List<String[]> rows = SharedData.table("chill/utah-weights.csv");
		assertThat(rows).hasSize(7);
		for (String[] row : rows) {
			double units = Double.parseDouble(row[2]);
			double above = row[0].isEmpty() ? -20 : Double.parseDouble(row[0]);
			double upTo = row[1].isEmpty() ? 110 : Double.parseDouble(row[1]);
			assertThat(UtahModel.units(celsius(above + 0.01))).as("above %s", above).isEqualTo(units);
			assertThat(UtahModel.units(celsius(upTo))).as("up to %s", upTo).isEqualTo(units);
			assertThat(UtahModel.units(celsius((above + upTo) / 2))).isEqualTo(units);
		}
		assertThatIllegalArgumentException().isThrownBy(() -> UtahModel.units(Double.NaN));
	}

	/**
	 * The constants, told from outside: at a constant temperature the first portion's
	 * size follows from them alone. Written out here from the table, with the order of
	 * steps of the public programs.
	 */
	@Test
	void dynamicModelHasThePublishedConstants() {
		Map<String, Double> c = SharedData.table("chill/dynamic-constants.csv")
			.stream()
			.collect(Collectors.toMap((row) -> row[0], (row) -> Double.parseDouble(row[1])));
		for (double celsius : new double[] { 2, 5, 8, 11 }) {
			double kelvin = celsius + c.get("zero");
			double even = c.get("a0") / c.get("a1") * Math.exp((c.get("e1") - c.get("e0")) / kelvin);
			double rate = c.get("a1") * Math.exp(-c.get("e1") / kelvin);
			double slope = Math.exp(c.get("slope") * c.get("tf") * (kelvin - c.get("tf")) / kelvin);
			int hours = (int) Math.ceil(-Math.log(1 - 1 / even) / rate);
			double first = even * (1 - Math.exp(-rate * hours)) * slope / (1 + slope);
			DynamicModel model = new DynamicModel();
			for (int hour = 1; hour < hours; hour++) {
				model.hour(celsius);
			}
			assertThat(model.portions()).as("%s °C before hour %d", celsius, hours).isZero();
			model.hour(celsius);
			assertThat(model.portions()).as("%s °C", celsius).isCloseTo(first, within(1e-9));
		}
	}

	/**
	 * Regression only: see the table's head. The script has no step for its first hour.
	 */
	@Test
	void dynamicModelAgreesWithASeparateScript() {
		List<String[]> rows = SharedData.table("chill/dynamic-regression.csv");
		assertThat(rows).hasSize(11);
		for (String[] row : rows) {
			String[] both = row[0].split("/");
			DynamicModel model = new DynamicModel();
			int first = -1;
			for (int hour = 1; hour < 720; hour++) {
				model.hour(Double.parseDouble(both[(hour % 24 < 16) ? 0 : 1]));
				if (first < 0 && model.portions() > 0) {
					first = hour;
				}
			}
			assertThat(model.portions()).as(row[0]).isCloseTo(Double.parseDouble(row[2]), within(0.001));
			if (!row[1].isEmpty()) {
				assertThat(first).as(row[0]).isEqualTo(Integer.parseInt(row[1]));
			}
		}
	}

	@Test
	void warmDaysUndoWhatIsNotYetAPortion() {
		DynamicModel cold = new DynamicModel();
		DynamicModel mixed = new DynamicModel();
		for (int hour = 0; hour < 24 * 30; hour++) {
			cold.hour(6);
			mixed.hour((hour % 24 < 16) ? 6 : 20);
		}
		assertThat(mixed.portions()).isLessThan(cold.portions() * 16 / 24);
		assertThatIllegalArgumentException().isThrownBy(() -> cold.hour(Double.NaN));
	}

	/** UC: 45 °F and below, or 32 to 45 °F; 45 °F is 7.2222 °C. */
	@Test
	void chillHoursIncludeTheirBounds() {
		assertThat(ChillHours.UP_TO_45F.counts(celsius(45))).isTrue();
		assertThat(ChillHours.UP_TO_45F.counts(celsius(45.01))).isFalse();
		assertThat(ChillHours.UP_TO_45F.counts(-30)).isTrue();
		assertThat(ChillHours.FROM_32_TO_45F.counts(0)).isTrue();
		assertThat(ChillHours.FROM_32_TO_45F.counts(-0.01)).isFalse();
		assertThat(ChillHours.FROM_32_TO_45F.counts(Double.NaN)).isFalse();
	}

	/** By hand: 10 h of light, 7 to 17 h; the sine peaks (10 + 4) / 2 = 7 h after 7 h. */
	@Test
	void hourlyCurveOfAWinterDay() {
		HourlyTemperature.Day day = new HourlyTemperature.Day(0, 10);
		double[] hours = HourlyTemperature.of(day, day, 0, 10);
		double sunset = 10 * Math.sin(Math.PI * 10 / 14);
		assertThat(hours).hasSize(24);
		assertThat(hours[7]).isEqualTo(0);
		assertThat(hours[14]).isCloseTo(10, within(1e-9));
		assertThat(hours[17]).isCloseTo(sunset, within(1e-9));
		assertThat(hours[18]).isCloseTo(sunset, within(1e-9));
		assertThat(hours[21]).isCloseTo(sunset * (1 - Math.log(4) / Math.log(14)), within(1e-9));
		assertThat(hours[6]).isCloseTo(sunset * (1 - Math.log(13) / Math.log(14)), within(1e-9));
	}

	@Test
	void hourlyTemperaturesStayBetweenTheExtremes() {
		Random random = new Random(8);
		for (int round = 0; round < 2_000; round++) {
			double[] low = random.doubles(3, -30, 20).toArray();
			double swing = random.nextDouble() * 25;
			double[] hours = HourlyTemperature.of(new HourlyTemperature.Day(low[0], low[0] + swing),
					new HourlyTemperature.Day(low[1], low[1] + swing), low[2], random.nextDouble() * 24);
			double least = Math.min(low[0], Math.min(low[1], low[2]));
			double most = Math.max(low[0], Math.max(low[1], low[2])) + swing;
			for (double hour : hours) {
				assertThat(hour).isBetween(least - 1e-9, most + 1e-9);
			}
		}
		assertThatIllegalArgumentException().isThrownBy(() -> HourlyTemperature.of(new HourlyTemperature.Day(0, 1),
				new HourlyTemperature.Day(0, 1), 0, Double.NaN));
	}

	/**
	 * By hand: 5 °C all day and night is 41 °F; November to February are 120 days, 2880
	 * hours, and each is a Utah unit from September on, 181 days.
	 */
	@Test
	void aSeasonAtFiveDegrees() {
		ChillSums sums = before(constant("2018-08-01", "2019-12-31", 50), 2019, Hemisphere.NORTH).orElseThrow();
		assertThat(sums.hoursTo45()).isEqualTo(2880);
		assertThat(sums.hours32To45()).isEqualTo(2880);
		assertThat(sums.utah()).isEqualTo(181 * 24);
		assertThat(sums.missing()).isZero();
		DynamicModel model = new DynamicModel();
		for (int hour = 0; hour < 181 * 24; hour++) {
			model.hour(5);
		}
		assertThat(sums.portions()).isCloseTo(model.portions(), within(1e-9));
		assertThat(before(constant("2019-08-01", "2020-12-31", 50), 2020, Hemisphere.NORTH).orElseThrow().hoursTo45())
			.as("a leap year has a day more")
			.isEqualTo(2904);
	}

	@Test
	void warmFallsDoNotMakeUtahUnitsNegative() {
		ChillSums sums = before(constant("2018-08-01", "2019-12-31", 250), 2019, Hemisphere.NORTH).orElseThrow();
		assertThat(sums.utah()).isZero();
		assertThat(sums.portions()).isZero();
		assertThat(sums.hoursTo45()).isZero();
	}

	/** March to August are 184 days, so the south has three days more. */
	@Test
	void theSouthHasItsWinterInTheMiddleOfTheYear() {
		ChillSums sums = before(constant("2019-02-01", "2019-12-31", 50), 2019, Hemisphere.SOUTH).orElseThrow();
		assertThat(sums.utah()).isEqualTo(184 * 24);
		assertThat(sums.hoursTo45()).isEqualTo((184 - 61) * 24);
	}

	@Test
	void shortGapsAreBridgedAndCountedAndLongOnesLeaveTheWinterOut() {
		DailyRecord.Builder five = DailyRecord.builder();
		DailyRecord.Builder six = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2018, 8, 1); day.getYear() < 2020; day = day.plusDays(1)) {
			long gap = day.toEpochDay() - LocalDate.of(2018, 12, 1).toEpochDay();
			set((gap >= 0 && gap < 5) ? null : five, day);
			set((gap >= 0 && gap < 6) ? null : six, day);
		}
		ChillSums sums = before(five.build(), 2019, Hemisphere.NORTH).orElseThrow();
		assertThat(sums.missing()).isEqualTo(5);
		assertThat(sums.hoursTo45()).isEqualTo(2880);
		assertThat(before(six.build(), 2019, Hemisphere.NORTH)).isEmpty();
		assertThat(before(six.build(), 2021, Hemisphere.NORTH)).as("not in the record").isEmpty();
	}

	/** Colder than 45 °F most of the time, so more chill hours below than between. */
	@Test
	void aRealWinterHasPlausibleChill() {
		ChillSums sums = before(RecordFixture.real(RecordFixture.CENTRAL_PARK), 2015, Hemisphere.NORTH).orElseThrow();
		assertThat(sums.hoursTo45()).isGreaterThan(sums.hours32To45()).isBetween(1_500, 2_880);
		assertThat(sums.portions()).isBetween(40.0, 100.0);
		assertThat(sums.utah()).isBetween(500.0, 2_000.0);
	}

	private static Optional<ChillSums> before(DailyRecord record, int year, Hemisphere hemisphere) {
		return ChillSums.before(record, new Season(year, hemisphere), (date) -> 10.5);
	}

	private static DailyRecord constant(String from, String to, int tenths) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.parse(from); !day.isAfter(LocalDate.parse(to)); day = day.plusDays(1)) {
			builder.set(Element.TMIN, day, tenths);
			builder.set(Element.TMAX, day, tenths);
		}
		return builder.build();
	}

	private static void set(DailyRecord.Builder builder, LocalDate day) {
		if (builder != null) {
			builder.set(Element.TMIN, day, 50);
			builder.set(Element.TMAX, day, 50);
		}
	}

	private static double celsius(double fahrenheit) {
		return (fahrenheit - 32) / 1.8;
	}

}
