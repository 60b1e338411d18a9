package org.leafward.workdays;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.RulePacks;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Rule;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.HoldOff;
import org.springframework.stereotype.Component;

/** Tasks of care as a plan sees them. */
@Component
class OpenWork {

	private final RulePacks packs;

	OpenWork(RulePacks packs) {
		this.packs = packs;
	}

	/**
	 * A task of a plan.
	 * @param task what is to be done
	 * @param others all that care has planned for its site
	 * @param minutes its effort in person-minutes
	 * @param skills what those who do it need
	 * @param tools what it needs of which there are few
	 * @param pinned the day on which it stays; null leaves it open
	 * @param notOn days that are out of the question
	 * @return the task
	 */
	CrewTask of(CareTask task, List<CareTask> others, int minutes, Set<String> skills, Set<String> tools,
			@Nullable LocalDate pinned, Set<LocalDate> notOn) {
		return new CrewTask(task.id().toString(), task.site().toString(),
				"%s, %s".formatted(task.text().title(), task.plant()), task.window(), holdOffs(task, others), minutes,
				skills, tools, importance(task), pinned, notOn);
	}

	/**
	 * What forbids a task, but for the exceptions that its rule names.
	 * @param task what is to be done
	 * @param others what care has planned for its site
	 * @return the days, and why
	 */
	List<HoldOff> holdOffs(CareTask task, List<CareTask> others) {
		Set<String> despite = this.packs.find(task.rule()).map(Rule::despite).map(Set::copyOf).orElse(Set.of());
		return others.stream()
			.filter((one) -> forbids(one, task) && !despite.contains(one.rule()))
			.map((one) -> new HoldOff(one.window(), one.text().title()))
			.toList();
	}

	/** Care cuts windows at hold-offs already; this holds where a window was not. */
	private static boolean forbids(CareTask holdOff, CareTask task) {
		return holdOff.kind() == TaskKind.HOLD_OFF && holdOff.state() == TaskState.PLANNED && holdOff.work() != null
				&& holdOff.work() == task.work() && holdOff.subject().equals(task.subject());
	}

	/** Harm counts more than looks, and a short window more than a long one. */
	private static int importance(CareTask task) {
		int importance = (task.text().otherwise() != null) ? 60 : 40;
		return importance + ((task.window().days() <= 14) ? 20 : (task.window().days() <= 35) ? 10 : 0);
	}

}
