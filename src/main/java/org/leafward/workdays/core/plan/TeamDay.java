package org.leafward.workdays.core.plan;

import java.util.List;

/**
 * A team on a day.
 *
 * @param number 1 and up
 * @param members identifiers of those in it; nobody is in two teams of a day
 * @param stops where it goes, in order; empty for a team that isn't needed
 * @param personMinutes effort of all its tasks
 * @param freePersonMinutes what its people could do besides, after the way
 */
public record TeamDay(int number, List<String> members, List<Stop> stops, int personMinutes, int freePersonMinutes) {

	public TeamDay {
		members = List.copyOf(members);
		stops = List.copyOf(stops);
	}

	/**
	 * Minutes on the way.
	 * @return sum of all stops
	 */
	public int travelMinutes() {
		return this.stops.stream().mapToInt(Stop::travelMinutes).sum();
	}

}
