package org.leafward.care.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.TaskLines;
import org.leafward.care.TaskNow;
import org.leafward.care.core.state.TaskStanding;
import org.leafward.pages.TaskActs;
import org.leafward.pages.TaskLine;

/** Tasks as the pages draw them. */
final class Lines {

	private Lines() {
	}

	static String address(CareTask task) {
		return "/tasks/" + task.id();
	}

	static TaskLine line(CareTask task) {
		return TaskLines.line(task, address(task));
	}

	/**
	 * A line with where it stands and what may be done.
	 * @param line the line
	 * @param tasks what it stands for
	 * @param now where they stand; null leaves the line as it is
	 * @param back which page to come back to
	 * @return what goes without saying, due or planned, isn't said
	 */
	static TaskLine standing(TaskLine line, List<CareTask> tasks, @Nullable TaskNow now, String back) {
		if (now == null) {
			return line;
		}
		boolean plain = now.standing() == TaskStanding.DUE || now.standing() == TaskStanding.PLANNED;
		boolean said = !plain || now.cameBack();
		boolean few = tasks.size() <= CareLog.MOST_TOGETHER;
		TaskActs acts = (few && (now.mayDo() || now.mayUndo()))
				? new TaskActs(tasks.stream().map((task) -> task.id().value()).toList(), now.mayDo() && !now.mayUndo(),
						now.maySkip(), now.mayUndo(), back)
				: null;
		return new TaskLine(line.mark(), line.title(), line.plant(), line.site(), line.from(), line.to(), line.href(),
				(said && !plain) ? null : line.note(), line.withdrawn(), said ? now.words() : null, acts);
	}

}
