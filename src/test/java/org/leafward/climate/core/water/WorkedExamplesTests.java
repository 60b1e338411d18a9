package org.leafward.climate.core.water;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * The worked examples of FAO-56, each result as printed; {@code worked-examples.csv} has
 * the results, here are the inputs as the examples give them.
 */
class WorkedExamplesTests {

	/**
	 * Not reproduced: 0.665e-3 times the pressure at 2 m is 0.06735, which example 17
	 * prints as 0.0674 and the next digit says 0.0673.
	 */
	private static final Set<String> NOT_REPRODUCED = Set.of("E17/psychrometric constant kPa/C");

	private static final double SLACK = 1e-9;

	private static final double RIO = -(22 + 54 / 60.0);

	private static final double BANGKOK = 13 + 44 / 60.0;

	private static final double LYON = 45 + 43 / 60.0;

	private static final double UCCLE = 50 + 48 / 60.0;

	private static final double NDIAYE = 16 + 13 / 60.0;

	private final Map<String, Double> computed = new HashMap<>();

	private String example = "";

	@Test
	void printedResultsAreReproduced() {
		air();
		sun();
		radiation();
		bangkok();
		uccle();
		ndiaye();
		lyon();
		coefficients();
		soil();
		List<String[]> rows = SharedData.table("water/worked-examples.csv");
		assertThat(rows.stream().map((row) -> row[0] + "/" + row[1])).as("each is computed, and nothing else")
			.containsExactlyInAnyOrderElementsOf(this.computed.keySet());
		for (String[] row : rows) {
			String name = row[0] + "/" + row[1];
			double printed = Double.parseDouble(row[2]);
			double tolerance = Double.parseDouble(row[3]) + SLACK;
			if (NOT_REPRODUCED.contains(name)) {
				assertThat(this.computed.get(name)).as("known difference: " + name)
					.isNotCloseTo(printed, within(tolerance))
					.isCloseTo(printed, within(1.1 * tolerance));
			}
			else {
				assertThat(this.computed.get(name)).as(name).isCloseTo(printed, within(tolerance));
			}
		}
	}

	private void put(String quantity, double value) {
		this.computed.put(this.example + "/" + quantity, value);
	}

	private static double millimetres(double megajoules) {
		return Radiation.MILLIMETRES_PER_MEGAJOULE * megajoules;
	}

	private void air() {
		this.example = "E2";
		put("pressure kPa", Vapour.pressure(1800));
		put("psychrometric constant kPa/C", Vapour.psychrometricConstant(Vapour.pressure(1800)));
		this.example = "E3";
		put("saturation at maximum kPa", Vapour.saturation(24.5));
		put("saturation at minimum kPa", Vapour.saturation(15));
		put("mean saturation kPa", Vapour.meanSaturation(15, 24.5));
		put("saturation at mean kPa", Vapour.saturation(19.75));
		this.example = "E4";
		put("pressure kPa", Vapour.pressure(1200));
		put("saturation at wet bulb kPa", Vapour.saturation(19.5));
		put("vapour kPa",
				new Humidity.WetBulb(19.5, 25.6, Vapour.Psychrometer.ASPIRATED).vapour(0, 0, Vapour.pressure(1200)));
		this.example = "E5";
		put("saturation at minimum kPa", Vapour.saturation(18));
		put("saturation at maximum kPa", Vapour.saturation(25));
		double vapour = new Humidity.Extremes(54, 82).vapour(18, 25, 101.3);
		put("vapour kPa", vapour);
		put("vapour from mean humidity kPa", new Humidity.Mean(68).vapour(18, 25, 101.3));
		this.example = "E6";
		put("deficit kPa", Vapour.deficit(Vapour.meanSaturation(18, 25), vapour));
		this.example = "E7";
		put("Bangkok rad", Math.toRadians(BANGKOK));
		put("Rio rad", Math.toRadians(RIO));
		this.example = "E14";
		put("wind factor", Wind.factor(10));
		put("wind at 2 m", new Wind(3.2, 10).atTwoMetres());
	}

	private void sun() {
		this.example = "E8";
		put("inverse distance", SunGeometry.inverseDistance(246));
		put("declination rad", SunGeometry.declination(246));
		put("sunset angle rad", SunGeometry.sunsetAngle(-20, 246));
		put("radiation above MJ", SunGeometry.extraterrestrial(-20, 246));
		put("radiation above mm", millimetres(SunGeometry.extraterrestrial(-20, 246)));
		this.example = "E9";
		put("day length h", SunGeometry.dayLength(-20, 246));
	}

	private void radiation() {
		this.example = "E10";
		double above = SunGeometry.extraterrestrial(RIO, 135);
		double light = SunGeometry.dayLength(RIO, 135);
		double radiation = Radiation.fromSunshine(220 / 31.0, light, above);
		put("radiation above MJ", above);
		put("day length h", light);
		put("sunshine h", 220 / 31.0);
		put("radiation MJ", radiation);
		put("radiation mm", millimetres(radiation));
		this.example = "E11";
		// The example takes Rso by equation 36, which at sea level is equation 37.
		double clear = Radiation.clearSky(above, 0);
		double longwave = Radiation.netLongwave(19.1, 25.1, 2.1, radiation, clear);
		put("black body at maximum MJ", Radiation.blackBody(25.1));
		put("black body at minimum MJ", Radiation.blackBody(19.1));
		put("clear sky MJ", clear);
		put("net longwave MJ", longwave);
		put("net longwave mm", millimetres(longwave));
		this.example = "E12";
		double shortwave = Radiation.netShortwave(radiation);
		put("net shortwave MJ", shortwave);
		put("net MJ", shortwave - longwave);
		put("net mm", millimetres(shortwave - longwave));
		this.example = "E13";
		put("ground heat MJ", Radiation.groundHeatOfMonth(14.1, 18.8));
		put("ground heat mm", millimetres(Radiation.groundHeatOfMonth(14.1, 18.8)));
		this.example = "E15";
		above = SunGeometry.extraterrestrial(LYON, 196);
		radiation = Radiation.fromTemperatures(14.8, 26.6, above, Radiation.clearSky(above, 200), Setting.INTERIOR);
		put("radiation above MJ", above);
		put("radiation MJ", radiation);
		put("radiation mm", millimetres(radiation));
		this.example = "E16";
		above = SunGeometry.extraterrestrial(BANGKOK, 105);
		clear = Radiation.clearSky(above, 2);
		radiation = Radiation.fromTemperatures(25.6, 34.8, above, clear, Setting.COASTAL);
		longwave = Radiation.netLongwave(25.6, 34.8, 2.85, radiation, clear);
		shortwave = Radiation.netShortwave(radiation);
		put("radiation above MJ", above);
		put("radiation MJ", radiation);
		put("clear sky MJ", clear);
		put("net shortwave MJ", shortwave);
		put("net longwave MJ", longwave);
		put("net MJ", shortwave - longwave);
		put("net mm", millimetres(shortwave - longwave));
	}

	private void bangkok() {
		this.example = "E17";
		double psychrometric = Vapour.psychrometricConstant(Vapour.pressure(2));
		double deficit = Vapour.deficit(Vapour.meanSaturation(25.6, 34.8), 2.85);
		double above = SunGeometry.extraterrestrial(BANGKOK, 105);
		double clear = Radiation.clearSky(above, 2);
		double light = SunGeometry.dayLength(BANGKOK, 105);
		double radiation = Radiation.fromSunshine(8.5, light, above);
		double longwave = Radiation.netLongwave(25.6, 34.8, 2.85, radiation, clear);
		double net = Radiation.netShortwave(radiation) - longwave;
		double ground = Radiation.groundHeatOfMonthSoFar(29.2, 30.2);
		put("slope kPa/C", Vapour.slope(30.2));
		put("psychrometric constant kPa/C", psychrometric);
		put("mean saturation kPa", Vapour.meanSaturation(25.6, 34.8));
		put("deficit kPa", deficit);
		put("radiation above MJ", above);
		put("day length h", light);
		put("radiation MJ", radiation);
		put("clear sky MJ", clear);
		put("net longwave MJ", longwave);
		put("net MJ", net);
		put("ground heat MJ", ground);
		put("evapotranspiration mm",
				PenmanMonteith.ofDay(30.2, net - ground, new PenmanMonteith.Air(psychrometric, 2, deficit)));
	}

	private void uccle() {
		this.example = "E18";
		Wind wind = new Wind(10 / 3.6, 10);
		double vapour = new Humidity.Extremes(63, 84).vapour(12.3, 21.5, Vapour.pressure(100));
		double above = SunGeometry.extraterrestrial(UCCLE, 187);
		double light = SunGeometry.dayLength(UCCLE, 187);
		double clear = Radiation.clearSky(above, 100);
		double radiation = Radiation.fromSunshine(9.25, light, above);
		double longwave = Radiation.netLongwave(12.3, 21.5, vapour, radiation, clear);
		put("wind at 2 m", wind.atTwoMetres());
		put("pressure kPa", Vapour.pressure(100));
		put("slope kPa/C", Vapour.slope(16.9));
		put("psychrometric constant kPa/C", Vapour.psychrometricConstant(Vapour.pressure(100)));
		put("mean saturation kPa", Vapour.meanSaturation(12.3, 21.5));
		put("vapour kPa", vapour);
		put("deficit kPa", Vapour.deficit(Vapour.meanSaturation(12.3, 21.5), vapour));
		put("radiation above MJ", above);
		put("day length h", light);
		put("radiation MJ", radiation);
		put("clear sky MJ", clear);
		put("net shortwave MJ", Radiation.netShortwave(radiation));
		put("net longwave MJ", longwave);
		put("net MJ", Radiation.netShortwave(radiation) - longwave);
		WeatherDay day = new WeatherDay(187, 12.3, 21.5, new Humidity.Extremes(63, 84), new Sunlight.Sunshine(9.25),
				wind);
		put("evapotranspiration mm",
				ReferenceEt.of(day, new ReferenceEt.Ground(UCCLE, 100, Setting.INTERIOR)).millimetres());
	}

	/** 1 October, longitude 16°15' W, clock of 15° W, 8 m. */
	private void ndiaye() {
		this.example = "E19 night";
		put("slope kPa/C", Vapour.slope(28));
		put("saturation kPa", Vapour.saturation(28));
		put("vapour kPa", 0.9 * Vapour.saturation(28));
		put("radiation above MJ", aboveBetween(2, 3));
		double longwave = Radiation.netLongwaveOfHour(28, 0.9 * Vapour.saturation(28), 0.8);
		put("net longwave MJ", longwave);
		put("evapotranspiration mm", hour(28, 0.9, 1.9, -longwave, false));
		this.example = "E19 day";
		double above = aboveBetween(14, 15);
		double vapour = 0.52 * Vapour.saturation(38);
		longwave = Radiation.netLongwaveOfHour(38, vapour, 2.450 / Radiation.clearSky(above, 8));
		put("seasonal correction h", SunGeometry.seasonalCorrection(274));
		put("hour angle rad", SunGeometry.hourAngle(14.5, -1, -16.25, 274));
		put("slope kPa/C", Vapour.slope(38));
		put("saturation kPa", Vapour.saturation(38));
		put("vapour kPa", vapour);
		put("radiation above MJ", above);
		put("net longwave MJ", longwave);
		put("evapotranspiration mm", hour(38, 0.52, 3.3, Radiation.netShortwave(2.450) - longwave, true));
	}

	private static double aboveBetween(int from, int to) {
		return SunGeometry.extraterrestrial(NDIAYE, 274, SunGeometry.hourAngle(from, -1, -16.25, 274),
				SunGeometry.hourAngle(to, -1, -16.25, 274));
	}

	private static double hour(double celsius, double humidity, double wind, double net, boolean daylight) {
		PenmanMonteith.Air air = new PenmanMonteith.Air(Vapour.psychrometricConstant(Vapour.pressure(8)), wind,
				(1 - humidity) * Vapour.saturation(celsius));
		return PenmanMonteith.ofHour(celsius, net - Radiation.groundHeatOfHour(net, daylight), air);
	}

	/** July at 200 m with temperatures only. */
	private void lyon() {
		this.example = "E20";
		double above = SunGeometry.extraterrestrial(LYON, 196);
		double clear = Radiation.clearSky(above, 200);
		double radiation = Radiation.fromTemperatures(14.8, 26.6, above, clear, Setting.INTERIOR);
		double longwave = Radiation.netLongwave(14.8, 26.6, Vapour.fromDewPoint(14.8), radiation, clear);
		put("radiation above MJ", above);
		put("radiation MJ", radiation);
		put("clear sky MJ", clear);
		put("net longwave MJ", longwave);
		put("net MJ", Radiation.netShortwave(radiation) - longwave);
		ReferenceEt.Ground ground = new ReferenceEt.Ground(LYON, 200, Setting.INTERIOR);
		WeatherDay day = WeatherDay.ofTemperatures(196, 14.8, 26.6);
		put("evapotranspiration mm", ReferenceEt.penmanMonteith(day, ground).millimetres());
		put("evapotranspiration at 1 m/s mm",
				ReferenceEt.of(new WeatherDay(196, 14.8, 26.6, null, null, new Wind(1, 2)), ground).millimetres());
		put("evapotranspiration at 3 m/s mm",
				ReferenceEt.of(new WeatherDay(196, 14.8, 26.6, null, null, new Wind(3, 2)), ground).millimetres());
		put("Hargreaves-Samani mm", ReferenceEt.of(day, ground).millimetres());
	}

	private void coefficients() {
		this.example = "E30";
		CropCurve beans = new CropCurve(25, 25, 30, 20, 0.15, 1.14, 0.25);
		for (int day : new int[] { 12, 37, 65, 90 }) {
			put("day " + day, beans.on(day));
		}
		this.example = "E32";
		double highest = SurfaceLayer.highest(3, 20, 1, 0.9);
		double cover = SurfaceLayer.cover(0.9, 0.15, 1.30, 1);
		put("highest coefficient", highest);
		put("cover", cover);
		soilCoefficient(highest, SurfaceLayer.exposed(cover, 1, false));
		this.example = "E33";
		soilCoefficient(highest, SurfaceLayer.exposed(cover, 0.3, false));
		this.example = "E34";
		soilCoefficient(highest, SurfaceLayer.exposed(cover, 0.3, true));
	}

	private void soilCoefficient(double highest, double exposed) {
		put("exposed", exposed);
		put("soil coefficient", SurfaceLayer.evaporation(1, highest, 0.9, exposed));
	}

	private void soil() {
		rooted("E36 onion", 0.4, 0.30);
		rooted("E36 tomato", 0.8, 0.40);
		rooted("E36 maize", 1.2, 0.55);
	}

	private void rooted(String name, double depth, double fraction) {
		this.example = name;
		onSoil("loamy sand", SoilWater.available(0.15, 0.06, depth), fraction);
		onSoil("silt", SoilWater.available(0.32, 0.15, depth), fraction);
		onSoil("silty clay", SoilWater.available(0.35, 0.23, depth), fraction);
	}

	private void onSoil(String texture, double available, double fraction) {
		put("available on %s mm".formatted(texture), available);
		put("readily on %s mm".formatted(texture), new RootZone(available, fraction, false, 0, 1).readily());
	}

}
