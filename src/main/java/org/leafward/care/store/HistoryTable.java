package org.leafward.care.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
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
			.query((row, number) -> new TaskChange(task, row.getObject("at", OffsetDateTime.class).toInstant(),
					TaskState.valueOf(row.getString("from_state")), TaskState.valueOf(row.getString("to_state")),
					row.getString("because"), person(row.getObject("by_person", UUID.class))))
			.list();
	}

	private static @Nullable PersonId person(@Nullable UUID person) {
		return (person != null) ? new PersonId(person) : null;
	}

}
