package org.leafward.workdays.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * What is kept about people who work together. Workdays belong to groups, so they stay
 * without whoever goes; sites of theirs go from the groups with them. Hours that they
 * worked stay in the group's sum, of nobody.
 */
@Component
class OwnWorkdays implements PersonalData {

	private final JdbcClient database;

	private final GroupTable groups;

	OwnWorkdays(JdbcClient database, GroupTable groups) {
		this.database = database;
		this.groups = groups;
	}

	@Override
	public int order() {
		return 20;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		put(all, "groups", """
				select volunteer_group.id, name, leads, array_to_string(skills, ' ') as skills,
					array_to_string(member.weekdays, ' ') as weekdays, array_to_string(member.away, ' ') as away,
					emergency, joined_at as "joinedAt"
				from workdays.member join workdays.volunteer_group on volunteer_group.id = group_id
				where person_id = ? order by joined_at, volunteer_group.id""", person);
		put(all, "workdays", """
				select workday.id, day, sign_up.state, children, guardian, since, minutes
				from workdays.sign_up join workdays.workday on workday.id = workday
				where person_id = ? order by day, workday.id""", person);
		put(all, "workday-invitations",
				"select workday, at from workdays.asked where person_id = ? order by at, workday", person);
		put(all, "workday-ticks", """
				select workday, task, done, at from workdays.mark where person_id = ? order by at, key""", person);
		put(all, "workday-mails", """
				select kind, recipient, subject, state, created_at as "createdAt", sent_at as "sentAt"
				from workdays.message where person_id = ? order by number""", person);
		put(all, "group-sites", """
				select group_id as "group", site, address, given_at as "givenAt" from workdays.group_site
				where owner = ? order by given_at, site""", person);
		put(all, "group-links", """
				select group_id as "group", made_at as "madeAt", expires_at as "expiresAt" from workdays.invitation
				where made_by = ? order by made_at, id""", person);
		return all;
	}

	private void put(Map<String, List<Map<String, Object>>> all, String name, String sql, PersonId person) {
		all.put(name, this.database.sql(sql).param(person.value()).query(Rows::plain).list());
	}

	@Override
	public void forget(PersonId person) {
		update("""
				delete from workdays.stop where site in (select site from workdays.group_site where owner = ?)""",
				person);
		update("""
				delete from workdays.workday_task where site in (select site from workdays.group_site where owner = ?)""",
				person);
		update("delete from workdays.group_site where owner = ?", person);
		update("""
				insert into workdays.nameless_hours (workday, minutes)
				select workday, minutes from workdays.sign_up where person_id = ? and minutes > 0""", person);
		for (String table : List.of("member", "sign_up", "asked", "mark", "message")) {
			update("delete from workdays.%s where person_id = ?".formatted(table), person);
		}
		update("update workdays.invitation set made_by = null where made_by = ?", person);
		update("update workdays.workday_task set done_by = null where done_by = ?", person);
		this.groups.care();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		// Hours noted for both on one day are of one person: the longer ones count, once.
		this.database.sql("""
				update workdays.sign_up other set minutes = greatest(other.minutes, mine.minutes)
				from workdays.sign_up mine
				where mine.workday = other.workday and mine.person_id = ? and other.person_id = ?
				""").params(from.value(), into.value()).update();
		this.database.sql("""
				update workdays.sign_up mine set minutes = null where person_id = ? and exists
					(select from workdays.sign_up other where other.workday = mine.workday and other.person_id = ?)
				""").params(from.value(), into.value()).update();
		// Who was in both groups stays as they were there.
		for (String[] key : new String[][] { { "member", "group_id" }, { "sign_up", "workday" },
				{ "asked", "workday" } }) {
			this.database.sql("""
					update workdays.%1$s mine set person_id = ? where person_id = ? and not exists
						(select from workdays.%1$s other where other.%2$s = mine.%2$s and other.person_id = ?)
					""".formatted(key[0], key[1])).params(into.value(), from.value(), into.value()).update();
		}
		for (String column : List.of("mark set person_id", "message set person_id", "group_site set owner",
				"invitation set made_by", "workday_task set done_by")) {
			this.database
				.sql("update workdays.%s = ? where %s = ?".formatted(column,
						column.substring(column.lastIndexOf(' ') + 1)))
				.params(into.value(), from.value())
				.update();
		}
	}

	private void update(String sql, PersonId person) {
		this.database.sql(sql).param(person.value()).update();
	}

}
