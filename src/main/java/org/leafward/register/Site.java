package org.leafward.register;

import java.time.ZoneId;
import org.leafward.accounts.PersonId;
import org.leafward.measure.GeoPoint;

/**
 * A place where plants grow.
 *
 * @param id identifier
 * @param owner whose site it is
 * @param name what they call it
 * @param county county or district, for readers
 * @param point coordinates and height
 * @param zone time zone of the site
 * @param soil soil texture
 * @param sun light through the day
 * @param wind exposure to wind
 */
public record Site(SiteId id, PersonId owner, String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil,
		Sun sun, Wind wind) {
}
