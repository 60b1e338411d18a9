package org.leafward.care.store;

import java.util.Arrays;
import java.util.Collection;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.WorkShares;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tasks of many people, counted. */
@Repository
public class WorkShareTable {

	private final JdbcClient database;

	WorkShareTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Counts tasks by what became of them.
	 * @param people whose
	 * @param works codes of kinds of work
	 * @param days tasks that overlap these days
	 * @return the counts
	 */
	public WorkShares.Share count(Collection<PersonId> people, Collection<String> works, DayWindow days) {
		return this.database
			.sql("""
					select count(*) filter (where state = 'DONE') as done, count(*) filter (where state = 'SKIPPED') as left_out,
						count(*) filter (where state = 'PLANNED') as open
					from care.task
					where person = any(?) and to_day >= ? and from_day <= ? and work = any(?) and kind <> 'HOLD_OFF'
					""")
			.param(people.stream().map(PersonId::value).toArray(UUID[]::new))
			.param(days.from())
			.param(days.to())
			.param(Arrays.stream(Work.values())
				.filter((one) -> works.contains(one.code()))
				.map(Work::name)
				.toArray(String[]::new))
			.query((row, number) -> new WorkShares.Share(row.getLong(1), row.getLong(2), row.getLong(3)))
			.single();
	}

}
