package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * A day that was chosen.
 *
 * @param day the day
 * @param teams who goes where
 * @param why a sentence
 */
public record Workday(LocalDate day, List<TeamDay> teams, String why) {

	public Workday {
		teams = List.copyOf(teams);
	}

}
