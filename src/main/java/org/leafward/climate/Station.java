package org.leafward.climate;

import org.leafward.measure.GeoPoint;

/**
 * A weather station.
 *
 * @param id GHCN-Daily identifier
 * @param name the station's name
 * @param point where it stands
 * @param invented whether its record was made up for a demonstration
 */
public record Station(StationId id, String name, GeoPoint point, boolean invented) {
}
