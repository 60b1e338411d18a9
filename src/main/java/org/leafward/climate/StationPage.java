package org.leafward.climate;

import java.util.List;

/**
 * A page of stations.
 *
 * @param stations in the order of their identifiers
 * @param page number of the page, from 0
 * @param size stations on a full page
 * @param total stations in all
 */
public record StationPage(List<Station> stations, int page, int size, long total) {

	public StationPage {
		stations = List.copyOf(stations);
	}

}
