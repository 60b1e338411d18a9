package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import java.util.function.Function;
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

	/**
	 * A task whose words are still to be looked up.
	 *
	 * @param wording the name of its words
	 * @param with makes the task of them
	 */
	record Unworded(UUID wording, Function<TaskText, CareTask> with) {
	}

	static CareTask task(ResultSet row, int number) throws SQLException {
		return unworded(row, number).with().apply(Wordings.text(row));
	}

	static Unworded unworded(ResultSet row, int number) throws SQLException {
		TaskId id = new TaskId(row.getObject("id", UUID.class));
		PlantingId planting = planting(row);
		String plant = row.getString("plant");
		SiteId site = new SiteId(row.getObject("site", UUID.class));
		String siteName = row.getString("site_name");
		PersonId person = new PersonId(row.getObject("person", UUID.class));
		String rule = row.getString("rule");
		int season = row.getInt("season");
		int occurrence = row.getInt("occurrence");
		TaskKind kind = TaskKind.valueOf(row.getString("kind"));
		DayWindow window = window(row);
		TaskState state = TaskState.valueOf(row.getString("state"));
		String because = row.getString("withdrawn_because");
		int sequence = row.getInt("sequence");
		Instant created = row.getObject("created_at", OffsetDateTime.class).toInstant();
		Instant changed = row.getObject("changed_at", OffsetDateTime.class).toInstant();
		Work work = work(row);
		int version = row.getInt("pack_version");
		return new Unworded(row.getObject("wording", UUID.class),
				(text) -> new CareTask(id, planting, plant, site, siteName, person, rule, season, occurrence, kind,
						window, text, state, because, sequence, created, changed, work, version));
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

}
