package org.leafward.advisories.core.watch;

import java.util.List;

/**
 * What has to hold on one and the same forecast day.
 *
 * @param from first day that is looked at; 0 is today
 * @param to last day that is looked at
 * @param all what has to hold
 * @param night whether it is the night that ends on that day, so that it begins on the
 * day before
 */
public record OneDay(int from, int to, List<Criterion> all, boolean night) {

	public OneDay {
		all = List.copyOf(all);
	}

}
