package org.leafward.reminders;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** Care tasks for tests; a name stands for the same task each time. */
public final class TaskFixture {

	public static final PersonId ADA = new PersonId(id("ada"));

	private TaskFixture() {
	}

	public static UUID id(String name) {
		return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
	}

	public static CareTask task(String name, LocalDate first) {
		return task(name, ADA, TaskKind.DO, 0, new DayWindow(first, first.plusDays(9)), TaskState.PLANNED, words());
	}

	public static CareTask task(String name, PersonId person, LocalDate first) {
		return task(name, person, TaskKind.DO, 0, DayWindow.of(first), TaskState.PLANNED, words());
	}

	public static CareTask task(String name, TaskKind kind, int occurrence, LocalDate first) {
		return task(name, ADA, kind, occurrence, DayWindow.of(first), TaskState.PLANNED, words());
	}

	public static CareTask withdrawn(CareTask task) {
		return task(task, task.window(), TaskState.WITHDRAWN, task.text());
	}

	public static CareTask in(TaskState state, CareTask task) {
		return task(task, task.window(), state, task.text());
	}

	public static CareTask moved(CareTask task, LocalDate first) {
		return task(task, new DayWindow(first, first.plusDays(task.window().days() - 1)), task.state(), task.text());
	}

	public static CareTask saying(CareTask task, TaskText text) {
		return task(task, task.window(), task.state(), text);
	}

	public static TaskText words() {
		return new TaskText("Water deeply before the ground freezes",
				"Soak the root zone slowly until the top 30 cm are moist.", "40 L",
				"Broadleaf evergreens lose water all winter.", "Leaves scorch brown in spring.", null);
	}

	private static CareTask task(CareTask from, DayWindow window, TaskState state, TaskText text) {
		return new CareTask(from.id(), from.planting(), from.plant(), from.site(), from.siteName(), from.person(),
				from.rule(), from.season(), from.occurrence(), from.kind(), window, text, state,
				(state == TaskState.WITHDRAWN) ? "enough rain fell" : null, from.sequence() + 1, from.createdAt(),
				from.changedAt());
	}

	private static CareTask task(String name, PersonId person, TaskKind kind, int occurrence, DayWindow window,
			TaskState state, TaskText text) {
		Instant made = Instant.parse("2026-10-01T00:00:00Z");
		return new CareTask(new TaskId(id(name)), new PlantingId(id("hedge")), "hedge by the gate (common boxwood)",
				new SiteId(id("elm street")), "Elm Street", person, "winter/water", 2026, occurrence, kind, window,
				text, state, null, 0, made, made);
	}

}
