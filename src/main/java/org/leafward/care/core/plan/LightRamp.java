package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.Hold;
import org.leafward.amounts.light.RampProgress;
import org.leafward.amounts.light.RampProgress.Log;
import org.leafward.amounts.light.RampProgress.Turn;
import org.leafward.care.TaskText;
import org.leafward.care.core.plan.PlannedTask.Told;
import org.leafward.care.core.rule.Ramp;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * The days of a ramp of light for one planting. Days are numbered by the calendar, so
 * that none moves; what was told for past days decides which step today has, and a day of
 * unfit weather repeats its step and makes the ramp longer.
 */
final class LightRamp {

	private final Draft draft;

	private final Ramp ramp;

	private final HardeningRamp light;

	private final LocalDate today;

	private final RampProgress progress;

	private final Map<Integer, Explanation> reasons = new HashMap<>();

	/**
	 * Works out the days.
	 * @param draft the ramp as the rule dates it
	 * @param light its steps
	 * @param told the days that were told up to today
	 * @param today the day at the site
	 * @param weather what the weather of a day has to say
	 */
	LightRamp(Draft draft, HardeningRamp light, List<RampDay> told, LocalDate today, DayWeather weather) {
		this.draft = draft;
		this.ramp = (Ramp) draft.rule().rule().timing();
		this.light = light;
		this.today = today;
		List<Log> past = past(told);
		Map<Integer, Hold> holds = new HashMap<>();
		// Somebody knows already that nobody will be there.
		told.stream()
			.filter((day) -> day.logged() && day.held() && !day.past(today))
			.forEach((day) -> holds.put(day.number(), new Hold("Left out")));
		int ahead = past.size();
		for (LocalDate day = first().plusDays(ahead); !day.isAfter(today.plusDays(WeatherMemo.FORECAST_DAYS)); day = day
			.plusDays(1)) {
			Explanation reason = day.isBefore(today) ? null : weather.unfit(day);
			if (reason == null && day.equals(today) && heldToday(told) && !weather.fit(day)) {
				reason = Explanation.of("Kept in since this morning", "the forecast no longer tells of today");
			}
			if (reason != null) {
				int number = (int) (day.toEpochDay() - first().toEpochDay()) + 1;
				holds.put(number, new Hold(reason.label() + ": " + reason.value()));
				this.reasons.put(number, reason);
			}
		}
		this.progress = RampProgress.of(light.basis().steps(), past, holds);
	}

	/** What the weather has to say of a day of the ramp. */
	interface DayWeather {

		/** Why it keeps plants in; null when it doesn't, or isn't known. */
		@Nullable Explanation unfit(LocalDate day);

		/** Whether it is known to let them out. */
		boolean fit(LocalDate day);

	}

	/** In the evening a forecast tells of the night only, and plants have stayed in. */
	private boolean heldToday(List<RampDay> told) {
		return told.stream().anyMatch((day) -> day.held() && day.day().equals(this.today));
	}

	private LocalDate first() {
		return this.light.firstDay();
	}

	/**
	 * What is known of the days that are over. A day of which nothing was told lies
	 * before anybody knew of the ramp, so nothing was done.
	 */
	private List<Log> past(List<RampDay> told) {
		Map<Integer, RampDay> byNumber = told.stream()
			.filter((day) -> day.past(this.today))
			.collect(Collectors.toMap(RampDay::number, (day) -> day, (one, other) -> other));
		List<Log> past = new ArrayList<>();
		for (int number = 1; first().plusDays(number - 1L).isBefore(this.today)
				|| byNumber.containsKey(number); number++) {
			RampDay day = byNumber.get(number);
			past.add((day == null || day.held()) ? Log.HELD : Log.TAKEN);
		}
		return past;
	}

	/**
	 * Whether there is still something to do: a ramp that nobody began before its plants
	 * were set out is over.
	 * @return true when a day is left
	 */
	boolean stands() {
		boolean begun = this.progress.turns().stream().anyMatch((turn) -> turn.past() && !turn.held());
		return begun || !this.today.isAfter(this.draft.window().to());
	}

	/** The days from today on. */
	List<Turn> turns() {
		return this.progress.turns().stream().filter((turn) -> !day(turn).isBefore(this.today)).toList();
	}

	LocalDate day(Turn turn) {
		return first().plusDays(turn.number() - 1L);
	}

	/**
	 * What a day says.
	 * @param turn the day
	 * @param coldNight whether the night after a day will be too cold
	 * @return its words
	 */
	Told told(Turn turn, Function<LocalDate, Boolean> coldNight) {
		org.leafward.amounts.light.RampDay step = this.light.on(day(turn), turn.step());
		Amount amount = (step.nightOut() && coldNight.apply(day(turn)) ? step.nightIn() : step).amount();
		TaskText rule = this.draft.rule().rule().text();
		boolean held = turn.held();
		String title = "Day %d of %d%s: %s".formatted(turn.number(), this.progress.length(), held ? ", kept in" : "",
				rule.title());
		String what = held ? "Stays in today; this step is for the next fit day. " + because(turn)
				: this.ramp.stepOn(scaled(turn.step())).text();
		String place = held ? "Indoors, as before; nothing is lost by a day." : amount.words();
		Wording wording = Wording.of(new TaskText(title, what, place, rule.why(), rule.otherwise(), rule.caution()));
		return new Told(wording, new Lazy<>(() -> Reasons.of(this.draft, steps(turn, amount))),
				wording.name().getMostSignificantBits(), turn.step(), held);
	}

	/** The step of the rule that this one lies in, when there are fewer or more. */
	private int scaled(int step) {
		return Math.max(1, Math.round((float) step * this.ramp.days() / this.light.basis().steps()));
	}

	private String because(Turn turn) {
		Hold hold = turn.hold();
		if (hold == null) {
			return "";
		}
		return hold.reason().substring(0, 1).toUpperCase(Locale.ROOT) + hold.reason().substring(1) + ".";
	}

	private List<Explanation> steps(Turn turn, Amount amount) {
		List<Explanation> steps = new ArrayList<>();
		Explanation reason = this.reasons.get(turn.number());
		if (reason != null) {
			steps.add(Explanation.of("Kept in by the weather", DayWords.of(day(turn))).withSteps(List.of(reason)));
		}
		int held = (int) this.progress.turns().stream().filter(Turn::held).count();
		if (held > 0) {
			steps.add(Explanation.of("Days kept in", String.valueOf(held))
				.withDetail("Each repeats its step and makes the ramp a day longer; it ends on %s."
					.formatted(DayWords.of(first().plusDays(this.progress.length() - 1L)))));
		}
		steps.add(amount.explanation());
		return steps;
	}

}
