package org.leafward.reminders.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.in;
import static org.leafward.reminders.TaskFixture.task;
import static org.leafward.reminders.TaskFixture.withdrawn;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;

class DueTasksTests {

	private static final LocalDate TODAY = LocalDate.parse("2026-11-12");

	private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

	@ParameterizedTest
	@EnumSource(names = { "DO", "WATCH", "HOLD_OFF" })
	void everyKindButRampsHasAReminderOnItsFirstDay(TaskKind kind) {
		CareTask single = task("single", kind, 0, TODAY);
		CareTask repeat = task("repeat", kind, 2, TODAY);
		assertThat(DueTasks.wanted(List.of(single, repeat), TODAY, ZONE)).extracting(Wanted::task)
			.containsExactly(single.id(), repeat.id());
	}

	@Test
	void ofARampOnlyTheFirstDayHasOne() {
		CareTask first = task("day 1", TaskKind.RAMP_DAY, 1, TODAY);
		CareTask second = task("day 2", TaskKind.RAMP_DAY, 2, TODAY.plusDays(1));
		assertThat(DueTasks.wanted(List.of(first, second), TODAY, ZONE)).extracting(Wanted::task)
			.containsExactly(first.id());
	}

	@Test
	void withdrawnTasksHaveNone() {
		assertThat(DueTasks.wanted(List.of(withdrawn(task("gone", TODAY))), TODAY, ZONE)).isEmpty();
	}

	@ParameterizedTest
	@EnumSource(names = { "DONE", "SKIPPED" })
	void whatWasDoneOrLeftOutHasNone(TaskState state) {
		assertThat(DueTasks.wanted(List.of(in(state, task("over", TODAY))), TODAY, ZONE)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "-4,false", "-3,true", "0,true", "14,true", "15,false" })
	void onlyFirstDaysNearTodayCount(int days, boolean counts) {
		assertThat(DueTasks.wanted(List.of(task("one", TODAY.plusDays(days))), TODAY, ZONE)).hasSize(counts ? 1 : 0);
	}

	@Test
	void theyCarryTheTimesOfThePersonsZone() {
		CareTask one = task("one", TODAY);
		assertThat(DueTasks.wanted(List.of(one), TODAY, ZONE)).containsExactly(new Wanted(one.id(), TODAY,
				Instant.parse("2026-11-12T06:00:00Z"), Instant.parse("2026-11-15T23:00:00Z")));
	}

}
