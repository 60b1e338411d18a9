package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;

import static org.assertj.core.api.Assertions.assertThat;

class ChangesTests {

	private static final LocalDate TODAY = LocalDate.parse("2026-11-12");

	private static final TaskId TASK = new TaskId(TaskFixture.id("task"));

	private static final UUID ROW = TaskFixture.id("row");

	private static final UUID OTHER_ROW = TaskFixture.id("other row");

	private static Wanted wanted(LocalDate day) {
		ZoneId zone = ZoneId.of("Europe/Berlin");
		return new Wanted("mail", Topic.TO_DO, TASK.value(), day, "morning:" + day, DueTimes.dueAt(day, zone),
				DueTimes.expiresAt(day, zone));
	}

	private static Known known(UUID row, LocalDate day, ReminderState state) {
		return known(row, day, wanted(day).dueAt(), state);
	}

	private static Known known(UUID row, LocalDate day, Instant due, ReminderState state) {
		return new Known(row, TASK.value(), wanted(day).dedupKey(), wanted(day).bundle(), day, due, state);
	}

	private static Changes between(Wanted wanted, Known... known) {
		return Changes.between(List.of(wanted), List.of(known), Set.of(TASK), TODAY);
	}

	@Test
	void aNewTaskIsAdded() {
		assertThat(between(wanted(TODAY)))
			.isEqualTo(new Changes(List.of(wanted(TODAY)), Map.of(), List.of(), List.of()));
	}

	@Test
	void nothingIsDoneTwice() {
		assertThat(between(wanted(TODAY), known(ROW, TODAY, ReminderState.PENDING)).none()).isTrue();
	}

	@ParameterizedTest
	@ValueSource(ints = { -3, 1, 12 })
	void aMovedTaskMovesItsPendingRow(int days) {
		Wanted moved = wanted(TODAY.plusDays(days));
		assertThat(between(moved, known(ROW, TODAY, ReminderState.PENDING)))
			.isEqualTo(new Changes(List.of(), Map.of(ROW, moved), List.of(), List.of()));
	}

	@Test
	void anotherZoneMovesThePendingRow() {
		Known before = known(ROW, TODAY, Instant.parse("2026-11-12T13:00:00Z"), ReminderState.PENDING);
		assertThat(between(wanted(TODAY), before).set()).containsExactly(Map.entry(ROW, wanted(TODAY)));
	}

	@ParameterizedTest
	@EnumSource(names = { "CLAIMED", "SENT", "KEPT", "FAILED" })
	void aTaskThatWasRemindedOfIsLeftAloneUpToThreeDays(ReminderState state) {
		for (int days = -Changes.SAME_DAYS; days <= Changes.SAME_DAYS; days++) {
			assertThat(between(wanted(TODAY.plusDays(days)), known(ROW, TODAY, state)).none()).isTrue();
		}
	}

	@ParameterizedTest
	@EnumSource(names = { "CLAIMED", "SENT", "KEPT", "FAILED" })
	void aTaskThatMovedFurtherIsRemindedOfAgain(ReminderState state) {
		Wanted later = wanted(TODAY.plusDays(4));
		assertThat(between(later, known(ROW, TODAY, state)).add()).containsExactly(later);
		Wanted earlier = wanted(TODAY.minusDays(3));
		assertThat(between(earlier, known(ROW, TODAY.plusDays(1), state)).add()).containsExactly(earlier);
	}

	@Test
	void aTaskThatMovedAwayAndBackKeepsTheFirstReminderOnly() {
		assertThat(between(wanted(TODAY.plusDays(2)), known(ROW, TODAY, ReminderState.SENT),
				known(OTHER_ROW, TODAY.plusDays(5), ReminderState.PENDING)))
			.isEqualTo(new Changes(List.of(), Map.of(), List.of(OTHER_ROW), List.of()));
	}

	@Test
	void aTaskThatCameBackUsesItsOldRow() {
		assertThat(between(wanted(TODAY), known(ROW, TODAY, ReminderState.WITHDRAWN)))
			.isEqualTo(new Changes(List.of(), Map.of(ROW, wanted(TODAY)), List.of(), List.of()));
		assertThat(between(wanted(TODAY), known(ROW, TODAY, ReminderState.WITHDRAWN),
				known(OTHER_ROW, TODAY.plusDays(9), ReminderState.PENDING)))
			.isEqualTo(new Changes(List.of(), Map.of(ROW, wanted(TODAY)), List.of(OTHER_ROW), List.of()));
	}

	@Test
	void aTaskThatWasWithdrawnOnAnotherDayIsAdded() {
		assertThat(between(wanted(TODAY), known(ROW, TODAY.plusDays(2), ReminderState.WITHDRAWN)).add())
			.containsExactly(wanted(TODAY));
	}

	@Test
	void whatExpiredStaysSo() {
		assertThat(between(wanted(TODAY), known(ROW, TODAY, ReminderState.EXPIRED)).none()).isTrue();
	}

	@Test
	void aTaskThatWentAwayWithdrawsItsPendingRowOnly() {
		List<Known> rows = List.of(known(ROW, TODAY, ReminderState.PENDING),
				known(OTHER_ROW, TODAY.minusDays(1), ReminderState.SENT));
		assertThat(Changes.between(List.of(), rows, Set.of(), TODAY))
			.isEqualTo(new Changes(List.of(), Map.of(), List.of(ROW), List.of()));
	}

	@Test
	void aRowOfFourDaysAgoExpires() {
		List<Known> rows = List.of(known(ROW, TODAY.minusDays(4), ReminderState.PENDING));
		assertThat(Changes.between(List.of(), rows, Set.of(), TODAY))
			.isEqualTo(new Changes(List.of(), Map.of(), List.of(), List.of(ROW)));
	}

}
