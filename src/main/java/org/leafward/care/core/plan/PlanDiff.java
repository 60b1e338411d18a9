package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;

/**
 * The difference between the tasks that are stored and those that a plan wants. What has
 * passed stays as it was: a window that ended before today is neither changed nor
 * withdrawn, whatever is learnt later.
 *
 * @param added tasks that are new
 * @param changed tasks that a reader sees change; SEQUENCE goes up
 * @param explained tasks whose explanation changed and nothing else
 * @param withdrawn tasks no longer needed
 */
public record PlanDiff(List<PlannedTask> added, List<PlannedTask> changed, List<PlannedTask> explained,
		List<Withdrawal> withdrawn) {

	public PlanDiff {
		added = List.copyOf(added);
		changed = List.copyOf(changed);
		explained = List.copyOf(explained);
		withdrawn = List.copyOf(withdrawn);
	}

	/**
	 * A task that is no longer needed.
	 *
	 * @param task the task
	 * @param because the reason, a sentence for readers
	 */
	public record Withdrawal(TaskId task, String because) {
	}

	/**
	 * Compares.
	 * @param stored what is stored
	 * @param plan what is wanted
	 * @param plantings the plantings there still are
	 * @param today the day in the site's time zone
	 * @param nameOf gives the name under which an explanation is stored
	 * @return the difference; empty lists when nothing has to be written
	 */
	public static PlanDiff between(List<StoredTask> stored, Plan plan, Set<PlantingId> plantings, LocalDate today,
			Function<Explanation, UUID> nameOf) {
		Map<TaskId, StoredTask> before = new HashMap<>();
		stored.forEach((task) -> before.put(task.id(), task));
		List<PlannedTask> added = new ArrayList<>();
		List<PlannedTask> changed = new ArrayList<>();
		List<PlannedTask> explained = new ArrayList<>();
		Set<TaskId> wanted = new HashSet<>();
		for (PlannedTask planned : plan.tasks()) {
			wanted.add(planned.id());
			StoredTask old = before.get(planned.id());
			if (old == null) {
				added.add(planned);
			}
			else if (!over(old, today)) {
				if (!old.looksLike(planned)) {
					changed.add(planned);
				}
				else if (!old.explanation().equals(nameOf.apply(planned.explanation()))) {
					explained.add(planned);
				}
			}
		}
		List<Withdrawal> withdrawn = stored.stream()
			.filter((task) -> task.state() == TaskState.PLANNED && !wanted.contains(task.id()) && !over(task, today))
			.map((task) -> new Withdrawal(task.id(), reason(task, plan, plantings)))
			.toList();
		return new PlanDiff(added, changed, explained, withdrawn);
	}

	private static boolean over(StoredTask task, LocalDate today) {
		return task.window().to().isBefore(today);
	}

	private static String reason(StoredTask task, Plan plan, Set<PlantingId> plantings) {
		if (!plantings.contains(task.planting())) {
			return "The planting is no longer in the register.";
		}
		return plan.gaps()
			.stream()
			.filter((gap) -> gap.planting().equals(task.planting()) && gap.rule().equals(task.rule())
					&& gap.season() == task.season())
			.findFirst()
			.map((gap) -> "It can't be dated any more: " + gap.reason())
			.orElse("The rules and the site's weather record no longer call for it.");
	}

	public boolean isEmpty() {
		return this.added.isEmpty() && this.changed.isEmpty() && this.explained.isEmpty() && this.withdrawn.isEmpty();
	}

	/**
	 * Whether a reader of the calendar sees a difference.
	 * @return false when only explanations changed
	 */
	public boolean visible() {
		return !this.added.isEmpty() || !this.changed.isEmpty() || !this.withdrawn.isEmpty();
	}

}
