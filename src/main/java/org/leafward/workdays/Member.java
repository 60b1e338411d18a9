package org.leafward.workdays;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.leafward.accounts.PersonId;

/**
 * Somebody who belongs to a group.
 *
 * @param person who
 * @param name what they are called
 * @param leads whether they plan its workdays and see its members' emergency contacts
 * @param skills what they are trained or licensed for
 * @param weekdays on which they can come as a rule
 * @param away days on which they can't
 */
public record Member(PersonId person, String name, boolean leads, Set<Skill> skills, Set<DayOfWeek> weekdays,
		Set<LocalDate> away) {

	public Member {
		skills = Set.copyOf(skills);
		weekdays = Set.copyOf(weekdays);
		away = Set.copyOf(away);
	}

	/**
	 * Whether they said that they can come on a day.
	 * @param day the day
	 * @return true unless the day of the week or the day itself is ruled out
	 */
	public boolean free(LocalDate day) {
		return this.weekdays.contains(day.getDayOfWeek()) && !this.away.contains(day);
	}

}
