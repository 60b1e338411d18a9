package org.leafward.climate.core.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.water.Radiation;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

class DailyLightTests {

	private static final GeoPoint GREENWICH = new GeoPoint(51.48, 0, 40);

	@Test
	void conversionsAreTheTypedOnes() {
		List<String[]> rows = SharedData.table("light/light-conversions.csv");
		assertThat(rows).hasSize(LightSource.values().length);
		for (String[] row : rows) {
			LightSource source = LightSource.valueOf(row[0]);
			assertThat(source.micromolesPerJoule()).as(row[0]).isEqualTo(Double.parseDouble(row[1]));
			assertThat(source.luxPerMicromole()).as(row[0]).isEqualTo(Double.parseDouble(row[2]));
		}
	}

	/** Sources: the file's head. One of them is not reproduced, as it says there. */
	@Test
	void publishedAmounts() {
		List<String[]> rows = SharedData.table("light/light-amounts.csv");
		assertThat(rows).hasSize(5);
		for (String[] row : rows) {
			double given = Double.parseDouble(row[1]);
			double printed = Double.parseDouble(row[2]);
			double tolerance = Double.parseDouble(row[3]);
			switch (row[0]) {
				case "full sun", "sun lux" ->
					assertThat(LightSource.DAYLIGHT.fluxOfLux(given)).as(row[0]).isCloseTo(printed, within(tolerance));
				case "sun foot-candles" -> assertThat(LightSource.DAYLIGHT.fluxOfFootCandles(given)).as(row[0])
					.isCloseTo(printed, within(tolerance));
				case "lamp day" ->
					assertThat(DailyLight.ofFlux(given, 12)).as(row[0]).isCloseTo(printed, within(tolerance));
				case "watt-hour" ->
					assertThat(DailyLight.PHOTOSYNTHETIC_PART * given * 3600 / 1e6).as("known difference: " + row[0])
						.isNotCloseTo(printed, within(tolerance))
						.isCloseTo(printed, within(1e-5));
				default -> throw new IllegalStateException(row[0]);
			}
		}
	}

	/** 0.45 x 4.57 µmol/J; other published factors lie between 2.02 and 2.3. */
	@Test
	void molesOfAMegajoule() {
		assertThat(DailyLight.molesPerMegajoule()).isCloseTo(2.057, within(0.0005));
		assertThat(DailyLight.ofRadiation(20)).isCloseTo(41.13, within(0.005));
		assertThatIllegalArgumentException().isThrownBy(() -> DailyLight.ofRadiation(-1));
	}

	/**
	 * US maps have 40 to 60 mol in June and 5 to 10 in December in the north (from memory
	 * of Korczynski, Logan and Faust 2002), with clouds; a clear sky gives more.
	 */
	@Test
	void clearDaysLieAboveTheMapsOfMeanLight() {
		GeoPoint place = new GeoPoint(45, -93, 250);
		assertThat(DailyLight.clearSky(place, LocalDate.of(2027, 6, 21))).isBetween(50.0, 70.0);
		assertThat(DailyLight.clearSky(place, LocalDate.of(2027, 12, 21))).isBetween(10.0, 20.0);
		assertThat(DailyLight.clearSky(place, LocalDate.of(2027, 6, 21)))
			.isEqualTo(DailyLight.ofRadiation(Radiation.clearSky(SunGeometry.extraterrestrial(45, 172), 250)));
	}

	/** Sources and what is compared: the file's head. */
	@Test
	void measuredMonthsLieBelowClearDays() {
		List<String[]> rows = SharedData.table("light/outdoor-light.csv");
		assertThat(rows).hasSize(4);
		for (String[] row : rows) {
			LocalDate day = LocalDate.parse(row[4]);
			GeoPoint place = new GeoPoint(Double.parseDouble(row[1]), Double.parseDouble(row[2]),
					Double.parseDouble(row[3]));
			double clear = 1.2 * DailyLight.clearSky(place, day);
			assertThat(Double.parseDouble(row[5])).as(row[0] + " on " + day).isBetween(0.6 * clear, clear);
			assertThat(Double.parseDouble(row[6])).as(row[0] + " around " + day).isLessThan(clear);
		}
	}

	@Test
	void morningAndAfternoonAddUp() {
		Random random = new Random(11);
		for (int count = 0; count < 2_000; count++) {
			GeoPoint place = new GeoPoint(-60 + random.nextDouble() * 120, -7 + random.nextDouble() * 14, 0);
			LocalDate date = LocalDate.of(2028, 1, 1).plusDays(random.nextInt(366));
			LocalTime time = LocalTime.ofSecondOfDay(random.nextInt(86_400));
			double before = DailyLight.part(place, date, ZoneOffset.UTC, null, time);
			double after = DailyLight.part(place, date, ZoneOffset.UTC, time, null);
			assertThat(before).isBetween(0.0, 1.0);
			assertThat(before + after).isCloseTo(1, within(1e-9));
			assertThat(DailyLight.part(place, date, ZoneOffset.UTC, null, time.minusNanos(1)))
				.isLessThanOrEqualTo(before + 1e-12);
		}
	}

	/** Solar noon halves the day; on 15 April the sun's clock is the mean one. */
	@Test
	void noonHalvesTheDay() {
		LocalDate day = LocalDate.of(2027, 4, 15);
		assertThat(DailyLight.part(GREENWICH, day, ZoneOffset.UTC, null, LocalTime.NOON)).isCloseTo(0.5, within(0.002));
		assertThat(DailyLight.part(GREENWICH, day, ZoneId.of("Europe/London"), null, LocalTime.of(13, 0)))
			.as("daylight saving")
			.isCloseTo(0.5, within(0.002));
		// At the equinox the sun is up from 6 to 18 and what falls before 10:30 is
		// (1 - sin 22.5°)/2, from the integral of the cosine.
		assertThat(DailyLight.part(new GeoPoint(0, 0, 0), LocalDate.of(2027, 4, 15), ZoneOffset.UTC, null,
				LocalTime.of(10, 30)))
			.isCloseTo((1 - Math.sin(Math.toRadians(22.5))) / 2, within(0.003));
		assertThat(DailyLight.part(GREENWICH, day, ZoneOffset.UTC, LocalTime.of(15, 0), LocalTime.of(9, 0))).isZero();
		assertThat(DailyLight.part(new GeoPoint(75, 0, 0), LocalDate.of(2027, 12, 21), ZoneOffset.UTC, null, null))
			.as("polar night")
			.isZero();
	}

	@Test
	void shadeHoldsItsPartBack() {
		assertThat(DailyLight.underShade(40, 0.3)).isCloseTo(28, within(1e-9));
		assertThat(DailyLight.underShade(40, 1)).isZero();
		assertThatIllegalArgumentException().isThrownBy(() -> DailyLight.underShade(40, 30));
	}

	@Test
	void indoorClasses() {
		for (String[] row : SharedData.table("light/indoor-light.csv")) {
			assertThat(IndoorLight.of(Double.parseDouble(row[0]))).as(row[0]).isEqualTo(IndoorLight.valueOf(row[1]));
		}
		assertThat(IndoorLight.of(24.9)).isEqualTo(IndoorLight.TOO_DARK);
		// 150 fc of daylight for 12 h: 150 x 0.1993 x 0.0432.
		assertThat(IndoorLight.MEDIUM.dailyLight(12, LightSource.DAYLIGHT)).isCloseTo(1.29, within(0.01));
	}

}
