package org.leafward.advisories.core.watch;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The thresholds as they hold in a county: what a specialist set for the county goes
 * before what one set for its region, that before what data has for the county and for
 * the region, and that before the usual value.
 *
 * @param condition whose thresholds
 * @param county code of the county
 * @param region code of its region
 * @param set what specialists set
 */
public record Limits(WatchCondition condition, String county, String region, List<WatchCondition.Moved> set) {

	public Limits {
		set = List.copyOf(set);
	}

	/**
	 * The value that holds.
	 * @param name name of the threshold
	 * @return in its own unit
	 */
	public double value(String name) {
		Double moved = in(this.set, name);
		if (moved == null) {
			moved = in(this.condition.moved(), name);
		}
		return (moved != null) ? moved : this.condition.threshold(name).value();
	}

	private @Nullable Double in(List<WatchCondition.Moved> moved, String name) {
		Double found = null;
		for (WatchCondition.Moved one : moved) {
			if (one.threshold().equals(name) && one.scope().equals(this.county)) {
				return one.value();
			}
			if (one.threshold().equals(name) && one.scope().equals(this.region)) {
				found = one.value();
			}
		}
		return found;
	}

	/**
	 * The value as it is counted.
	 * @param name name of the threshold
	 * @return see {@link ThresholdUnit#counted}
	 */
	public double counted(String name) {
		return this.condition.threshold(name).unit().counted(value(name));
	}

}
