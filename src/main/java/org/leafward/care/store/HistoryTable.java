package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Every change of a task's state. */
@Repository
public class HistoryTable {

	private final JdbcClient database;

	private final JdbcTemplate batches;

	HistoryTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * Notes changes.
	 * @param changes any number
	 */
	public void note(Collection<TaskChange> changes) {
		this.batches.batchUpdate("""
				insert into care.task_history (task, at, from_state, to_state, because, by_person)
				values (?, ?, ?, ?, ?, ?)
				""", changes.stream().map(HistoryTable::row).toList());
	}

	private static Object[] row(TaskChange change) {
		PersonId by = change.by();
		return new @Nullable Object[] { change.task().value(), change.at().atOffset(ZoneOffset.UTC),
				change.from().name(), change.to().name(), change.because(), (by != null) ? by.value() : null };
	}

	/**
	 * The changes of a task.
	 * @param task the task
	 * @return oldest first, at most 1,000
	 */
	public List<TaskChange> of(TaskId task) {
		return this.database.sql("select * from care.task_history where task = ? order by id limit 1000")
			.param(task.value())
			.query((row, number) -> change(row))
			.list();
	}

	/**
	 * The changes of several tasks.
	 * @param tasks the tasks
	 * @return oldest first; tasks that never changed are not there
	 */
	public Map<TaskId, List<TaskChange>> of(Collection<TaskId> tasks) {
		return this.database.sql("select * from care.task_history where task = any(?::uuid[]) order by id")
			.param(tasks.stream().map(TaskId::value).toArray(UUID[]::new))
			.query((row, number) -> change(row))
			.list()
			.stream()
			.collect(Collectors.groupingBy(TaskChange::task));
	}

	private static TaskChange change(ResultSet row) throws SQLException {
		return new TaskChange(new TaskId(row.getObject("task", UUID.class)),
				row.getObject("at", OffsetDateTime.class).toInstant(), TaskState.valueOf(row.getString("from_state")),
				TaskState.valueOf(row.getString("to_state")), row.getString("because"),
				person(row.getObject("by_person", UUID.class)));
	}

	private static @Nullable PersonId person(@Nullable UUID person) {
		return (person != null) ? new PersonId(person) : null;
	}

}
