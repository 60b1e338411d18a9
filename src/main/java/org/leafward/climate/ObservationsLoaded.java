package org.leafward.climate;

import java.time.LocalDate;

/**
 * A station's daily record changed.
 *
 * @param station identifier of the station
 * @param latitude degrees north
 * @param longitude degrees east
 * @param from first day that changed
 * @param to last day that changed
 */
public record ObservationsLoaded(String station, double latitude, double longitude, LocalDate from, LocalDate to) {
}
