package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;

/**
 * The difference between the tasks that are stored and those that a plan wants. What has
 * passed stays as it was: a window that ended before today is neither added, changed nor
 * withdrawn, whatever is learnt later, and no task is moved wholly into the past. What
 * people have done or skipped is theirs and stays, too.
 *
 * @param added tasks that are new
 * @param changed tasks that a reader sees change; SEQUENCE goes up
 * @param reopened tasks that were withdrawn and are wanted again; SEQUENCE goes up
 * @param explained tasks whose explanation changed and nothing else
 * @param withdrawn tasks no longer needed
 */
public record PlanDiff(List<PlannedTask> added, List<PlannedTask> changed, List<PlannedTask> reopened,
		List<PlannedTask> explained, List<Withdrawal> withdrawn) {

	/** Nothing to write. */
	public static final PlanDiff NONE = new PlanDiff(List.of(), List.of(), List.of(), List.of(), List.of());

	public PlanDiff {
		added = List.copyOf(added);
		changed = List.copyOf(changed);
		reopened = List.copyOf(reopened);
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
		Sorter sorter = new Sorter(today, nameOf);
		Set<TaskId> planned = new HashSet<>();
		for (PlannedTask task : plan.tasks()) {
			planned.add(task.id());
			sorter.sort(before.get(task.id()), task);
		}
		stored.stream()
			.filter((task) -> task.state() == TaskState.PLANNED && !planned.contains(task.id())
					&& !over(task.window(), today))
			.forEach((task) -> sorter.withdrawn.add(new Withdrawal(task.id(), reason(task, plan, plantings))));
		return new PlanDiff(sorter.added, sorter.changed, sorter.reopened, sorter.explained, sorter.withdrawn);
	}

	private static boolean over(DayWindow window, LocalDate today) {
		return window.to().isBefore(today);
	}

	private static String reason(StoredTask task, Plan plan, Set<PlantingId> plantings) {
		PlantingId planting = task.planting();
		if (planting != null && !plantings.contains(planting)) {
			return "The planting is no longer in the register.";
		}
		return plan.gaps()
			.stream()
			.filter((gap) -> Objects.equals(gap.planting(), planting) && gap.rule().equals(task.rule())
					&& gap.season() == task.season())
			.findFirst()
			.map((gap) -> "It has no days any more: " + gap.reason())
			.orElse("The rules and the site's weather record no longer call for it.");
	}

	public boolean isEmpty() {
		return !visible() && this.explained.isEmpty();
	}

	/**
	 * Whether a reader of the calendar sees a difference.
	 * @return false when only explanations changed
	 */
	public boolean visible() {
		return Stream.of(this.added, this.changed, this.reopened, this.withdrawn).anyMatch((list) -> !list.isEmpty());
	}

	/** Puts each planned task where it belongs. */
	private static final class Sorter {

		private final LocalDate today;

		private final Function<Explanation, UUID> nameOf;

		private final List<PlannedTask> added = new ArrayList<>();

		private final List<PlannedTask> changed = new ArrayList<>();

		private final List<PlannedTask> reopened = new ArrayList<>();

		private final List<PlannedTask> explained = new ArrayList<>();

		private final List<Withdrawal> withdrawn = new ArrayList<>();

		Sorter(LocalDate today, Function<Explanation, UUID> nameOf) {
			this.today = today;
			this.nameOf = nameOf;
		}

		void sort(@Nullable StoredTask old, PlannedTask planned) {
			boolean wanted = planned.call() == Call.WANTED && !over(planned.window(), this.today);
			if (old == null) {
				if (wanted) {
					this.added.add(planned);
				}
			}
			else if (!over(old.window(), this.today)) {
				if (old.state() == TaskState.WITHDRAWN && wanted) {
					this.reopened.add(planned);
				}
				else if (old.state() == TaskState.PLANNED && wanted) {
					compare(old, planned);
				}
				else if (old.state() == TaskState.PLANNED && planned.call() == Call.NEEDLESS) {
					this.withdrawn.add(new Withdrawal(old.id(), String.valueOf(planned.because())));
				}
			}
		}

		private void compare(StoredTask old, PlannedTask planned) {
			if (!old.looksLike(planned)) {
				this.changed.add(planned);
			}
			else if (old.work() != planned.work()
					|| !old.explanation().equals(this.nameOf.apply(planned.explanation()))) {
				this.explained.add(planned);
			}
		}

	}

}
