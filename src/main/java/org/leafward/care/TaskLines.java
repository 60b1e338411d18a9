package org.leafward.care;

import org.jspecify.annotations.Nullable;
import org.leafward.pages.Mark;
import org.leafward.pages.TaskLine;

/** Tasks as pages draw them. */
public final class TaskLines {

	private TaskLines() {
	}

	/**
	 * How a kind is drawn.
	 * @param kind the kind
	 * @return its mark
	 */
	public static Mark mark(TaskKind kind) {
		return switch (kind) {
			case DO -> Mark.DO;
			case HOLD_OFF -> Mark.HOLD_OFF;
			case RAMP_DAY -> Mark.RAMP;
			case WATCH -> Mark.WATCH;
		};
	}

	/**
	 * A task to be read only.
	 * @param task the task
	 * @param href address of its page; null for those who may not open it
	 * @return its line, with the reason when it was withdrawn, else the amount
	 */
	public static TaskLine line(CareTask task, @Nullable String href) {
		boolean withdrawn = task.state() == TaskState.WITHDRAWN;
		return new TaskLine(mark(task.kind()), task.text().title(), task.plant(), task.siteName(), task.window().from(),
				task.window().to(), href, withdrawn ? task.withdrawnBecause() : task.text().amount(), withdrawn);
	}

}
