package org.leafward.amounts;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampCalendar;
import org.leafward.amounts.light.RampDay;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
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
 * A ramp of 14 days. Target: under 200 microseconds for a planting, together with its
 * amounts of water.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RampBenchmark {

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
		hole.consume(RampCalendar.of(ramp(), List.of(), Map.of()));
	}

	private HardeningRamp ramp() {
		this.count = (this.count + 1) % 1_000;
		return HardeningRamp.plan(new GeoPoint(35 + this.count / 100.0, -91.6, 220), this.zone,
				LocalDate.of(2027, 4, 1).plusDays(this.count % 60), HardeningRamp.USUAL_DAYS, this.start,
				SiteLight.FULL_SUN, this.limits);
	}

}
