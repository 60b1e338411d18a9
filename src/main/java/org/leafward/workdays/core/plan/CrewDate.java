package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/**
 * A day on which a group could work.
 *
 * @param day the day
 * @param sunrise from when there is light, local time
 * @param sunset until when there is, local time
 * @param crew who is expected
 * @param teams into how many teams the crew may be split, 1 to 8; each is at one site at
 * a time. The planner makes fewer where there are too few people
 * @param locked whether the day takes place whatever is planned, since it was announced
 */
public record CrewDate(LocalDate day, LocalTime sunrise, LocalTime sunset, List<CrewMember> crew, int teams,
		boolean locked) {

	public CrewDate {
		if (teams < 1 || teams > 8) {
			throw new IllegalArgumentException("%d teams on %s".formatted(teams, day));
		}
		crew = List.copyOf(crew);
		if (crew.stream().map(CrewMember::id).distinct().count() < crew.size()) {
			throw new IllegalArgumentException("somebody is counted twice on " + day);
		}
	}

}
