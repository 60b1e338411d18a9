package org.leafward.care.core;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.leafward.measure.Explanation;

/**
 * Why the days of a task moved, told from the steps behind them then and now. It says
 * which step came out otherwise, and never guesses.
 */
public final class WhyMoved {

	private static final String RULE = "Rule";

	/** As {@code measure.DayWords} writes it. */
	private static final Pattern DATE = Pattern.compile("(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \\d{1,2} \\w{3} \\d{4}");

	private WhyMoved() {
	}

	/**
	 * The first difference that dates hang on.
	 * @param before how the former days came about
	 * @param now how the days came about
	 * @return a sentence for readers, for example "Last freeze: now Sat 8 May 2027,
	 * before Mon 3 May 2027."; empty when no step tells
	 */
	public static Optional<String> between(Explanation before, Explanation now) {
		if (ruleChanged(before, now)) {
			return Optional.of("The rule itself was changed.");
		}
		List<Explanation> former = dated(without(before.steps(), now.steps()));
		for (Explanation step : dated(without(now.steps(), before.steps()))) {
			Optional<Explanation> same = named(former, step.label());
			if (same.isEmpty()) {
				return Optional.of(appeared(step));
			}
			if (!same.get().value().equals(step.value())) {
				return Optional.of(differs(same.get(), step));
			}
		}
		return former.stream()
			.filter((step) -> named(now.steps(), step.label()).isEmpty())
			.findFirst()
			.map((step) -> "It no longer counts: %s, %s.".formatted(step.label(), step.value()));
	}

	/** Amounts stand among the steps too, and change by themselves. */
	private static List<Explanation> dated(List<Explanation> steps) {
		return steps.stream().filter((step) -> DATE.matcher(step.value()).lookingAt()).toList();
	}

	/** Steps that dates hang on, but for those that are the same in the other list. */
	private static List<Explanation> without(List<Explanation> steps, List<Explanation> others) {
		return steps.stream()
			.filter((step) -> !step.label().equals(RULE) && step.source() == null && !others.contains(step))
			.toList();
	}

	/** The detail of that step has the version in which the rule last changed. */
	private static boolean ruleChanged(Explanation before, Explanation now) {
		Optional<Explanation> former = named(before.steps(), RULE);
		Optional<Explanation> rule = named(now.steps(), RULE);
		return former.isPresent() && rule.isPresent() && !former.equals(rule);
	}

	private static Optional<Explanation> named(List<Explanation> steps, String label) {
		return steps.stream().filter((step) -> step.label().equals(label)).findFirst();
	}

	/**
	 * What the two hang on says more than they do: the freeze more than the beginning.
	 */
	private static String differs(Explanation before, Explanation now) {
		List<Explanation> former = without(before.steps(), now.steps());
		for (Explanation step : without(now.steps(), before.steps())) {
			Optional<Explanation> same = named(former, step.label());
			if (same.isEmpty()) {
				return appeared(step);
			}
			if (!same.get().value().equals(step.value())) {
				return pair(same.get(), step);
			}
		}
		return pair(before, now);
	}

	private static String pair(Explanation before, Explanation now) {
		return "%s: now %s, before %s.".formatted(now.label(), now.value(), before.value());
	}

	/** What the weather says stands one step below. */
	private static String appeared(Explanation step) {
		return (step.label().startsWith("Put off") && !step.steps().isEmpty())
				? "%s: %s.".formatted(step.label(), step.steps().get(0).label())
				: "%s, %s.".formatted(step.label(), step.value());
	}

}
