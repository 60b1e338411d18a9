package org.leafward.care.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.Subject;
import org.leafward.measure.Explanation;

/** A plan as a text that people can read and compare, one plant after the other. */
final class GoldenPlan {

	private final Garden garden;

	private final Plan plan;

	GoldenPlan(Garden garden, Plan plan) {
		this.garden = garden;
		this.plan = plan;
	}

	String text() {
		StringBuilder text = new StringBuilder();
		markers(text);
		section(text, "whole site", null);
		for (Subject subject : this.garden.subjects()) {
			var planting = subject.planting();
			section(text,
					"%s, %d, planted %s%s%s%s".formatted(subject.words(), planting.count(), planting.plantedOn(),
							planting.placement().name().equals("CONTAINER") ? ", container" : "",
							planting.wintersIndoors() ? ", indoors in winter" : "",
							planting.saltExposed() ? ", salt reaches it" : ""),
					subject);
		}
		return text.toString();
	}

	private void markers(StringBuilder text) {
		text.append("Planned on %s for the season of %d. Dates of the place, middle year:%n"
			.formatted(this.garden.today(), Garden.SEASON));
		for (String code : List.of("last-spring-freeze 32F p50", "first-fall-freeze 32F p50", "ground-thaw p50",
				"ground-freeze p50", "soil-warms-to 50F p50", "nights-warm-to 55F p50")) {
			var key = Markers.key(code);
			text.append("  %-28s %s%n".formatted(code,
					this.garden.markers()
						.on(key, Garden.SEASON)
						.map((marker) -> marker.date().toString())
						.orElse("none")));
		}
	}

	private void section(StringBuilder text, String heading, Subject subject) {
		List<PlannedTask> tasks = this.plan.tasks()
			.stream()
			.filter((task) -> task.season() == Garden.SEASON
					&& ((subject != null) ? task.subject().id().equals(subject.id()) : task.planting() == null))
			.toList();
		List<Gap> gaps = this.plan.gaps()
			.stream()
			.filter((gap) -> gap.season() == Garden.SEASON && ((subject != null)
					? gap.planting() != null && gap.planting().value().equals(subject.id()) : gap.planting() == null))
			.sorted(Gap.ORDER)
			.toList();
		if (tasks.isEmpty() && gaps.isEmpty() && subject == null) {
			return;
		}
		text.append("%n== %s%n".formatted(heading));
		Map<String, List<PlannedTask>> byRule = tasks.stream()
			.collect(Collectors.groupingBy((task) -> task.rule() + " " + task.call(), LinkedHashMap::new,
					Collectors.toList()));
		List<List<PlannedTask>> turns = new ArrayList<>(byRule.values());
		turns.sort(Comparator.comparing((List<PlannedTask> some) -> some.get(0).window().from())
			.thenComparing((some) -> some.get(0).rule()));
		turns.forEach((some) -> lines(text, some));
		for (Gap gap : gaps) {
			text.append("no date                   gap       %s: %s%n".formatted(gap.rule(), gap.reason()));
		}
	}

	private static void lines(StringBuilder text, List<PlannedTask> turns) {
		PlannedTask first = turns.get(0);
		LocalDate to = turns.get(turns.size() - 1).window().to();
		text.append(
				"%s to %s  %s %s  %s%s%s%n".formatted(first.window().from(), to,
						first.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
						first.work().name().toLowerCase(Locale.ROOT).replace('_', '-'), first.rule(), (turns.size() > 1)
								? ", %d turns of %d days".formatted(turns.size(), first.window().days()) : "",
						switch (first.call()) {
							case WANTED -> "";
							case NEEDLESS -> ", WITHHELD: " + first.because();
							case UNKNOWN -> ", waits for the weather";
						}));
		text.append("    %s: %s%n".formatted(first.text().title(), first.text().why().split("(?<=[.!?])\\s")[0]));
		for (Explanation step : first.explanation().steps()) {
			if (step.detail() != null && !step.label().equals("Rule") && step.source() == null
					&& !step.label().startsWith("Comes again")) {
				text.append("    %s: %s. %s%n".formatted(step.label(), step.value(), step.detail()));
			}
		}
	}

}
