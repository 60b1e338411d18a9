package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.plan.StoredTask;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** From rows of {@code care.task} to values. */
final class TaskRows {

	private TaskRows() {
	}

	static CareTask task(ResultSet row, int number) throws SQLException {
		return new CareTask(new TaskId(row.getObject("id", UUID.class)),
				new PlantingId(row.getObject("planting", UUID.class)), row.getString("plant"),
				new SiteId(row.getObject("site", UUID.class)), row.getString("site_name"),
				new PersonId(row.getObject("person", UUID.class)), row.getString("rule"), row.getInt("season"),
				row.getInt("occurrence"), TaskKind.valueOf(row.getString("kind")), window(row), text(row),
				TaskState.valueOf(row.getString("state")), row.getString("withdrawn_because"), row.getInt("sequence"),
				row.getObject("created_at", OffsetDateTime.class).toInstant(),
				row.getObject("changed_at", OffsetDateTime.class).toInstant());
	}

	static StoredTask stored(ResultSet row, int number) throws SQLException {
		return new StoredTask(new TaskId(row.getObject("id", UUID.class)),
				new PlantingId(row.getObject("planting", UUID.class)), row.getString("plant"), row.getString("rule"),
				row.getInt("season"), TaskKind.valueOf(row.getString("kind")), window(row), text(row),
				TaskState.valueOf(row.getString("state")), row.getObject("explanation", UUID.class));
	}

	private static DayWindow window(ResultSet row) throws SQLException {
		return new DayWindow(row.getObject("from_day", LocalDate.class), row.getObject("to_day", LocalDate.class));
	}

	private static TaskText text(ResultSet row) throws SQLException {
		return new TaskText(row.getString("title"), row.getString("what"), row.getString("amount"),
				row.getString("why"), row.getString("otherwise"), row.getString("caution"));
	}

}
