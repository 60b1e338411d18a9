package org.leafward.care.core.state;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;

import static org.assertj.core.api.Assertions.assertThat;

/** The states that issue 4 of the project names, on each side of each end of the days. */
class TaskLifecycleTests {

	private static final DayWindow DAYS = new DayWindow(LocalDate.of(2027, 3, 10), LocalDate.of(2027, 3, 20));

	@ParameterizedTest
	@CsvSource({ "DO, 2027-03-09, PLANNED", "DO, 2027-03-10, DUE", "DO, 2027-03-20, DUE", "DO, 2027-03-21, MISSED",
			"RAMP_DAY, 2027-03-21, MISSED", "HOLD_OFF, 2027-03-15, DUE", "HOLD_OFF, 2027-03-21, OVER",
			"WATCH, 2027-03-21, OVER" })
	void daysMakeATaskDueAndMissed(TaskKind kind, LocalDate today, TaskStanding standing) {
		assertThat(task(kind, TaskState.PLANNED, null).on(today)).isEqualTo(standing);
	}

	@Test
	void nobodyMissedWhatWasPlannedTooLate() {
		TaskLifecycle task = new TaskLifecycle(TaskKind.DO, DAYS, TaskState.PLANNED, null, LocalDate.of(2027, 3, 21));
		assertThat(task.on(LocalDate.of(2027, 4, 1))).isEqualTo(TaskStanding.OVER);
	}

	@ParameterizedTest
	@CsvSource({ "DONE, DONE", "SKIPPED, SKIPPED", "WITHDRAWN, WITHDRAWN" })
	void whatIsStoredGoesBeforeTheDay(TaskState state, TaskStanding standing) {
		assertThat(task(TaskKind.DO, state, null).on(LocalDate.of(2027, 3, 21))).isEqualTo(standing);
	}

	@ParameterizedTest
	@CsvSource({ "PLANNED, DONE SKIP", "DONE, UNDO", "SKIPPED, DONE UNDO REOPEN", "WITHDRAWN, DONE" })
	void eachStateHasItsCommands(TaskState state, String allowed) {
		TaskLifecycle task = task(TaskKind.DO, state, null);
		assertThat(task.allowed(DAYS.from())).extracting(TaskCommand::name).containsExactly(allowed.split(" "));
		for (TaskCommand command : TaskCommand.values()) {
			TaskLifecycle.Answer answer = task.answer(command, DAYS.from());
			assertThat(answer.refused() == null).isEqualTo(answer.allowed());
		}
	}

	@Test
	void aHoldOffAsksForNothing() {
		assertThat(task(TaskKind.HOLD_OFF, TaskState.PLANNED, null).allowed(DAYS.from())).isEmpty();
	}

	/** By hand: thirty days before 10 March 2027 is 8 February. */
	@ParameterizedTest
	@CsvSource({ "2027-02-07, false", "2027-02-08, true", "2027-03-21, true", "2026-03-15, false" })
	void workLongBeforeIsNoPartOfTheTask(LocalDate day, boolean allowed) {
		for (TaskState state : new TaskState[] { TaskState.PLANNED, TaskState.SKIPPED, TaskState.WITHDRAWN }) {
			TaskLifecycle task = task(TaskKind.DO, state, null);
			assertThat(task.answer(TaskCommand.DONE, day).allowed()).isEqualTo(allowed);
			assertThat(task.allowed(day).contains(TaskCommand.DONE)).isEqualTo(allowed);
			assertThat(task.doneFrom()).contains(LocalDate.of(2027, 2, 8));
		}
		assertThat(task(TaskKind.DO, TaskState.PLANNED, null).answer(TaskCommand.DONE, LocalDate.of(2026, 3, 15))
			.refused()).contains("from Mon 8 Feb 2027 on");
		assertThat(task(TaskKind.HOLD_OFF, TaskState.PLANNED, null).doneFrom()).isEmpty();
		assertThat(task(TaskKind.DO, TaskState.DONE, null).answer(TaskCommand.UNDO, day).allowed())
			.as("what was noted can always be taken back")
			.isTrue();
	}

	@Test
	void undoBringsTheFormerStateBack() {
		assertThat(task(TaskKind.DO, TaskState.DONE, TaskState.SKIPPED).answer(TaskCommand.UNDO, DAYS.from()).to())
			.isEqualTo(TaskState.SKIPPED);
		assertThat(task(TaskKind.DO, TaskState.DONE, TaskState.WITHDRAWN).answer(TaskCommand.UNDO, DAYS.from()).to())
			.isEqualTo(TaskState.WITHDRAWN);
		assertThat(task(TaskKind.DO, TaskState.SKIPPED, null).answer(TaskCommand.UNDO, DAYS.from()).to())
			.isEqualTo(TaskState.PLANNED);
	}

	private static TaskLifecycle task(TaskKind kind, TaskState state, TaskState former) {
		return new TaskLifecycle(kind, DAYS, state, former, LocalDate.of(2026, 11, 25));
	}

}
