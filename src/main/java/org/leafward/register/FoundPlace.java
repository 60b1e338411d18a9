package org.leafward.register;

import java.time.ZoneId;
import org.leafward.measure.GeoPoint;

/**
 * A place as it was found from what somebody told.
 *
 * @param point where, with its height
 * @param county its county; empty outside of all
 * @param region state or province by ISO 3166-2; empty outside of all counties
 * @param zone its time zone
 * @param stations whether a weather station is near enough to tell dates
 */
public record FoundPlace(GeoPoint point, String county, String region, ZoneId zone, boolean stations) {
}
