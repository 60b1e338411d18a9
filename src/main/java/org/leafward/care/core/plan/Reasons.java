package org.leafward.care.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Variant;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/** The words of how the days of a task came about. */
final class Reasons {

	private Reasons() {
	}

	static Explanation of(Draft draft, List<Explanation> weather) {
		IndexedRule rule = draft.rule();
		RulePack pack = rule.pack();
		DayWindow whole = draft.window();
		List<Explanation> all = new ArrayList<>();
		all.add(Explanation.of("Rule", rule.reference())
			.withDetail("%s, version %d. %s".formatted(pack.title(), pack.versionOf(rule.rule()), pack.region())));
		// One explanation for all turns, so that it is kept once.
		if (rule.rule().timing() instanceof Span span && span.repeats()) {
			all.add(Explanation.of("Comes again every %d days".formatted(span.everyDays()), DayWords.of(whole))
				.withDetail("This task is one of its turns through these days."));
		}
		all.addAll(draft.ends().steps().get());
		Variant variant = draft.by().variant();
		if (variant != null) {
			all.add(Explanation.of("Other days hold here", "a regional difference")
				.withDetail(variant.why())
				.withSteps(sources(variant.sources())));
		}
		draft.more().forEach((step) -> all.add(step.get()));
		all.addAll(weather);
		all.addAll(sources(rule.rule().sources()));
		return Explanation.of(rule.rule().title(), DayWords.of(whole)).withSteps(all);
	}

	static List<Explanation> sources(List<Source> sources) {
		return sources.stream().map((source) -> {
			Explanation step = Explanation.of(source.grade().heading(), source.title()).withSource(source.address());
			return (source.publisher() != null) ? step.withDetail(source.publisher()) : step;
		}).toList();
	}

}
