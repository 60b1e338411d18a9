package org.leafward.workdays;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.DayWindow;
import org.leafward.workdays.store.HoursTable;
import org.leafward.workdays.store.HoursTable.HoursRow;
import org.springframework.stereotype.Service;

/** How long the members of a group worked in a year. */
@Service
public class HoursReport {

	private final HoursTable table;

	private final People people;

	HoursReport(HoursTable table, People people) {
		this.table = table;
		this.people = people;
	}

	/**
	 * A member's year.
	 *
	 * @param name what they are called; empty for all whose account is gone, together
	 * @param days on how many workdays they worked; of several people each counts
	 * @param minutes how long in all
	 */
	public record Line(String name, int days, int minutes) {
	}

	/**
	 * The report, who worked longest first.
	 * @param group whose
	 * @param year calendar year
	 * @return without those who didn't work
	 */
	public List<Line> of(GroupId group, int year) {
		List<HoursRow> rows = this.table.of(group, new DayWindow(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31)));
		Map<PersonId, Person> known = this.people
			.find(rows.stream().map(HoursRow::person).filter(Objects::nonNull).map(PersonId::new).toList());
		return rows.stream().map((row) -> new Line(name(known, row.person()), row.days(), row.minutes())).toList();
	}

	private static String name(Map<PersonId, Person> known, @Nullable UUID person) {
		Person one = (person != null) ? known.get(new PersonId(person)) : null;
		return (one != null) ? one.name() : "";
	}

}
