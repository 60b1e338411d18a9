package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** The tables of FAO-56; sources and tolerances stand in the heads of the files. */
class PublishedTablesTests {

	/** Slack for decimal fractions that binary numbers can't hold. */
	private static final double SLACK = 1e-9;

	@Test
	void airByHeight() {
		List<String[]> rows = SharedData.table("water/air-tables.csv");
		assertThat(rows).hasSize(157);
		for (String[] row : rows) {
			double argument = Double.parseDouble(row[1]);
			double computed = switch (row[0]) {
				case "2.1" -> Vapour.pressure(argument);
				case "2.2" -> Vapour.psychrometricConstant(Vapour.pressure(argument));
				case "2.9" -> Wind.factor(argument);
				default -> throw new IllegalStateException(row[0]);
			};
			double half = row[0].equals("2.1") ? 0.05 : 0.0005;
			assertThat(computed).as("table %s at %s", row[0], row[1])
				.isCloseTo(Double.parseDouble(row[2]), within(half + SLACK));
		}
	}

	@Test
	void vapourAndHeatByTemperature() {
		List<String[]> rows = SharedData.table("water/temperature-tables.csv");
		assertThat(rows).hasSize(96);
		for (String[] row : rows) {
			double celsius = Double.parseDouble(row[0]);
			assertThat(Vapour.saturation(celsius)).as("table 2.3 at %s", row[0])
				.isCloseTo(Double.parseDouble(row[1]), within(0.0005 + SLACK));
			assertThat(Vapour.slope(celsius)).as("table 2.4 at %s", row[0])
				.isCloseTo(Double.parseDouble(row[2]), within(0.0005 + SLACK));
			assertThat(Radiation.blackBody(celsius)).as("table 2.8 at %s", row[0])
				.isCloseTo(Double.parseDouble(row[3]), within(0.005 + SLACK));
		}
	}

	@Test
	void radiationAboveTheAtmosphere() {
		List<String[]> rows = SharedData.table("water/extraterrestrial-radiation.csv");
		assertThat(rows).hasSize(67);
		for (String[] row : rows) {
			for (int month = 1; month <= 12; month++) {
				assertThat(SunGeometry.extraterrestrial(Double.parseDouble(row[0]), fifteenth(month)))
					.as("table 2.6 at %s in month %d", row[0], month)
					.isCloseTo(Double.parseDouble(row[month]), within(0.15));
			}
		}
	}

	/**
	 * Values off by more than half a printed digit are counted; the head has the number.
	 */
	@Test
	void dayLength() {
		List<String[]> rows = SharedData.table("water/day-length-south.csv");
		assertThat(rows).hasSize(36);
		int off = 0;
		for (String[] row : rows) {
			double latitude = Double.parseDouble(row[0]);
			for (int month = 1; month <= 12; month++) {
				double printed = Double.parseDouble(row[month]);
				double computed = SunGeometry.dayLength(latitude, fifteenth(month));
				assertThat(computed).as("table 2.7 at %s in month %d", row[0], month)
					.isCloseTo(printed, within((latitude < -60) ? 0.08 : 0.06));
				off += (Math.abs(computed - printed) > 0.05 + SLACK) ? 1 : 0;
			}
		}
		assertThat(off).isEqualTo(26);
	}

	private static int fifteenth(int month) {
		return LocalDate.of(2001, month, 15).getDayOfYear();
	}

	@Test
	void soilByTexture() {
		List<String[]> rows = SharedData.table("water/soil-texture.csv");
		assertThat(rows).hasSize(TextureClass.values().length - 1);
		for (String[] row : rows) {
			TextureClass texture = TextureClass.valueOf(row[0]);
			assertRange(texture.fieldCapacity(), row, 1);
			assertRange(texture.wiltingPoint(), row, 3);
			assertRange(texture.available(), row, 5);
			assertRange(texture.readilyEvaporable(), row, 7);
			assertRange(texture.evaporable(), row, 9);
		}
		assertThat(TextureClass.CLAY_LOAM.available()).as("stands in for a row that is not printed")
			.isEqualTo(TextureClass.SILTY_CLAY_LOAM.available());
	}

	private static void assertRange(TextureClass.Range range, String[] row, int at) {
		assertThat(range).as("%s at %d", row[0], at)
			.isEqualTo(new TextureClass.Range(Double.parseDouble(row[at]), Double.parseDouble(row[at + 1])));
	}

	@Test
	void rootsAndDepletion() {
		List<String[]> rows = SharedData.table("water/rooting-depletion.csv");
		assertThat(rows).hasSize(RootedCrop.values().length);
		for (String[] row : rows) {
			RootedCrop crop = RootedCrop.valueOf(row[0]);
			assertThat(new double[] { crop.shallowest(), crop.deepest(), crop.fraction() }).as(row[0])
				.containsExactly(Double.parseDouble(row[1]), Double.parseDouble(row[2]), Double.parseDouble(row[3]));
		}
	}

	/**
	 * Source: figure 18 of FAO-56. Half a printed digit is allowed; what is off is
	 * pinned, and the file's head says why.
	 */
	@Test
	void monthsAtCabinda() {
		List<String[]> rows = SharedData.table("water/cabinda.csv");
		assertThat(rows).hasSize(12);
		List<String> off = new ArrayList<>();
		ReferenceEt.Ground ground = new ReferenceEt.Ground(-5.33, 20, Setting.COASTAL);
		for (String[] row : rows) {
			int day = fifteenth(Integer.parseInt(row[0]));
			Sunlight sunshine = new Sunlight.Sunshine(Double.parseDouble(row[5]));
			WeatherDay weather = new WeatherDay(day, Double.parseDouble(row[1]), Double.parseDouble(row[2]),
					new Humidity.Mean(Double.parseDouble(row[3])), sunshine,
					new Wind(Double.parseDouble(row[4]) / 86.4, 2));
			compare(off, "radiation in " + row[0], sunshine.radiation(SunGeometry.dayLength(ground.latitude(), day),
					SunGeometry.extraterrestrial(ground.latitude(), day)), row[6]);
			compare(off, "evapotranspiration in " + row[0], ReferenceEt.of(weather, ground).millimetres(), row[7]);
		}
		assertThat(off).containsExactlyInAnyOrder("evapotranspiration in 2: 3.60 for 3.7",
				"radiation in 3: 17.55 for 17.4", "radiation in 4: 16.45 for 16.4",
				"evapotranspiration in 5: 2.79 for 2.9", "evapotranspiration in 6: 2.43 for 2.6",
				"evapotranspiration in 7: 2.44 for 2.6", "radiation in 8: 12.32 for 12.4",
				"evapotranspiration in 8: 2.54 for 2.6", "radiation in 9: 12.30 for 12.4",
				"radiation in 10: 12.99 for 12.9", "radiation in 11: 14.47 for 14.4",
				"evapotranspiration in 11: 3.24 for 3.3", "radiation in 12: 15.26 for 15.2",
				"evapotranspiration in 12: 3.31 for 3.4");
	}

	private static void compare(List<String> off, String what, double computed, String printed) {
		if (Math.abs(computed - Double.parseDouble(printed)) > 0.05 + SLACK) {
			off.add(String.format(Locale.ROOT, "%s: %.2f for %s", what, computed, printed));
		}
	}

}
