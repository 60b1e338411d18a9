package org.leafward.register;

import java.time.ZoneId;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
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
 * @param microclimate what its nights are like
 */
public record Site(SiteId id, PersonId owner, String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil,
		Sun sun, Wind wind, Microclimate microclimate) {

	/**
	 * A site on open, level ground.
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
	public Site(SiteId id, PersonId owner, String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil,
			Sun sun, Wind wind) {
		this(id, owner, name, county, point, zone, soil, sun, wind, Microclimate.NONE);
	}

	/**
	 * The site as the climate knows it.
	 * @return its point and microclimate
	 */
	public Place place() {
		return new Place(this.point, this.microclimate);
	}

}
