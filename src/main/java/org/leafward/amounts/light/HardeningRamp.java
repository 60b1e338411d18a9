package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;

/**
 * The way of a plant from the light that it has to the light of the place where it will
 * grow. Day by day the light grows by the same factor, as leaves feel light by its
 * proportion; that the ramp is geometric is our choice. Two weeks at least is what the
 * California Master Gardener Handbook asks for, other lists have seven to ten days. Light
 * outdoors is that of clear days, which are the ones that burn.
 */
public final class HardeningRamp {

	/** Days by default: two weeks. */
	public static final int USUAL_DAYS = 14;

	private static final int FEWEST = 3;

	private static final int MOST = 28;

	/** Wind and cool air alone take less; from memory. */
	private static final int WIND_DAYS = 5;

	/** Darker than this nothing is set out, mol/m². */
	private static final double LEAST = 0.5;

	/** A cupboard counts as this, mol/m², since nothing grows by a factor from 0. */
	private static final double DARK = 0.05;

	private final GeoPoint point;

	private final ZoneId zone;

	private final LocalDate firstDay;

	private final RampBasis basis;

	private final double[] targets;

	private HardeningRamp(GeoPoint point, ZoneId zone, LocalDate firstDay, RampBasis basis, double[] targets) {
		this.point = point;
		this.zone = zone;
		this.firstDay = firstDay;
		this.basis = basis;
		this.targets = targets;
	}

	/**
	 * Plans a ramp.
	 * @param point the place
	 * @param zone the clock of the place
	 * @param firstDay the first day outside
	 * @param days how many, 3 to 28
	 * @param start where the plant stands now
	 * @param site where it will grow
	 * @param limits the weather that it is kept out of
	 * @return the ramp; of five days at most when the plant has the site's light already
	 * @throws BadInput when the days or the zone can't be, or the place is dark then
	 */
	public static HardeningRamp plan(GeoPoint point, ZoneId zone, LocalDate firstDay, int days, StartingLight start,
			SiteLight site, RampLimits limits) {
		if (days < FEWEST || days > MOST) {
			throw new BadInput("days %d is outside %d to %d".formatted(days, FEWEST, MOST), "days",
					"give two weeks, or 10 for hardy kinds");
		}
		Outing.checkZone(point, firstDay, zone);
		double goal = site.molesPerDay(point, firstDay.plusDays(days - 1L));
		if (goal < LEAST) {
			throw new BadInput("there is next to no light on %s".formatted(firstDay.plusDays(days - 1L)), "date",
					"give a day outside the polar night");
		}
		double present = start.molesPerDay(point, firstDay.minusDays(1));
		boolean already = present >= goal;
		int steps = already ? Math.min(days, WIND_DAYS) : days;
		return new HardeningRamp(point, zone, firstDay, new RampBasis(start, site, limits, steps, already, present),
				targets(point, firstDay, site, steps, already ? Double.POSITIVE_INFINITY : present));
	}

	/**
	 * Geometric from the present light to the last day's, and never above the least light
	 * that the site has on a day yet to come, so that it only rises.
	 */
	private static double[] targets(GeoPoint point, LocalDate firstDay, SiteLight site, int steps, double present) {
		double[] targets = new double[steps];
		double cap = Double.POSITIVE_INFINITY;
		double goal = site.molesPerDay(point, firstDay.plusDays(steps - 1L));
		double from = Math.max(present, DARK);
		for (int at = steps - 1; at >= 0; at--) {
			cap = Math.min(cap, site.molesPerDay(point, firstDay.plusDays(at)));
			double risen = (from < goal) ? from * Math.pow(goal / from, (at + 1.0) / steps) : goal;
			targets[at] = Math.min(cap, risen);
		}
		return targets;
	}

	public RampBasis basis() {
		return this.basis;
	}

	public LocalDate firstDay() {
		return this.firstDay;
	}

	/**
	 * The days as planned, when none is held.
	 * @return step 1 on the first day, and so on
	 */
	public List<RampDay> days() {
		return IntStream.rangeClosed(1, this.basis.steps())
			.mapToObj((step) -> on(this.firstDay.plusDays(step - 1L), step))
			.toList();
	}

	/**
	 * A step on whatever day it comes.
	 * @param date the day
	 * @param step 1 to the number of steps
	 * @return the step with the clock times and the light of that day
	 */
	public RampDay on(LocalDate date, int step) {
		if (step < 1 || step > this.basis.steps()) {
			throw new IllegalArgumentException("step %d is outside 1 to %d".formatted(step, this.basis.steps()));
		}
		double open = DailyLight.clearSky(this.point, date);
		double site = this.basis.site().share() * open;
		return new RampStep(this.point, this.zone, this.basis, step, date, open, site,
				Math.min(this.targets[step - 1], site))
			.day();
	}

}
