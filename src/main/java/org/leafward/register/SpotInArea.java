package org.leafward.register;

import org.leafward.accounts.PersonId;
import org.leafward.measure.GeoPoint;

/**
 * A site with what grows there, as little of it as tells whether something concerns it.
 *
 * @param site the site
 * @param owner whose it is
 * @param county name of its county
 * @param region state or province by ISO 3166-2; may be empty
 * @param point where it is
 * @param plantings how many of the plantings that were asked for it has
 */
public record SpotInArea(SiteId site, PersonId owner, String county, String region, GeoPoint point, long plantings) {
}
