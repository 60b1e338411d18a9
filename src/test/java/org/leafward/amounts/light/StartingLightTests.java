package org.leafward.amounts.light;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.climate.core.light.IndoorLight;
import org.leafward.climate.core.light.LightSource;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Against published conversions; the heads of the files have the sources. */
class StartingLightTests {

	private static final GeoPoint NORTH = new GeoPoint(45, -93, 250);

	private static final GeoPoint SOUTH = new GeoPoint(-45, 170, 50);

	private static final LocalDate JUNE = LocalDate.of(2027, 6, 21);

	private static final LocalDate DECEMBER = LocalDate.of(2027, 12, 21);

	/**
	 * Spectrum Technologies (a lamp's day) and Apogee Instruments (2000 µmol/m²s in lux
	 * and foot-candles, with their rounding).
	 */
	@Test
	void lampsByPublishedAmounts() {
		for (String[] row : SharedData.table("light/light-amounts.csv")) {
			double given = Double.parseDouble(row[1]);
			double printed = Double.parseDouble(row[2]);
			double tolerance = Double.parseDouble(row[3]);
			switch (row[0]) {
				case "lamp day" -> assertThat(new StartingLight.Lamp(given, 12).molesPerDay(NORTH, JUNE))
					.isCloseTo(printed, within(tolerance));
				case "sun lux", "full sun" ->
					assertThat(StartingLight.Lamp.ofLux(LightSource.DAYLIGHT, given, 1).flux()).as(row[0])
						.isCloseTo(printed, within(tolerance));
				case "sun foot-candles" ->
					assertThat(StartingLight.Lamp.ofFootCandles(LightSource.DAYLIGHT, given, 1).flux()).as(row[0])
						.isCloseTo(printed, within(tolerance));
				default -> assertThat(row[0]).isEqualTo("watt-hour");
			}
		}
	}

	/** Thimijan and Heins: each kind of lamp there and back. */
	@Test
	void lampsComeBackToTheirReading() {
		List<String[]> rows = SharedData.table("light/light-conversions.csv");
		assertThat(rows).hasSize(6);
		for (String[] row : rows) {
			LightSource source = LightSource.valueOf(row[0]);
			double flux = StartingLight.Lamp.ofLux(source, 10_000, 14).flux();
			assertThat(flux * Double.parseDouble(row[2])).as(row[0]).isCloseTo(10_000, within(1e-6));
			assertThat(StartingLight.Lamp.ofFootCandles(source, 10_000 / LightSource.LUX_PER_FOOT_CANDLE, 14).flux())
				.as(row[0])
				.isCloseTo(flux, within(1e-9));
		}
	}

	/**
	 * The shares are from memory; the classes that they must fall into in summer are
	 * those of University of Illinois Extension, 12 hours of daylight at their least.
	 */
	@Test
	void windowsillsFallIntoThePublishedClassesOfIndoorLight() {
		double low = IndoorLight.LOW.dailyLight(12, LightSource.DAYLIGHT);
		double medium = IndoorLight.MEDIUM.dailyLight(12, LightSource.DAYLIGHT);
		double high = IndoorLight.HIGH.dailyLight(12, LightSource.DAYLIGHT);
		double direct = IndoorLight.DIRECT.dailyLight(12, LightSource.DAYLIGHT);
		assertThat(sill(Aspect.SOUTH, NORTH, JUNE)).as("about where direct sun begins")
			.isCloseTo(direct, within(0.2 * direct));
		assertThat(sill(Aspect.EAST, NORTH, JUNE)).isBetween(high, direct).isEqualTo(sill(Aspect.WEST, NORTH, JUNE));
		assertThat(sill(Aspect.NORTH, NORTH, JUNE)).isBetween(medium, 1.2 * high);
		assertThat(sill(Aspect.NORTH, NORTH, DECEMBER)).isBetween(low, medium);
	}

	@Test
	void theSunnySideIsTheNorthInTheSouthAndChangesBetweenTheTropics() {
		assertThat(sill(Aspect.NORTH, SOUTH, DECEMBER)).isCloseTo(5 * sill(Aspect.SOUTH, SOUTH, DECEMBER),
				within(1e-9));
		GeoPoint equator = new GeoPoint(1, 37, 1_600);
		assertThat(sill(Aspect.NORTH, equator, JUNE)).isGreaterThan(sill(Aspect.SOUTH, equator, JUNE));
		assertThat(sill(Aspect.NORTH, equator, DECEMBER)).isLessThan(sill(Aspect.SOUTH, equator, DECEMBER));
		assertThat(new StartingLight.Unknown().molesPerDay(SOUTH, DECEMBER))
			.isEqualTo(sill(Aspect.SOUTH, SOUTH, DECEMBER));
	}

	private static double sill(Aspect aspect, GeoPoint point, LocalDate date) {
		return new StartingLight.Windowsill(aspect).molesPerDay(point, date);
	}

	/**
	 * probsee, Daily light integral (read): greenhouses 1 to 30, outdoors 5 to 60 mol/m².
	 */
	@Test
	void glasshousesStandBetweenRoomsAndTheOpen() {
		double glass = StartingLight.UnderGlass.GLASSHOUSE.molesPerDay(NORTH, LocalDate.of(2027, 4, 10));
		assertThat(glass).isBetween(1.0, 30.0);
		assertThat(DailyLight.clearSky(NORTH, LocalDate.of(2027, 4, 10))).isBetween(30.0, 60.0);
		assertThat(SiteLight.FULL_SUN.molesPerDay(NORTH, JUNE)).isEqualTo(DailyLight.clearSky(NORTH, JUNE));
	}

	@Test
	void whatCantBeIsRefusedWithItsField() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new StartingLight.Lamp(-1, 12))
			.matches((ex) -> ex.where().equals("level"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new StartingLight.Lamp(100, 25))
			.matches((ex) -> ex.where().equals("hours"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new StartingLight.UnderGlass(60))
			.matches((ex) -> ex.where().equals("transmission"));
	}

}
