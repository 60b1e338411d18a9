package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.util.Set;
import org.leafward.measure.GeoPoint;

/**
 * A place that a group looks after.
 *
 * @param id identifier
 * @param name what readers call it
 * @param at where it is; a coarse place does, as distances are estimates anyway
 * @param closed candidate dates on which nobody may work there
 */
public record CrewSite(String id, String name, GeoPoint at, Set<LocalDate> closed) {

	public CrewSite {
		closed = Set.copyOf(closed);
	}

}
