package org.leafward.amounts.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampBasis;
import org.leafward.amounts.light.RampCalendar;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.RampProgress;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NumberWords;
import org.leafward.pages.LightRampPicture;

/**
 * A ramp that was asked for, with the days on which it was held.
 *
 * @param calendar its days
 */
record LightAnswer(RampCalendar calendar) {

	static LightAnswer of(GeoPoint point, ZoneId zone, LocalDate settingOut, int days, StartingLight start,
			SiteLight site, RampLimits limits, Set<Integer> held) {
		HardeningRamp ramp = HardeningRamp.plan(point, zone, settingOut.minusDays(days), days, start, site, limits);
		int steps = ramp.basis().steps();
		if (steps < days) {
			// A short ramp begins later, so that it ends on the same day.
			ramp = HardeningRamp.plan(point, zone, settingOut.minusDays(steps), steps, start, site, limits);
		}
		List<RampProgress.Log> log = IntStream.rangeClosed(1, held.stream().max(Integer::compare).orElse(0))
			.mapToObj((day) -> held.contains(day) ? RampProgress.Log.HELD : RampProgress.Log.TAKEN)
			.toList();
		return new LightAnswer(RampCalendar.of(ramp, log));
	}

	private RampBasis basis() {
		return this.calendar.ramp().basis();
	}

	/** The result in a sentence. */
	String lead() {
		String first = DayWords.of(this.calendar.ramp().firstDay());
		if (!this.calendar.complete()) {
			return "After " + this.calendar.entries().size()
					+ " days it isn’t hardened: too many days were held. Begin anew in better weather.";
		}
		return "Begin on " + first + "; after " + this.calendar.entries().size() + " days it can be set out on "
				+ DayWords.of(this.calendar.ready()) + ".";
	}

	/** What it means for the plant. */
	String change() {
		RampCalendar.Entry last = this.calendar.entries().get(this.calendar.entries().size() - 1);
		double now = basis().presentMoles();
		String lights = "Now it stands " + basis().start().words() + " and gets about " + moles(now)
				+ " mol/m² of light a day; in " + basis().site().words() + " there are about "
				+ moles(last.step().siteMoles()) + " on a clear day";
		return basis().lightAlready()
				? lights + ". It has the light already, and only wind and cooler air are new to it." : lights + ", "
						+ NumberWords.fixed(last.step().siteMoles() / Math.max(now, 0.05), 1) + " times as much.";
	}

	private static String moles(double moles) {
		return NumberWords.fixed(moles, (moles < 9.95) ? 1 : 0);
	}

	LightRampPicture picture() {
		return new LightRampPicture("light", basis().presentMoles(),
				this.calendar.entries()
					.stream()
					.map((day) -> new LightRampPicture.Day(day.date(), day.moles(), day.step().siteMoles(), day.words(),
							day.held() ? "It stays in" : null))
					.toList());
	}

	Explanation explanation() {
		return Explanation.of("Each day’s step", this.calendar.entries().size() + " days")
			.withSteps(this.calendar.entries()
				.stream()
				.filter((day) -> !day.held())
				.map((day) -> day.amount().explanation())
				.toList());
	}

}
