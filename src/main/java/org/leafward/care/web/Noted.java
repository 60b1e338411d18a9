package org.leafward.care.web;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.care.TaskStates;
import org.leafward.pages.TaskLine;
import org.springframework.stereotype.Component;

/** What somebody just noted about tasks, told with the way back. */
@Component
class Noted {

	/** Flash attribute: what was done, a sentence. */
	static final String WORDS = "noted";

	/** Flash attribute: identifiers with commas between. */
	static final String TASKS = "notedTasks";

	private final TaskCalendar calendar;

	private final TaskStates states;

	Noted(TaskCalendar calendar, TaskStates states) {
		this.calendar = calendar;
		this.states = states;
	}

	static String ids(List<TaskId> tasks) {
		return tasks.stream().map(TaskId::toString).collect(Collectors.joining(","));
	}

	/**
	 * The lines of the page that follows, without those that are still to do, as these
	 * stand in its lists.
	 * @param ids as {@link #ids} wrote them
	 * @param person whose tasks
	 */
	List<TaskLine> lines(String ids, PersonId person) {
		List<TaskId> tasks = Arrays.stream(ids.split(",")).map((id) -> new TaskId(UUID.fromString(id))).toList();
		return lines(find(tasks).stream()
			.filter((task) -> task.person().equals(person) && task.state() != TaskState.PLANNED)
			.toList(), "home");
	}

	/** The lines that take the place of one that was acted on. */
	List<TaskLine> instead(List<TaskId> tasks, String back) {
		return lines(find(tasks), back);
	}

	private List<CareTask> find(List<TaskId> tasks) {
		Map<TaskId, CareTask> found = this.calendar.find(tasks);
		return tasks.stream().map(found::get).filter(Objects::nonNull).toList();
	}

	private List<TaskLine> lines(List<CareTask> tasks, String back) {
		return Gathered.lines(tasks, this.states.of(tasks), back);
	}

}
