package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
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

	/** Three hours are the first outing (Minnesota Master Gardeners have 3 to 4). */
	private static final int FIRST_HOURS = 3;

	/** From this part of the site's light on it may as well stand there. */
	private static final double NEAR = 0.95;

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
		return new Step(step, date, open, site, Math.min(this.targets[step - 1], site)).day();
	}

	/** Finds what a gardener can do for the light of a step. */
	private final class Step {

		private final int number;

		private final LocalDate date;

		private final double open;

		private final double site;

		private final double target;

		private final double inside;

		Step(int number, LocalDate date, double open, double site, double target) {
			this.number = number;
			this.date = date;
			this.open = open;
			this.site = site;
			this.target = target;
			this.inside = Math.min(HardeningRamp.this.basis.presentMoles(), site);
		}

		RampDay day() {
			RampBasis ramp = HardeningRamp.this.basis;
			int hours = scheduledHours();
			// Shade comes first whatever the light: morning sun from the fourth day of
			// two
			// weeks on is common practice.
			boolean sunny = !ramp.lightAlready() && this.number > Math.max(1, ramp.steps() * 3 / 14)
					&& Exposure.BRIGHT_SHADE.share() < ramp.site().share();
			boolean nights = this.number > ramp.steps() - ((ramp.steps() < 6) ? 1 : 2);
			Outing outing = sunny ? morning(hours) : outing(hours);
			if (ramp.lightAlready() || this.number == ramp.steps()
					|| (outing.from() == null && this.target >= NEAR * this.site)) {
				return day(outing, Exposure.ITS_PLACE, null, nights);
			}
			if (sunny) {
				LocalTime until = sun(outing);
				if (until != null) {
					boolean throughout = outing.partUntil(until) >= outing.part() - 1e-6;
					return throughout ? day(outing, Exposure.SUN, null, nights)
							: day(outing, Exposure.SUN_UNTIL, until, nights);
				}
				outing = outing(hours);
			}
			if (lightUnder(outing, shade(Exposure.BRIGHT_SHADE)) <= this.target) {
				return day(outing, Exposure.BRIGHT_SHADE, null, nights);
			}
			while (outing.hours() > 1 && lightUnder(outing, shade(Exposure.DEEP_SHADE)) > this.target) {
				outing = outing(outing.hours() - 1);
			}
			return day(outing, Exposure.DEEP_SHADE, null, nights && outing.from() == null);
		}

		private RampDay day(Outing outing, Exposure exposure, @Nullable LocalTime until, boolean nights) {
			double light = switch (exposure) {
				case DEEP_SHADE, BRIGHT_SHADE -> lightUnder(outing, shade(exposure));
				case SUN_UNTIL -> lightUnder(outing, shade(Exposure.BRIGHT_SHADE))
						+ (until != null ? outing.partUntil(until) : 0) * sunGain();
				case SUN -> lightUnder(outing, 1);
				case ITS_PLACE -> lightUnder(outing, HardeningRamp.this.basis.site().share());
			};
			return new RampDay(this.number, this.date, this.target, light, this.site, this.open, outing.part(),
					outing.hours(), outing.from(), exposure, until, nights, HardeningRamp.this.basis);
		}

		/** What an hour in the sun gives more than one in bright shade. */
		private double sunGain() {
			return this.open * (1 - shade(Exposure.BRIGHT_SHADE));
		}

		private @Nullable LocalTime sun(Outing outing) {
			double left = this.target - lightUnder(outing, shade(Exposure.BRIGHT_SHADE));
			return (left > 0) ? outing.until(left / sunGain()) : null;
		}

		/** No shade is brighter than the site. */
		private double shade(Exposure exposure) {
			return Math.min(exposure.share(), HardeningRamp.this.basis.site().share());
		}

		/**
		 * Light of a day with this share of the sky's outside, and the present inside.
		 */
		private double lightUnder(Outing outing, double share) {
			double part = outing.part();
			return this.open * share * part + this.inside * (1 - part);
		}

		/** From three hours to all day on two thirds of the way. */
		private int scheduledHours() {
			double reach = Math.max(1, Math.round(HardeningRamp.this.basis.steps() * 2 / 3.0));
			double whole = Outing.whole(HardeningRamp.this.point, this.date);
			double risen = (this.number - 1) / reach;
			return (risen >= 1) ? (int) Math.ceil(whole)
					: (int) Math.floor(FIRST_HOURS + Math.max(0, whole - FIRST_HOURS) * risen + 1e-9);
		}

		private Outing morning(int hours) {
			return Outing.morning(HardeningRamp.this.point, this.date, HardeningRamp.this.zone, Math.max(1, hours));
		}

		private Outing outing(int hours) {
			return Outing.of(HardeningRamp.this.point, this.date, HardeningRamp.this.zone, Math.max(1, hours));
		}

	}

}
