package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.Beginning;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.plan.RampDay;
import org.leafward.care.core.plan.StoredTask;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** From rows of {@code care.task} to values. */
final class TaskRows {

	private TaskRows() {
	}

	static CareTask task(ResultSet row, int number) throws SQLException {
		return new CareTask(new TaskId(row.getObject("id", UUID.class)), planting(row), row.getString("plant"),
				new SiteId(row.getObject("site", UUID.class)), row.getString("site_name"),
				new PersonId(row.getObject("person", UUID.class)), row.getString("rule"), row.getInt("season"),
				row.getInt("occurrence"), TaskKind.valueOf(row.getString("kind")), window(row), text(row),
				TaskState.valueOf(row.getString("state")), row.getString("withdrawn_because"), row.getInt("sequence"),
				row.getObject("created_at", OffsetDateTime.class).toInstant(),
				row.getObject("changed_at", OffsetDateTime.class).toInstant(), work(row), row.getInt("pack_version"));
	}

	static Beginning beginning(ResultSet row, int number) throws SQLException {
		TaskKind kind = TaskKind.valueOf(row.getString("kind"));
		DayWindow window = window(row);
		int occurrence = row.getInt("occurrence");
		boolean ramp = kind == TaskKind.RAMP_DAY;
		// What the weather picked for one day and is to be covered has a cold night.
		boolean night = work(row) == Work.COVER && occurrence > 0 && window.days() == 1;
		return new Beginning(new TaskId(row.getObject("id", UUID.class)),
				new PersonId(row.getObject("person", UUID.class)), kind, window.from(), window.to(),
				ramp && occurrence == 1, ramp && row.getBoolean("ramp_held"), night,
				TaskState.valueOf(row.getString("state")));
	}

	static StoredTask stored(ResultSet row, int number) throws SQLException {
		return new StoredTask(new TaskId(row.getObject("id", UUID.class)), planting(row), row.getString("plant"),
				row.getString("rule"), row.getInt("season"), TaskKind.valueOf(row.getString("kind")), work(row),
				window(row), row.getObject("wording", UUID.class), TaskState.valueOf(row.getString("state")),
				row.getObject("explanation", UUID.class));
	}

	/** A day of a ramp of light. */
	static RampDay rampDay(ResultSet row) throws SQLException {
		TaskState state = TaskState.valueOf(row.getString("state"));
		boolean held = state == TaskState.SKIPPED || (row.getBoolean("ramp_held") && state != TaskState.DONE);
		return new RampDay(row.getInt("occurrence"), row.getObject("from_day", LocalDate.class),
				row.getInt("ramp_step"), held, state == TaskState.DONE || state == TaskState.SKIPPED);
	}

	static @Nullable PlantingId planting(ResultSet row) throws SQLException {
		UUID planting = row.getObject("planting", UUID.class);
		return (planting != null) ? new PlantingId(planting) : null;
	}

	private static @Nullable Work work(ResultSet row) throws SQLException {
		String work = row.getString("work");
		return (work != null) ? Work.valueOf(work) : null;
	}

	private static DayWindow window(ResultSet row) throws SQLException {
		return new DayWindow(row.getObject("from_day", LocalDate.class), row.getObject("to_day", LocalDate.class));
	}

	private static TaskText text(ResultSet row) throws SQLException {
		return new TaskText(row.getString("title"), row.getString("what"), row.getString("amount"),
				row.getString("why"), row.getString("otherwise"), row.getString("caution"));
	}

}
