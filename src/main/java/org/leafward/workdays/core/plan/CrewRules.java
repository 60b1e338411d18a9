package org.leafward.workdays.core.plan;

import java.time.LocalTime;
import java.util.Map;
import java.util.Set;

/**
 * What holds for all workdays of a group.
 *
 * @param begins when people meet, local time
 * @param minutes how long a workday lasts, 30 to 720; less where the sun sets before
 * @param mostSites how many sites a team goes to on a day, 1 to 4
 * @param mostWorkdays how many days may be called at most, 0 to 366; locked ones count
 * @param everyTeam skills that somebody in each team has, for example "first aid"
 * @param tools how many teams can have a tool at the same time; what isn't named there is
 * in everybody's shed
 * @param travel how long the way from site to site takes
 * @param costs what weighs against what
 */
public record CrewRules(LocalTime begins, int minutes, int mostSites, int mostWorkdays, Set<String> everyTeam,
		Map<String, Integer> tools, TravelRules travel, PlanCosts costs) {

	public CrewRules {
		if (minutes < 30 || minutes > 720) {
			throw new IllegalArgumentException("a workday of %d minutes".formatted(minutes));
		}
		if (mostSites < 1 || mostSites > 4) {
			throw new IllegalArgumentException("%d sites for a team on a day".formatted(mostSites));
		}
		if (mostWorkdays < 0 || mostWorkdays > 366) {
			throw new IllegalArgumentException("%d workdays".formatted(mostWorkdays));
		}
		everyTeam = Set.copyOf(everyTeam);
		tools = Map.copyOf(tools);
	}

	/**
	 * Three hours from nine o'clock, three sites at most, as many days as it takes.
	 * @return the rules of a group that never said anything
	 */
	public static CrewRules usual() {
		return new CrewRules(LocalTime.of(9, 0), 180, 3, 366, Set.of(), Map.of(), TravelRules.USUAL, PlanCosts.USUAL);
	}

}
