package org.leafward.workdays;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leafward.accounts.PersonId;

/**
 * Volunteers who look after some sites together.
 *
 * @param id identifier
 * @param name what it is called
 * @param about what it does, may be empty
 * @param zone time zone of its workdays
 * @param meetingPoint where it meets as a rule, may be empty
 * @param weekdays on which it works as a rule
 * @param begins when a workday begins as a rule
 * @param ends when it ends as a rule
 * @param capacity how many can come to one as a rule, 1 to 500
 * @param away days on which it never works
 * @param terms what it asks of each plan
 * @param members those who belong to it, by name, those who lead first
 * @param sites those that it looks after, by name
 */
public record Group(GroupId id, String name, String about, ZoneId zone, String meetingPoint, Set<DayOfWeek> weekdays,
		LocalTime begins, LocalTime ends, int capacity, Set<LocalDate> away, PlanTerms terms, List<Member> members,
		List<GroupSite> sites) {

	public Group {
		weekdays = Set.copyOf(weekdays);
		away = Set.copyOf(away);
		members = List.copyOf(members);
		sites = List.copyOf(sites);
	}

	/**
	 * Somebody's membership.
	 * @param person who
	 * @return empty when they don't belong to it
	 */
	public Optional<Member> member(PersonId person) {
		return this.members.stream().filter((one) -> one.person().equals(person)).findFirst();
	}

	public boolean leads(PersonId person) {
		return member(person).filter(Member::leads).isPresent();
	}

}
