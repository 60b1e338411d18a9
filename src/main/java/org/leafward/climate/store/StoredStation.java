package org.leafward.climate.store;

import org.leafward.climate.Station;

/**
 * A station as it stands in the table.
 *
 * @param station the station
 * @param recordVersion how often its record has changed; 0 while it has none
 */
public record StoredStation(Station station, long recordVersion) {
}
