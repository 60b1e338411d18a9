package org.leafward.workdays.store;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWindow;
import org.leafward.workdays.GroupId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Sums of hours. */
@Repository
public class HoursTable {

	private final JdbcClient database;

	HoursTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A person's sum.
	 *
	 * @param person who; null for all whose account is gone, together
	 * @param days on how many workdays; of several people each counts
	 * @param minutes how long
	 */
	public record HoursRow(@Nullable UUID person, int days, int minutes) {
	}

	public List<HoursRow> of(GroupId group, DayWindow window) {
		return this.database.sql("""
				select person_id, count(*) as days, sum(minutes) as minutes
				from (select workday, person_id, minutes from workdays.sign_up
					union all select workday, null, minutes from workdays.nameless_hours) worked
				join workdays.workday on workday.id = worked.workday
				where group_id = ? and day between ? and ? and minutes > 0
				group by person_id order by sum(minutes) desc, person_id
				""")
			.params(group.value(), window.from(), window.to())
			.query((row, number) -> new HoursRow(row.getObject("person_id", UUID.class), row.getInt("days"),
					row.getInt("minutes")))
			.list();
	}

}
