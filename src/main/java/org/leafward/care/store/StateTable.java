package org.leafward.care.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Work;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The states of tasks, as people change them. */
@Repository
public class StateTable {

	private final JdbcClient database;

	StateTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Puts a task into another state; it goes up by one in its sequence. A reason that
	 * stands is kept while the task is done, so that undoing it brings the reason back.
	 * @param change the change; the site is locked in this transaction
	 */
	public void move(TaskChange change) {
		String because = (change.to() == TaskState.SKIPPED && change.from() == TaskState.PLANNED) ? change.because()
				: null;
		this.database.sql("""
				update care.task set state = :to, sequence = sequence + 1,
					withdrawn_because = case when :to = 'PLANNED' then null
						else coalesce(cast(:because as text), withdrawn_because) end,
					changed_at = greatest(cast(:at as timestamptz), changed_at + interval '1 second')
				where id = :id and state = :from
				""")
			.param("to", change.to().name())
			.param("from", change.from().name())
			.param("because", because)
			.param("at", change.at().atOffset(ZoneOffset.UTC))
			.param("id", change.task().value())
			.update();
	}

	/**
	 * The hold-offs that ask for none of a work on a day.
	 * @param site the site
	 * @param planting the planting; null for the site as a whole
	 * @param work the work
	 * @param day the day
	 * @return the longest lasting first
	 */
	public List<CareTask> holdOffs(SiteId site, @Nullable PlantingId planting, Work work, LocalDate day) {
		return this.database.sql(TaskTable.TASKS + """
				where t.site = :site and t.planting is not distinct from cast(:planting as uuid)
					and t.kind = 'HOLD_OFF' and t.work = :work and t.state = 'PLANNED'
					and t.from_day <= :day and t.to_day >= :day
				order by t.to_day desc, t.id
				""")
			.param("site", site.value())
			.param("planting", (planting != null) ? planting.value() : null)
			.param("work", work.name())
			.param("day", day)
			.query(TaskRows::task)
			.list();
	}

}
