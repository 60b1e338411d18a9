package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.care.core.plan.PlannedTask.Told;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.SoilTestAnchor;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Weather;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * From the days of a rule to tasks: one for all days, one for each turn or each day of a
 * ramp, or one for each day that the weather picks. The weather speaks for the turn that
 * holds today; what is farther off is not known well enough.
 */
final class Turns {

	/** More than a rule has turns. */
	private static final int SERIES = 1_000;

	private final WeatherMemo weather;

	private final Figures figures;

	private final RampTurns ramps;

	private final LocalDate today;

	private final Map<Worded, Wording> wordings = new HashMap<>();

	/** The words of a rule with an amount. */
	private record Worded(int rule, String amount) {
	}

	Turns(PlanSite site, LocalDate today) {
		this.weather = new WeatherMemo(site.weather(), today);
		this.figures = site.figures();
		this.ramps = new RampTurns(site, this.weather, today);
		this.today = today;
	}

	void of(Draft draft, Subject subject, List<PlannedTask> tasks) {
		if (draft.rule().rule().timing() instanceof Ramp ramp) {
			if (this.ramps.of(draft, subject, ramp, tasks)) {
				return;
			}
			LocalDate first = draft.window().from();
			for (int day = 1; day <= ramp.days(); day++) {
				add(draft, subject, day, DayWindow.of(first.plusDays(day - 1L)), tasks);
			}
			return;
		}
		Span span = (Span) draft.rule().rule().timing();
		int series = series(span, subject);
		if (!span.repeats()) {
			add(draft, subject, series, draft.window(), tasks);
			return;
		}
		int turn = series + 1;
		for (DayWindow days : Ends.turns(draft.window(), span.everyDays())) {
			add(draft, subject, turn++, days, tasks);
		}
	}

	/**
	 * A number for the turns that hang on one soil test, as a season may see several, and
	 * what was done after one is no answer to the next.
	 */
	private int series(Span span, Subject subject) {
		return (span.from() instanceof SoilTestAnchor)
				? this.figures.soil(subject).map((soil) -> soil.day().getDayOfYear() * SERIES).orElse(0) : 0;
	}

	private void add(Draft draft, Subject subject, int occurrence, DayWindow window, List<PlannedTask> tasks) {
		Weather conditions = draft.rule().rule().weather();
		if (window.from().isAfter(this.today) && onlyOnceOpened(draft.rule().rule())) {
			return;
		}
		if (!conditions.matters() || !window.contains(this.today)) {
			tasks.add(new PlannedTask(subject, draft, occurrence, window, told(draft, subject, occurrence, window),
					Call.WANTED, null));
			return;
		}
		String needless = needless(conditions, null);
		if (needless != null) {
			Told told = new Told(draft.rule().wording(subject.speciesId(), occurrence), draft.reason(), 0);
			tasks.add(new PlannedTask(subject, draft, occurrence, window, told, Call.NEEDLESS, needless));
			return;
		}
		List<WeatherAnswers.Answer> against = conditions.postpones()
			.stream()
			.map((condition) -> this.weather.ask(condition, null))
			.filter(WeatherAnswers.Answer::yes)
			.toList();
		if (against.isEmpty()) {
			tasks.add(new PlannedTask(subject, draft, occurrence, window, told(draft, subject, occurrence, window),
					Call.WANTED, null));
			return;
		}
		LocalDate tomorrow = this.today.plusDays(1);
		DayWindow later = new DayWindow(tomorrow, window.to().isBefore(tomorrow) ? tomorrow : window.to());
		tasks.add(new PlannedTask(subject, draft, occurrence, later,
				told(draft, subject, occurrence, later,
						() -> List.of(Explanation.of("Put off by the weather", DayWords.of(later))
							.withSteps(against.stream().map(WeatherAnswers.Answer::explanation).toList()))),
				Call.WANTED, null));
	}

	private Told told(Draft draft, Subject subject, int occurrence, DayWindow window) {
		return told(draft, subject, occurrence, window, null);
	}

	/**
	 * The words, with what is worked out for the planting.
	 * @param weather what the weather has to do with the days; null for nothing
	 */
	private Told told(Draft draft, Subject subject, int occurrence, DayWindow window,
			@Nullable Supplier<List<Explanation>> weather) {
		Rule rule = draft.rule().rule();
		Amount amount = (rule.computes() != null) ? this.figures.amount(rule, subject, window).orElse(null) : null;
		if (amount == null) {
			return new Told(draft.rule().wording(subject.speciesId(), occurrence),
					(weather == null) ? draft.reason() : new Lazy<>(() -> Reasons.of(draft, weather.get())), 0);
		}
		Wording wording = this.wordings.computeIfAbsent(new Worded(draft.rule().number(), amount.words()),
				(one) -> draft.rule().wording(amount.words()));
		return new Told(wording, new Lazy<>(() -> {
			List<Explanation> more = new ArrayList<>((weather != null) ? weather.get() : List.of());
			more.add(amount.explanation());
			return Reasons.of(draft, more);
		}), wording.name().getMostSignificantBits());
	}

	/**
	 * Whether nobody knows ahead that the care will be needed: turns and hold-offs that
	 * the weather has to open. A single task that waits for its weather comes every year,
	 * and so is told ahead.
	 */
	private static boolean onlyOnceOpened(Rule rule) {
		return !rule.weather().opens().isEmpty()
				&& (rule.kind() == TaskKind.HOLD_OFF || (rule.timing() instanceof Span span && span.repeats()));
	}

	/**
	 * Why the weather, of a single day or as of today, makes a task needless, or null.
	 */
	private @Nullable String needless(Weather conditions, @Nullable LocalDate day) {
		for (Condition condition : conditions.withdraws()) {
			WeatherAnswers.Answer answer = this.weather.ask(condition, day);
			if (answer.yes()) {
				return "The weather makes it needless for now. " + answer.sentence();
			}
		}
		for (Condition condition : conditions.opens()) {
			WeatherAnswers.Answer answer = this.weather.ask(condition, day);
			if (answer.no()) {
				return "The weather doesn't call for it now. " + answer.sentence();
			}
		}
		return null;
	}

	/**
	 * The single days that the weather picks, as far as the forecast reaches. A night
	 * belongs to the day on whose evening it begins, and its minimum to the day after.
	 */
	void days(Draft draft, HoldOffs holdOffs, Subject subject, List<PlannedTask> tasks) {
		DayByDay timing = (DayByDay) draft.rule().rule().timing();
		Weather conditions = draft.rule().rule().weather();
		int minimum = draft.rule().rule().beforeANight() ? 1 : 0;
		LocalDate last = this.weather.horizon().minusDays(minimum);
		for (LocalDate day = this.today; !day.isAfter(last); day = day.plusDays(1)) {
			if (!draft.window().contains(day) || holdOffs.forbid(draft, day)) {
				continue;
			}
			DayWindow window = new DayWindow(day.minusDays(timing.daysAhead()), day);
			LocalDate asked = day.plusDays(minimum);
			String needless = needless(conditions, asked);
			List<WeatherAnswers.Answer> opens = conditions.opens()
				.stream()
				.map((condition) -> this.weather.ask(condition, asked))
				.toList();
			Call call = (needless != null) ? Call.NEEDLESS
					: opens.stream().allMatch(WeatherAnswers.Answer::yes) ? Call.WANTED : Call.UNKNOWN;
			Told told = told(draft, subject, 0, window,
					() -> List.of(Explanation.of("The weather calls for it", DayWords.of(asked))
						.withSteps(opens.stream().map(WeatherAnswers.Answer::explanation).toList())));
			tasks.add(new PlannedTask(subject, draft, day.getDayOfYear(), window, told, call, needless));
		}
	}

}
