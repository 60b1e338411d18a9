package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.GeoPoint;

/**
 * Finds what a gardener can do for the light of a step; light in mol/m² a day.
 *
 * @param point the place
 * @param zone its clock
 * @param ramp what all days have in common
 * @param number of the step, from 1
 * @param date the day that it comes on
 * @param open light of the open sky
 * @param site light of the place where the plant will grow
 * @param target light to aim at, at most the site's
 */
record RampStep(GeoPoint point, ZoneId zone, RampBasis ramp, int number, LocalDate date, double open, double site,
		double target) {

	/** Three hours are the first outing (Minnesota Master Gardeners have 3 to 4). */
	private static final int FIRST_HOURS = 3;

	/** From this part of the site's light on it may as well stand there. */
	private static final double NEAR = 0.95;

	RampDay day() {
		int hours = scheduledHours();
		// Shade comes first whatever the light: morning sun from the fourth day of two
		// weeks on is common practice.
		boolean sunny = !this.ramp.lightAlready() && this.number > Math.max(1, this.ramp.steps() * 3 / 14)
				&& Exposure.BRIGHT_SHADE.share() < this.ramp.site().share();
		boolean nights = this.number > this.ramp.steps() - ((this.ramp.steps() < 6) ? 1 : 2);
		Outing outing = sunny ? morning(hours) : outing(hours);
		if (this.ramp.lightAlready() || this.number == this.ramp.steps()
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
			case ITS_PLACE -> lightUnder(outing, this.ramp.site().share());
		};
		return new RampDay(this.number, this.date, this.target, light, this.site, this.open, outing.part(),
				outing.hours(), outing.from(), exposure, until, nights, this.ramp);
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
		return Math.min(exposure.share(), this.ramp.site().share());
	}

	/** Light of a day with this share of the sky's outside, and the present inside. */
	private double lightUnder(Outing outing, double share) {
		double part = outing.part();
		return this.open * share * part + inside() * (1 - part);
	}

	/** What the present light is on a day, at most the site's. */
	private double inside() {
		return Math.min(this.ramp.presentMoles(), this.site);
	}

	/** From three hours to all day on two thirds of the way. */
	private int scheduledHours() {
		double reach = Math.max(1, Math.round(this.ramp.steps() * 2 / 3.0));
		double whole = Outing.whole(this.point, this.date);
		double risen = (this.number - 1) / reach;
		return (risen >= 1) ? (int) Math.ceil(whole)
				: (int) Math.floor(FIRST_HOURS + Math.max(0, whole - FIRST_HOURS) * risen + 1e-9);
	}

	private Outing morning(int hours) {
		return Outing.morning(this.point, this.date, this.zone, Math.max(1, hours));
	}

	private Outing outing(int hours) {
		return Outing.of(this.point, this.date, this.zone, Math.max(1, hours));
	}

}
