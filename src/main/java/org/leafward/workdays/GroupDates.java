package org.leafward.workdays;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.light.SunPosition;
import org.leafward.measure.GeoPoint;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewRules;
import org.leafward.workdays.core.plan.PlanCosts;
import org.leafward.workdays.core.plan.TravelRules;

/** Days as a group works: on which, with whom, how long. */
final class GroupDates {

	/** One team for so many people. */
	private static final int TEAM = 5;

	private static final int MOST_TEAMS = 4;

	/** A team goes to so many sites on a day at most. */
	private static final int SITES = 3;

	private GroupDates() {
	}

	/**
	 * Whether a group works on a day.
	 * @param group the group
	 * @param day the day
	 * @return whether it is one of its weekdays, and it isn't away
	 */
	static boolean worksOn(Group group, LocalDate day) {
		return group.weekdays().contains(day.getDayOfWeek()) && !group.away().contains(day);
	}

	/**
	 * A day with those who are free then.
	 * @param group the group
	 * @param day the day
	 * @param point where there must be light
	 * @param locked whether it takes place whatever is planned
	 * @return the day
	 */
	static CrewDate of(Group group, LocalDate day, GeoPoint point, boolean locked) {
		List<CrewMember> crew = group.members()
			.stream()
			.filter((one) -> one.free(day))
			.limit(group.capacity())
			.map((one) -> new CrewMember(one.person().toString(),
					one.skills().stream().map(Skill::code).collect(Collectors.toSet())))
			.toList();
		SunPosition.Day sun = SunPosition.day(point, day, group.zone());
		// Where the sun never sets there is light all day.
		return new CrewDate(day, time(sun.rise(), group.begins()), time(sun.set(), group.ends()), crew,
				Math.max(1, Math.min(MOST_TEAMS, crew.size() / TEAM)), locked);
	}

	private static LocalTime time(@Nullable ZonedDateTime at, LocalTime otherwise) {
		return (at != null) ? at.toLocalTime() : otherwise;
	}

	/**
	 * What holds for workdays of a group.
	 * @param group the group
	 * @param begins when people meet
	 * @param ends when they part
	 * @param most how many days may be called
	 * @param costs what weighs against what
	 * @return the rules
	 */
	static CrewRules rules(Group group, LocalTime begins, LocalTime ends, int most, PlanCosts costs) {
		return new CrewRules(begins, (ends.toSecondOfDay() - begins.toSecondOfDay()) / 60, SITES, most, Set.of(),
				group.terms().fewTools(), TravelRules.USUAL, costs);
	}

}
