package org.leafward.accounts.web;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.leafward.care.TaskId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLinks;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.WorkdayTask;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.WorkdayId;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Groups and workdays of people, by which addresses are filled in. */
@TestComponent
class AccessGroups {

	private final GroupDesk desk;

	private final Groups groups;

	private final GroupLinks links;

	private final WorkdayDesk days;

	private final Register register;

	private final JdbcClient database;

	private final Clock clock;

	private final Map<PersonId, Made> made = new HashMap<>();

	AccessGroups(GroupDesk desk, Groups groups, GroupLinks links, WorkdayDesk days, Register register,
			JdbcClient database, Clock clock) {
		this.desk = desk;
		this.groups = groups;
		this.links = links;
		this.days = days;
		this.register = register;
		this.database = database;
		this.clock = clock;
	}

	/** A group that somebody leads and is in alone, with its workday of today. */
	private record Made(GroupId group, WorkdayId day) {
	}

	private Made make(PersonId owner, SiteId site) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		// One person belongs to so many groups only.
		this.database.sql("""
				delete from workdays.volunteer_group where id in
					(select group_id from workdays.member where person_id = ? and leads)
				""").param(owner.value()).update();
		GroupId group = this.desk.make(new Told("Crew", "", ZoneId.of("America/Chicago"), "",
				Set.of(DayOfWeek.SATURDAY), LocalTime.of(9, 0), LocalTime.of(20, 0), 10, Set.of(), PlanTerms.USUAL),
				owner);
		this.desk.give(group, this.register.require(site), "");
		WorkdayId day = this.days.add(this.groups.find(group).orElseThrow(),
				new Frame(today, LocalTime.of(9, 0), LocalTime.of(20, 0), "", 10, null));
		this.days.fix(day);
		return new Made(group, day);
	}

	/**
	 * A task of a site, put onto the workday of today.
	 * @param owner whose
	 * @param task which, of the site that the group was given
	 * @param site its site
	 */
	void onto(PersonId owner, UUID task, SiteId site) {
		Made one = this.made.computeIfAbsent(owner, (key) -> make(owner, site));
		this.days.addTask(one.day(), new WorkdayTask(new TaskId(task), site, 30, true, "", 1, 1, false));
	}

	/**
	 * What stands in an address.
	 * @param before what stands before it
	 * @param owner whose
	 * @param site a site of theirs
	 * @param changes whether the call changes something, so that it gets a group of its
	 * own
	 */
	String value(String before, PersonId owner, SiteId site, boolean changes) {
		boolean fresh = changes && Set.of("groups", "workdays", "join", "w").contains(before);
		Made one = this.made.compute(owner, (key, old) -> (fresh || old == null) ? make(owner, site) : old);
		return switch (before) {
			case "groups" -> one.group().toString();
			case "workdays" -> one.day().toString();
			case "members" -> owner.toString();
			case "links" -> {
				this.links.make(one.group(), owner);
				yield this.links.of(one.group()).get(0).id().toString();
			}
			case "join" -> this.links.make(one.group(), owner);
			case "w" -> {
				String token = UUID.randomUUID().toString().replace("-", "");
				this.database.sql("delete from workdays.asked where workday = ?").param(one.day().value()).update();
				this.database.sql("insert into workdays.asked (workday, person_id, hash, at) values (?, ?, ?, now())")
					.params(one.day().value(), owner.value(), Secret.hash(token))
					.update();
				yield token;
			}
			default -> throw new IllegalStateException(before);
		};
	}

}
