package org.leafward.care.core.state;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;

/**
 * What is stored of a task's state, and from it where the task stands on a day and what
 * people may do with it.
 *
 * @param kind what is asked for
 * @param window its days, in the site's time zone
 * @param state the stored state
 * @param former the state before somebody did or skipped it; null when nobody has
 * @param since the day on which it was first planned; a task that came too late for its
 * days was missed by nobody
 */
public record TaskLifecycle(TaskKind kind, DayWindow window, TaskState state, @Nullable TaskState former,
		LocalDate since) {

	/** Work this long before a task's first day can still be that task's, days. */
	public static final int EARLY_DAYS = 30;

	/**
	 * The answer to a command.
	 *
	 * @param to the state that the task goes to; null when the command is refused
	 * @param refused why not, a sentence for readers; null when it is allowed
	 */
	public record Answer(@Nullable TaskState to, @Nullable String refused) {

		static Answer to(TaskState state) {
			return new Answer(state, null);
		}

		static Answer no(String why) {
			return new Answer(null, why);
		}

		public boolean allowed() {
			return this.to != null;
		}

	}

	/**
	 * Where the task stands.
	 * @param today the day at the site
	 * @return the standing on that day
	 */
	public TaskStanding on(LocalDate today) {
		return switch (this.state) {
			case DONE -> TaskStanding.DONE;
			case SKIPPED -> TaskStanding.SKIPPED;
			case WITHDRAWN -> TaskStanding.WITHDRAWN;
			case PLANNED -> {
				if (this.window.contains(today)) {
					yield TaskStanding.DUE;
				}
				if (today.isBefore(this.window.from())) {
					yield TaskStanding.PLANNED;
				}
				yield canBeMissed() ? TaskStanding.MISSED : TaskStanding.OVER;
			}
		};
	}

	private boolean canBeMissed() {
		return (this.kind == TaskKind.DO || this.kind == TaskKind.RAMP_DAY) && !this.window.to().isBefore(this.since);
	}

	/**
	 * Whether a command is allowed, and what it leads to. Work is done early and noted
	 * late; but what was done longer before was no part of this task.
	 * @param command the command
	 * @param day the day on which the work was done; today for what is no work
	 * @return the state that the task goes to, or why not
	 */
	public Answer answer(TaskCommand command, LocalDate day) {
		return switch (command) {
			case DONE -> done(day);
			case SKIP -> skip();
			case UNDO -> undo();
			case REOPEN -> reopen();
		};
	}

	/**
	 * The first day on which it can be noted as done.
	 * @return empty when it can't be on any
	 */
	public Optional<LocalDate> doneFrom() {
		return done(this.window.from()).allowed() ? Optional.of(this.window.from().minusDays(EARLY_DAYS))
				: Optional.empty();
	}

	/**
	 * The commands that are allowed.
	 * @param today the day at the site
	 * @return any number, in the order of {@link TaskCommand}
	 */
	public Set<TaskCommand> allowed(LocalDate today) {
		Set<TaskCommand> allowed = EnumSet.noneOf(TaskCommand.class);
		for (TaskCommand command : TaskCommand.values()) {
			if (answer(command, today).allowed()) {
				allowed.add(command);
			}
		}
		return allowed;
	}

	private Answer done(LocalDate day) {
		if (this.kind == TaskKind.HOLD_OFF) {
			return Answer.no("A hold-off asks for nothing, so there is nothing to be done. It ends by itself.");
		}
		LocalDate opens = this.window.from().minusDays(EARLY_DAYS);
		if (this.state != TaskState.DONE && day.isBefore(opens)) {
			return Answer
				.no(("It begins on %s, and can be noted as done from %s on. What was done before that goes into "
						+ "the care log on its own account.")
					.formatted(DayWords.of(this.window.from()), DayWords.of(opens)));
		}
		return switch (this.state) {
			// Work is work, whether or not the weather called for it.
			case PLANNED, SKIPPED, WITHDRAWN -> Answer.to(TaskState.DONE);
			case DONE -> Answer.no("It is done already. Undo that first to note it anew.");
		};
	}

	private Answer skip() {
		if (this.kind == TaskKind.HOLD_OFF) {
			return Answer.no("A hold-off can't be skipped. Whoever works in it all the same logs the work.");
		}
		return switch (this.state) {
			case PLANNED -> Answer.to(TaskState.SKIPPED);
			case SKIPPED -> Answer.no("It is skipped already.");
			case DONE -> Answer.no("It is done. Undo that first.");
			case WITHDRAWN -> Answer.no("It is withdrawn, so there is nothing to skip.");
		};
	}

	private Answer undo() {
		TaskState before = this.former;
		return switch (this.state) {
			case DONE, SKIPPED -> Answer.to((before != null) ? before : TaskState.PLANNED);
			case PLANNED, WITHDRAWN -> Answer.no("Nobody has done or skipped it, so there is nothing to take back.");
		};
	}

	private Answer reopen() {
		return switch (this.state) {
			case SKIPPED -> Answer.to(TaskState.PLANNED);
			case DONE -> Answer.no("It is done. Undo that to have it back.");
			case WITHDRAWN ->
				Answer.no("The rules and the weather withdrew it, and bring it back when they call for it. "
						+ "Work that is done all the same can be noted.");
			case PLANNED -> Answer.no("It stands already.");
		};
	}

}
