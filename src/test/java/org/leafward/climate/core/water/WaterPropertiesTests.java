package org.leafward.climate.core.water;

import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

/** What holds for any weather and any bed, by seeded generators. */
class WaterPropertiesTests {

	private static final int DAYS = 366;

	@Test
	void balancesCloseAndStayInTheirBounds() {
		for (int seed = 0; seed < 300; seed++) {
			Random random = new Random(seed);
			RootZone zone = zone(random);
			double start = random.nextDouble() * zone.available();
			DailyWater in = weather(random);
			BalanceDays out = BalanceDays.of(DAYS);
			double end = RootZoneBalance.run(zone, start, in, out);
			double water = sum(out.infiltrated()) + sum(in.irrigation());
			assertThat(start - water + sum(out.actual()) + sum(out.percolation())).as("closes, seed %d", seed)
				.isCloseTo(end, within(0.01));
			assertThat(sum(out.infiltrated()) + sum(out.runoff())).as("rain is not made, seed %d", seed)
				.isLessThanOrEqualTo(sum(in.rain()) + 1e-6);
			for (int day = 0; day < DAYS; day++) {
				assertThat(out.depletion()[day]).isBetween(0.0, zone.available());
				assertThat(out.stress()[day]).isBetween(0.0, 1.0);
				assertThat(out.actual()[day]).isBetween(0.0, out.loss()[day] + 1e-12);
				assertThat(out.percolation()[day]).isGreaterThanOrEqualTo(0);
				assertThat(out.readily()[day]).isBetween(0.1 * zone.available(), 0.8 * zone.available() + 1e-9);
			}
		}
	}

	/** From the rule that counts rain below a fifth of the reference as nothing. */
	@Test
	void rainIsCountedWholeOrNotAtAll() {
		RootZone zone = new RootZone(100, 0.5, false, 0.25, 1);
		BalanceDays out = BalanceDays.of(2);
		RootZoneBalance.run(zone, 50,
				new DailyWater(new double[] { 5, 5 }, new double[] { 1, 1 }, new double[] { 0.99, 1.0 }, new double[2]),
				out);
		assertThat(out.infiltrated()).containsExactly(0, 0.75);
		assertThat(out.runoff()).containsExactly(0, 0.25);
	}

	@Test
	void moreRainNeverLeavesTheSoilDrier() {
		for (int seed = 0; seed < 100; seed++) {
			Random random = new Random(seed);
			RootZone zone = zone(random);
			DailyWater in = weather(random);
			BalanceDays less = BalanceDays.of(DAYS);
			BalanceDays more = BalanceDays.of(DAYS);
			RootZoneBalance.run(zone, 0, in, less);
			double[] wetter = Arrays.stream(in.rain()).map((rain) -> rain * 1.5).toArray();
			RootZoneBalance.run(zone, 0, new DailyWater(in.reference(), in.factor(), wetter, in.irrigation()), more);
			for (int day = 0; day < DAYS; day++) {
				assertThat(more.depletion()[day]).as("seed %d, day %d", seed, day)
					.isLessThanOrEqualTo(less.depletion()[day] + 1e-9);
			}
		}
	}

	private static RootZone zone(Random random) {
		TextureClass texture = TextureClass.values()[random.nextInt(TextureClass.values().length)];
		RootZone zone = RootZone.of(texture, 0.02 + random.nextDouble(), 0.2 + random.nextDouble() * 0.5);
		return new RootZone(zone.available(), zone.fraction(), random.nextBoolean(),
				random.nextBoolean() ? 0 : random.nextDouble(), random.nextBoolean() ? 1 : random.nextDouble());
	}

	private static DailyWater weather(Random random) {
		double[] reference = random.doubles(DAYS, 0, 12).toArray();
		double[] factor = random.doubles(DAYS, 0, 1.3).toArray();
		double[] rain = random.doubles(DAYS).map((value) -> (value < 0.7) ? 0 : (value - 0.7) * 200).toArray();
		double[] irrigation = random.doubles(DAYS).map((value) -> (value < 0.95) ? 0 : 25).toArray();
		return new DailyWater(reference, factor, rain, irrigation);
	}

	private static double sum(double[] days) {
		return DoubleStream.of(days).sum();
	}

	@Test
	void evapotranspirationIsNeverNegativeWhateverIsKnown() {
		Random random = new Random(7);
		for (int count = 0; count < 20_000; count++) {
			double low = -50 + random.nextDouble() * 85;
			double high = low + random.nextDouble() * 25;
			WeatherDay day = new WeatherDay(1 + random.nextInt(366), low, high,
					random.nextBoolean() ? null : new Humidity.Mean(random.nextDouble() * 100),
					random.nextBoolean() ? null : new Sunlight.Sunshine(random.nextDouble() * 24),
					random.nextBoolean() ? null : new Wind(random.nextDouble() * 20, 10));
			ReferenceEt.Ground ground = new ReferenceEt.Ground(-90 + random.nextDouble() * 180,
					random.nextDouble() * 4000, random.nextBoolean() ? Setting.COASTAL : Setting.INTERIOR);
			ReferenceEt amount = ReferenceEt.of(day, ground);
			assertThat(amount.millimetres()).as("%s at %s", day, ground).isBetween(0.0, 40.0);
			assertThat(amount.substitutes().contains(Substitute.WIND_TWO_METRES_PER_SECOND))
				.isEqualTo(amount.method() == ReferenceEt.Method.PENMAN_MONTEITH && day.wind() == null);
		}
	}

	@Test
	void formulaAndSubstitutesFollowWhatIsKnown() {
		ReferenceEt.Ground ground = new ReferenceEt.Ground(45, 200, Setting.INTERIOR);
		assertThat(ReferenceEt.of(WeatherDay.ofTemperatures(196, 14.8, 26.6), ground))
			.satisfies((amount) -> assertThat(amount.method()).isEqualTo(ReferenceEt.Method.HARGREAVES_SAMANI))
			.satisfies((amount) -> assertThat(amount.substitutes()).isEmpty());
		assertThat(ReferenceEt.of(new WeatherDay(196, 14.8, 26.6, null, null, new Wind(2, 2)), ground))
			.satisfies((amount) -> assertThat(amount.method()).isEqualTo(ReferenceEt.Method.PENMAN_MONTEITH))
			.satisfies((amount) -> assertThat(amount.substitutes())
				.isEqualTo(Set.of(Substitute.DEW_POINT_FROM_MINIMUM, Substitute.RADIATION_FROM_TEMPERATURES)));
		assertThat(ReferenceEt
			.of(new WeatherDay(196, 14.8, 26.6, new Humidity.DewPoint(12), new Sunlight.Measured(22), new Wind(2, 2)),
					ground)
			.substitutes()).isEmpty();
	}

	/**
	 * North and south half a year apart are alike but for the ellipse of the orbit, which
	 * changes radiation by 3.3 % each way (equation 23) and the half day that 365 leaves.
	 */
	@Test
	void hemispheresMirrorEachOther() {
		for (int latitude = 0; latitude <= 60; latitude += 5) {
			for (int day = 1; day <= 182; day++) {
				int opposite = day + 182;
				assertThat(SunGeometry.dayLength(latitude, day)).as("%d° on day %d", latitude, day)
					.isCloseTo(24 - SunGeometry.dayLength(-latitude, day), within(1e-9))
					.isCloseTo(SunGeometry.dayLength(-latitude, opposite), within(0.06));
				double north = SunGeometry.extraterrestrial(latitude, day) / SunGeometry.inverseDistance(day);
				double south = SunGeometry.extraterrestrial(-latitude, opposite)
						/ SunGeometry.inverseDistance(opposite);
				assertThat(north).as("%d° on day %d", latitude, day).isCloseTo(south, within(0.2));
			}
		}
	}

	@Test
	void hoursAddUpToTheDay() {
		for (int latitude = -85; latitude <= 85; latitude += 5) {
			for (int day = 1; day <= 366; day += 13) {
				double sum = 0;
				for (int hour = 0; hour < 24; hour++) {
					sum += SunGeometry.extraterrestrial(latitude, day, Math.PI * (hour / 12.0 - 1),
							Math.PI * ((hour + 1) / 12.0 - 1));
				}
				assertThat(sum).as("%d° on day %d", latitude, day)
					.isCloseTo(SunGeometry.extraterrestrial(latitude, day), within(1e-9));
			}
		}
	}

	@Test
	void nonsenseIsRefused() {
		assertThatIllegalArgumentException().isThrownBy(() -> Vapour.saturation(Double.NaN));
		assertThatIllegalArgumentException().isThrownBy(() -> SunGeometry.declination(0));
		assertThatIllegalArgumentException().isThrownBy(() -> SunGeometry.dayLength(91, 1));
		assertThatIllegalArgumentException().isThrownBy(() -> new Humidity.Mean(101).vapour(1, 2, 100));
		assertThatIllegalArgumentException().isThrownBy(() -> new Wind(-1, 2));
		assertThatIllegalArgumentException().isThrownBy(() -> new CropCurve(1, 1, 1, 1, 0.1, 0.2, 0.1).on(5));
		assertThatIllegalArgumentException().isThrownBy(() -> new SurfaceLayer(9, 9));
		assertThatIllegalArgumentException().isThrownBy(() -> RootZone.of(TextureClass.LOAM, 0, 0.5));
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new DailyWater(new double[2], new double[2], new double[1], new double[2]));
		RootZone zone = RootZone.of(TextureClass.LOAM, 0.5, 0.5);
		DailyWater unknown = new DailyWater(new double[] { 1 }, new double[] { 1 }, new double[] { Double.NaN },
				new double[] { 0 });
		assertThatIllegalArgumentException().isThrownBy(() -> RootZoneBalance.run(zone, 0, unknown, BalanceDays.of(1)))
			.withMessageContaining("day 0");
		assertThatIllegalArgumentException()
			.isThrownBy(() -> RootZoneBalance.run(zone, 1e6, unknown, BalanceDays.of(1)));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> TextureClass.named("peat"))
			.withMessageContaining("peat");
		assertThat(TextureClass.named(" Silt-loam ")).isEqualTo(TextureClass.SILT_LOAM);
	}

	@Test
	void drySpellsByTheRule() {
		double[] rain = { 0, 6.34, 6.34, 0, 6.35, 0, 0, 0 };
		// Days 0 to 3 hold 12.68 mm, below half an inch; the fifth day is wet by itself.
		assertThat(DrySpell.ends(rain, 3)).containsExactly(false, false, true, true, false, false, false, true);
		assertThat(DrySpell.lengths(rain)).containsExactly(1, 2, 3, 4, 0, 1, 2, 3);
		assertThat(DrySpell.ends(new double[] { 6, 6, 6 }, 3)).containsExactly(false, false, false);
		assertThat(DrySpell.lengths(new double[] { 6, 6, 6 })).containsExactly(1, 2, 2);
		assertThat(DrySpell.ends(new double[] { 0, Double.NaN, 0 }, 2)).containsExactly(false, false, false);
		assertThat(DrySpell.lengths(new double[] { 0, Double.NaN, 0 })).containsExactly(1, 0, 1);
	}

	/** Two ways to the same answer: a window summed anew, and a running length. */
	@Test
	void drySpellsAgreeBothWays() {
		Random random = new Random(3);
		for (int count = 0; count < 200; count++) {
			double[] rain = random.doubles(60).map((value) -> (value < 0.8) ? 0 : (value - 0.8) * 60).toArray();
			int[] lengths = DrySpell.lengths(rain);
			for (int days = 1; days <= 30; days++) {
				boolean[] ends = DrySpell.ends(rain, days);
				for (int day = 0; day < 60; day++) {
					assertThat(ends[day]).isEqualTo(lengths[day] >= days);
				}
			}
		}
	}

	@Test
	void gapsAreBridged() {
		double nan = Double.NaN;
		double[] days = { nan, 2, nan, nan, 5, nan };
		assertThat(Gaps.bridge(days)).isEqualTo(4);
		assertThat(days).containsExactly(2, 2, 3, 4, 5, 5);
		assertThat(Gaps.bridge(new double[] { nan, nan })).isEqualTo(-1);
		assertThat(Gaps.bridge(new double[] { 1, 2 })).isZero();
	}

	@Test
	void moistureFollowsDepletion() {
		assertThat(Moisture.of(0, 20)).isEqualTo(Moisture.WET_ENOUGH);
		assertThat(Moisture.of(10, 20)).isEqualTo(Moisture.WET_ENOUGH);
		assertThat(Moisture.of(10.1, 20)).isEqualTo(Moisture.DRYING);
		assertThat(Moisture.of(20, 20)).isEqualTo(Moisture.DRYING);
		assertThat(Moisture.of(20.1, 20)).isEqualTo(Moisture.STRESSED);
	}

}
