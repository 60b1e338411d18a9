package org.leafward.amounts;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.leafward.amounts.cover.Cover;
import org.leafward.amounts.cover.CoverTonight;
import org.leafward.amounts.cover.NightSky;
import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampCalendar;
import org.leafward.amounts.light.RampDay;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.amounts.salt.Leaching;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.amounts.water.Bed;
import org.leafward.amounts.water.BedWatering;
import org.leafward.amounts.water.Ground;
import org.leafward.amounts.water.PotWatering;
import org.leafward.amounts.water.TreeWatering;
import org.leafward.measure.GeoPoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * The amounts and the ramp of a planting. Target: under 200 microseconds for all of it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class AmountsBenchmark {

	private final ZoneId zone = ZoneId.of("America/Chicago");

	private final StartingLight start = new StartingLight.Windowsill(Aspect.SOUTH);

	private final RampLimits limits = RampLimits.forNights(10);

	private int count;

	/** The days, their words and how they came about; another place each time. */
	@Benchmark
	public void rampWithExplanations(Blackhole hole) {
		for (RampDay day : ramp().days()) {
			hole.consume(day.amount());
		}
	}

	/** The days and their words. */
	@Benchmark
	public void rampInWords(Blackhole hole) {
		for (RampDay day : ramp().days()) {
			hole.consume(day.words());
		}
	}

	/** The days alone, laid on the calendar. */
	@Benchmark
	public void rampAlone(Blackhole hole) {
		hole.consume(RampCalendar.of(ramp(), List.of()));
	}

	/**
	 * All that a planting may have, in words with explanations: a bed, a tree that is
	 * growing in, a pot, leaching, a cover and a ramp.
	 */
	@Benchmark
	public void amountsAndRamp(Blackhole hole) {
		double size = 1 + this.count % 100;
		Bed bed = new Bed(Ground.CLAY_LOAM, 0.45, size, 12.0);
		hole.consume(BedWatering.refill(bed, 10 + this.count % 40, 0).amount());
		hole.consume(TreeWatering.young(20 + size, this.count % 80, 3, 12.0).amount());
		hole.consume(PotWatering.usual(size).amount());
		hole.consume(Leaching.half(SaltedBed.ofSoil(size, 0.45, "clay loam", SaltedBed.Cause.DE_ICING)).amount());
		hole.consume(CoverTonight.judge(-2 + this.count % 5, 0, NightSky.UNKNOWN, 0.5, EnumSet.allOf(Cover.class))
			.amount());
		rampWithExplanations(hole);
	}

	private HardeningRamp ramp() {
		this.count = (this.count + 1) % 1_000;
		return HardeningRamp.plan(new GeoPoint(35 + this.count / 100.0, -91.6, 220), this.zone,
				LocalDate.of(2027, 4, 1).plusDays(this.count % 60), HardeningRamp.USUAL_DAYS, this.start,
				SiteLight.FULL_SUN, this.limits);
	}

}
