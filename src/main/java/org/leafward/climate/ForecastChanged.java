package org.leafward.climate;

import java.time.LocalDate;

/**
 * The forecast of a station that can be leaned on is another than before.
 *
 * @param station identifier of the station
 * @param latitude degrees north
 * @param longitude degrees east
 * @param from first day of the new forecast
 * @param to last day of the new forecast
 */
public record ForecastChanged(String station, double latitude, double longitude, LocalDate from, LocalDate to) {
}
