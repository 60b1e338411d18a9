package org.leafward.register;

import java.time.ZoneId;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Microclimate;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.GeoPoint;

/**
 * A site to be registered.
 *
 * @param name what its people call it, 1 to 100 characters
 * @param county county or district, at most 100 characters, may be empty
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
public record NewSite(String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil, Sun sun, Wind wind,
		Microclimate microclimate, String region, Set<SiteFeature> features, @Nullable Double litresPerMinute) {

	/**
	 * A site whose flow of water nobody measured.
	 * @param name what its people call it, 1 to 100 characters
	 * @param county county or district, at most 100 characters, may be empty
	 * @param point coordinates and height
	 * @param zone time zone of the site
	 * @param soil soil texture
	 * @param sun light through the day
	 * @param wind exposure to wind
	 * @param microclimate what its nights are like
	 * @param region state or province by ISO 3166-2; empty when not known
	 * @param features what the site has
	 */
	public NewSite(String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil, Sun sun, Wind wind,
			Microclimate microclimate, String region, Set<SiteFeature> features) {
		this(name, county, point, zone, soil, sun, wind, microclimate, region, features, null);
	}

	/**
	 * A site on open, level ground, of which no more is known.
	 * @param name what its people call it, 1 to 100 characters
	 * @param county county or district, at most 100 characters, may be empty
	 * @param point coordinates and height
	 * @param zone time zone of the site
	 * @param soil soil texture
	 * @param sun light through the day
	 * @param wind exposure to wind
	 */
	public NewSite(String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil, Sun sun, Wind wind) {
		this(name, county, point, zone, soil, sun, wind, Microclimate.NONE, "", Set.of(), null);
	}

	/**
	 * A site of which region and features are not known.
	 * @param name what its people call it, 1 to 100 characters
	 * @param county county or district, at most 100 characters, may be empty
	 * @param point coordinates and height
	 * @param zone time zone of the site
	 * @param soil soil texture
	 * @param sun light through the day
	 * @param wind exposure to wind
	 * @param microclimate what its nights are like
	 */
	public NewSite(String name, String county, GeoPoint point, ZoneId zone, SoilTexture soil, Sun sun, Wind wind,
			Microclimate microclimate) {
		this(name, county, point, zone, soil, sun, wind, microclimate, "", Set.of(), null);
	}

	public NewSite {
		Findings all = new Findings();
		String called = name;
		String district = county;
		Supplier<String> first = all.read(() -> Words.line("name", called, 1, 100));
		Supplier<String> second = all.read(() -> county(district));
		String state = region;
		Supplier<String> third = all.read(() -> SiteSetting.region(state));
		ZoneId clock = zone;
		all.check(() -> zone(clock));
		name = all.give(first);
		county = second.get();
		region = third.get();
		features = Set.copyOf(features);
	}

	/**
	 * The county of a site.
	 * @param given county or district
	 * @return a line of at most 100 characters, may be empty
	 * @throws BadInput at {@code county} when it is longer or no line
	 */
	public static String county(String given) {
		return Words.line("county", given, 0, 100);
	}

	/**
	 * The time zone of a site.
	 * @param zone any zone
	 * @return the same
	 * @throws BadInput at {@code zone} when it is no region, and so knows no summer time
	 */
	public static ZoneId zone(ZoneId zone) {
		if (!zone.getId().contains("/") && !zone.getId().equals("UTC")) {
			throw new BadInput("time zone '%s' is not a region".formatted(zone.getId()), "zone",
					"use a name such as America/New_York");
		}
		return zone;
	}

}
