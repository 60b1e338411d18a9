package org.leafward.care.web;

import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.pages.Mark;
import org.leafward.pages.TaskLine;

/** Tasks as the pages draw them. */
final class Lines {

	private Lines() {
	}

	static Mark mark(TaskKind kind) {
		return switch (kind) {
			case DO -> Mark.DO;
			case HOLD_OFF -> Mark.HOLD_OFF;
			case RAMP_DAY -> Mark.RAMP;
			case WATCH -> Mark.WATCH;
		};
	}

	static String address(CareTask task) {
		return "/tasks/" + task.id();
	}

	static TaskLine line(CareTask task) {
		boolean withdrawn = task.state() == TaskState.WITHDRAWN;
		return new TaskLine(mark(task.kind()), task.text().title(), task.plant(), task.siteName(), task.window().from(),
				task.window().to(), address(task), withdrawn ? task.withdrawnBecause() : task.text().amount(),
				withdrawn);
	}

}
