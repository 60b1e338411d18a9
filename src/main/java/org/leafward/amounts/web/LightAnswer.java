package org.leafward.amounts.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.Hold;
import org.leafward.amounts.light.RampDay;
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
 * @param ramp the ramp
 * @param complete whether it is done at its end
 * @param days its days, held ones included
 */
record LightAnswer(HardeningRamp ramp, boolean complete, List<Day> days) {

	private static final Hold STAYED_IN = new Hold(Hold.Kind.COLD, "It stays in");

	/**
	 * A day of the ramp.
	 *
	 * @param number of the day
	 * @param step what its step would have it do
	 * @param held whether it stays in instead
	 */
	record Day(int number, RampDay step, boolean held) {

		String words() {
			return this.held ? "It stays in; step " + this.step.step() + " waits" : this.step.words();
		}

		/** Light to aim at; what it has now on a day inside. */
		double moles() {
			return this.held ? Math.min(this.step.basis().presentMoles(), this.step.siteMoles())
					: this.step.basis().lightAlready() ? this.step.siteMoles() : this.step.targetMoles();
		}

	}

	static LightAnswer of(GeoPoint point, ZoneId zone, LocalDate settingOut, int days, StartingLight start,
			SiteLight site, RampLimits limits, Set<Integer> held) {
		HardeningRamp ramp = HardeningRamp.plan(point, zone, settingOut.minusDays(days), days, start, site, limits);
		if (ramp.basis().steps() < days) {
			// A short ramp begins later, so that it ends on the same day.
			ramp = HardeningRamp.plan(point, zone, settingOut.minusDays(ramp.basis().steps()), ramp.basis().steps(),
					start, site, limits);
		}
		Map<Integer, Hold> holds = held.stream().collect(Collectors.toMap(Function.identity(), (day) -> STAYED_IN));
		RampProgress progress = RampProgress.of(ramp.basis().steps(), List.of(), holds);
		List<Day> all = new ArrayList<>();
		for (RampProgress.Turn turn : progress.turns()) {
			LocalDate date = ramp.firstDay().plusDays(turn.number() - 1L);
			all.add(new Day(turn.number(), ramp.on(date, turn.step()), turn.held()));
		}
		return new LightAnswer(ramp, progress.complete(), List.copyOf(all));
	}

	/** The day after the ramp. */
	LocalDate ready() {
		return this.ramp.firstDay().plusDays(this.days.size());
	}

	/** The result in a sentence. */
	String lead() {
		String first = DayWords.of(this.ramp.firstDay());
		if (!this.complete) {
			return "After " + this.days.size()
					+ " days it isn’t hardened: too many days were held. Begin anew in better weather.";
		}
		return "Begin on " + first + "; after " + this.days.size() + " days it can be set out on "
				+ DayWords.of(ready()) + ".";
	}

	/** What it means for the plant. */
	String change() {
		Day last = this.days.get(this.days.size() - 1);
		double now = this.ramp.basis().presentMoles();
		String lights = "On " + this.ramp.basis().start().words() + " it gets about " + moles(now)
				+ " mol/m² of light a day, in " + this.ramp.basis().site().words() + " about "
				+ moles(last.step().siteMoles()) + " on a clear day";
		return this.ramp.basis().lightAlready()
				? lights + ": it has the light already, and only wind and cooler air are new to it." : lights + ", "
						+ NumberWords.fixed(last.step().siteMoles() / Math.max(now, 0.05), 1) + " times as much.";
	}

	private static String moles(double moles) {
		return NumberWords.fixed(moles, (moles < 9.95) ? 1 : 0);
	}

	LightRampPicture picture() {
		return new LightRampPicture("light", this.ramp.basis().presentMoles(),
				this.days.stream()
					.map((day) -> new LightRampPicture.Day(day.step().date(), day.moles(), day.step().siteMoles(),
							day.words(), day.held() ? STAYED_IN.reason() : null))
					.toList());
	}

	Explanation explanation() {
		return Explanation.of("Each day’s step", this.days.size() + " days")
			.withSteps(this.days.stream()
				.filter((day) -> !day.held())
				.map((day) -> day.step().amount().explanation())
				.toList());
	}

}
