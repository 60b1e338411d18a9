package org.leafward.register;

import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
 * @param region state or province by ISO 3166-2, such as US-MI; empty when not known
 * @param features what the site has
 * @param litresPerMinute what its hose or its sprinklers give; null when nobody measured
 */
public record Site(SiteId id, PersonId owner, String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil,
		Sun sun, Wind wind, Microclimate microclimate, String region, Set<SiteFeature> features,
		@Nullable Double litresPerMinute) {

	public Site {
		features = Set.copyOf(features);
	}

	/**
	 * A site on open, level ground, of which no more is known.
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
		this(id, owner, name, county, point, zone, soil, sun, wind, Microclimate.NONE, "", Set.of(), null);
	}

	/**
	 * A site whose flow of water nobody measured.
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
	 * @param region state or province by ISO 3166-2; empty when not known
	 * @param features what the site has
	 */
	public Site(SiteId id, PersonId owner, String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil,
			Sun sun, Wind wind, Microclimate microclimate, String region, Set<SiteFeature> features) {
		this(id, owner, name, county, point, zone, soil, sun, wind, microclimate, region, features, null);
	}

	/**
	 * The site as the climate knows it.
	 * @return its point and microclimate
	 */
	public Place place() {
		return new Place(this.point, this.microclimate);
	}

	/**
	 * What of it decides its dates and rules.
	 * @return place, region and features
	 */
	public SiteSetting setting() {
		return new SiteSetting(place(), this.region, this.features, this.litresPerMinute);
	}

}
