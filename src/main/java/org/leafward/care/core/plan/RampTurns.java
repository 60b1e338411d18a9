package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampProgress;
import org.leafward.care.TaskText;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.care.core.plan.PlannedTask.Told;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Planting;

/** The days of ramps that go by the light of each planting. */
final class RampTurns {

	private final Figures figures;

	private final Observed observed;

	private final WeatherMemo weather;

	private final LocalDate today;

	RampTurns(PlanSite site, WeatherMemo weather, LocalDate today) {
		this.figures = site.figures();
		this.observed = site.observed();
		this.weather = weather;
		this.today = today;
	}

	/**
	 * Adds the days that are left.
	 * @return false when the ramp is the same for all plantings
	 */
	boolean of(Draft draft, Subject subject, Ramp ramp, List<PlannedTask> tasks) {
		RampLight by = ramp.light();
		if (by != null && by.way() != RampLight.Way.OUT) {
			return steps(draft, subject, ramp, by, tasks);
		}
		LightRamp light = light(draft, subject, ramp);
		if (light == null) {
			return false;
		}
		light(draft, subject, light, tasks);
		return true;
	}

	/** The days of a ramp that nothing holds. */
	private boolean steps(Draft draft, Subject subject, Ramp ramp, RampLight by, List<PlannedTask> tasks) {
		LocalDate first = draft.window().from();
		List<Amount> amounts = this.figures.steps(by, subject, first, ramp.days());
		TaskText rule = draft.rule().rule().text();
		for (int day = 1; day <= amounts.size(); day++) {
			Amount amount = amounts.get(day - 1);
			Wording wording = Wording.of(new TaskText("Day %d of %d: %s".formatted(day, amounts.size(), rule.title()),
					ramp.stepOn(Math.min(day, ramp.days())).text(), amount.words(), rule.why(), rule.otherwise(),
					rule.caution()));
			Told told = new Told(wording, new Lazy<>(() -> Reasons.of(draft, List.of(amount.explanation()))),
					wording.name().getMostSignificantBits());
			tasks.add(new PlannedTask(subject, draft, day, DayWindow.of(first.plusDays(day - 1L)), told, Call.WANTED,
					null));
		}
		return !amounts.isEmpty();
	}

	private @Nullable LightRamp light(Draft draft, Subject subject, Ramp ramp) {
		Planting planting = subject.planting();
		if (ramp.light() == null || planting == null) {
			return null;
		}
		List<RampDay> told = this.observed.ramp(planting.id(), draft.rule().reference(), draft.season().year());
		// A ramp that has begun keeps its days when the event that it hangs on moves.
		LocalDate first = told.stream()
			.filter((day) -> day.past(this.today))
			.findFirst()
			.map(RampDay::first)
			.orElse(draft.window().from());
		return ramp(ramp, subject, first, first.equals(draft.window().from()))
			.map((steps) -> new LightRamp(draft, steps, told, this.today, weatherOf(draft)))
			.orElse(null);
	}

	/** One that is short for its light begins later when it ends on its anchor. */
	private Optional<HardeningRamp> ramp(Ramp ramp, Subject subject, LocalDate first, boolean whole) {
		RampLight light = Objects.requireNonNull(ramp.light());
		return this.figures.ramp(light, subject, first, ramp.days()).flatMap((found) -> {
			int less = ramp.days() - found.basis().steps();
			return (less > 0 && whole && ramp.endsAtAnchor())
					? this.figures.ramp(light, subject, first.plusDays(less), found.basis().steps())
					: Optional.of(found);
		});
	}

	private LightRamp.DayWeather weatherOf(Draft draft) {
		List<Condition> against = draft.rule().rule().weather().postpones();
		return new LightRamp.DayWeather() {

			@Override
			public @Nullable Explanation unfit(LocalDate day) {
				return against.stream()
					.map((condition) -> RampTurns.this.weather.ask(condition, day))
					.filter(WeatherAnswers.Answer::yes)
					.map(WeatherAnswers.Answer::explanation)
					.findFirst()
					.orElse(null);
			}

			@Override
			public boolean fit(LocalDate day) {
				return against.stream().allMatch((condition) -> RampTurns.this.weather.ask(condition, day).no());
			}

		};
	}

	private void light(Draft draft, Subject subject, LightRamp ramp, List<PlannedTask> tasks) {
		if (!ramp.stands()) {
			return;
		}
		for (RampProgress.Turn turn : ramp.turns()) {
			tasks.add(new PlannedTask(subject, draft, turn.number(), DayWindow.of(ramp.day(turn)),
					ramp.told(turn, (day) -> coldNight(draft, subject, day)), Call.WANTED, null));
		}
	}

	/** Whether the night after a day will be colder than the plants may spend outside. */
	private boolean coldNight(Draft draft, Subject subject, LocalDate day) {
		RampLight light = ((Ramp) draft.rule().rule().timing()).light();
		SpeciesId species = subject.speciesId();
		TemperatureThreshold lowest = (light != null && species != null) ? light.lowestNight(species) : null;
		LocalDate next = day.plusDays(1);
		if (lowest == null || next.isAfter(this.weather.horizon())) {
			return false;
		}
		// The night itself may be as cold as the limit.
		String below = NumberWords.fixed(lowest.degrees() - 1, 0) + (lowest.fahrenheit() ? "F" : "C");
		return this.weather.ask(new Condition("low-ahead", below, 0), next).yes();
	}

}
