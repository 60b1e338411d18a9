package org.leafward.workdays.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.workdays.Mark;
import org.leafward.workdays.WorkdayId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Ticks of the day. */
@Repository
public class MarkTable {

	private final JdbcClient database;

	MarkTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds a tick.
	 * @param mark the tick
	 * @param now when it came
	 * @return false when it came before
	 */
	public boolean add(Mark mark, Instant now) {
		return this.database.sql("""
				insert into workdays.mark (key, workday, task, person_id, done, at, came_at)
				values (?, ?, ?, ?, ?, ?, ?) on conflict (key) do nothing
				""")
			.params(mark.key(), mark.workday().value(), mark.task().value(), mark.person().value(), mark.done(),
					mark.at().atOffset(ZoneOffset.UTC), now.atOffset(ZoneOffset.UTC))
			.update() == 1;
	}

	/**
	 * The tick that counts: the latest; of two of one moment that which says done.
	 * @param workday of which
	 * @param task of which
	 * @return empty when there is none
	 */
	public Optional<Mark> last(WorkdayId workday, TaskId task) {
		return this.database.sql("""
				select key, person_id, done, at from workdays.mark where workday = ? and task = ?
				order by at desc, done desc, key limit 1
				""")
			.params(workday.value(), task.value())
			.query((row, number) -> new Mark(row.getObject("key", UUID.class), workday, task,
					new PersonId(row.getObject("person_id", UUID.class)), row.getBoolean("done"),
					row.getObject("at", OffsetDateTime.class).toInstant()))
			.optional();
	}

}
