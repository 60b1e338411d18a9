package org.leafward.care.core.state;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWords;

/** Where a task stands, in a sentence. */
public final class StandingWords {

	private StandingWords() {
	}

	/**
	 * The sentence.
	 * @param standing where it stands
	 * @param task the task
	 * @param doneOn the day on which it was done; null when it wasn't or nobody said
	 * @return for example "Done on Thu 12 Nov 2026."
	 */
	public static String of(TaskStanding standing, CareTask task, @Nullable LocalDate doneOn) {
		return switch (standing) {
			case PLANNED -> "Planned; it begins on %s.".formatted(DayWords.of(task.window().from()));
			case DUE -> due(task);
			case MISSED -> "Missed: its days passed, and nobody noted it as done.";
			case OVER -> "Over: its days passed.";
			case DONE -> (doneOn != null) ? "Done on %s.".formatted(DayWords.of(doneOn)) : "Done.";
			case SKIPPED -> "Left out this time: " + sentence(task.withdrawnBecause());
			case WITHDRAWN -> "Withdrawn: " + sentence(task.withdrawnBecause());
		};
	}

	private static String due(CareTask task) {
		String begin = (task.kind() == TaskKind.HOLD_OFF) ? "In force today" : "Due today";
		return (task.window().days() == 1) ? begin + "."
				: "%s, until %s.".formatted(begin, DayWords.of(task.window().to()));
	}

	private static String sentence(@Nullable String reason) {
		String text = (reason == null || reason.isBlank()) ? "no reason was given" : reason.strip();
		return text.matches("(?s).*[.!?…]") ? text : text + ".";
	}

}
