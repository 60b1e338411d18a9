package org.leafward.reminders.links;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskNow;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.Later;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.core.Told;

/**
 * What somebody sees and may do who follows a link in a message.
 *
 * @param told the reminder that the link is of
 * @param tasks its task first, then the alike ones that the same message told of; at
 * least one
 * @param now where each of them stands
 * @param later when each of them could be told again; those that can't are left out
 * @param laterDay when they are told again; null when nobody asked for that
 * @param undo whether what was done or left out last may still be taken back
 * @param wishes how the person wants to be told
 */
public record About(Told told, List<CareTask> tasks, Map<TaskId, TaskNow> now, List<Later> later,
		@Nullable LocalDate laterDay, boolean undo, Wishes wishes) {

	public About {
		tasks = List.copyOf(tasks);
		now = Map.copyOf(now);
		later = List.copyOf(later);
	}

	/**
	 * The task that the link is of.
	 * @return what the others differ from in their planting only
	 */
	public CareTask task() {
		return this.tasks.get(0);
	}

	/**
	 * Where the task stands.
	 * @return empty when its site went away
	 */
	public Optional<TaskNow> standing() {
		return Optional.ofNullable(this.now.get(task().id()));
	}

	/**
	 * Whether an act has an effect.
	 * @param act the act
	 * @return false when it is done already, for example
	 */
	public boolean may(Act act) {
		return switch (act) {
			// One looks for something until it is there.
			case DONE -> task().kind() != TaskKind.WATCH && this.now.values().stream().anyMatch(TaskNow::mayDo);
			case SKIP -> this.now.values().stream().anyMatch(TaskNow::maySkip);
			case LATER -> !this.later.isEmpty() && !this.later.get(0).day().equals(this.laterDay);
		};
	}

	/**
	 * The identifiers of the tasks.
	 * @return in their order
	 */
	public List<TaskId> ids() {
		return this.tasks.stream().map(CareTask::id).toList();
	}

}
