package org.leafward.register.web;

import java.util.Locale;
import java.util.UUID;
import org.leafward.register.Site;

/**
 * A site as the API answers it.
 *
 * @param id identifier
 * @param owner id of the person whose site it is
 * @param name what its people call it
 * @param county county or district
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevationMetres metres above sea level
 * @param zone time zone
 * @param soil soil texture
 * @param sun light
 * @param wind exposure to wind
 */
record SiteAnswer(UUID id, UUID owner, String name, String county, double latitude, double longitude,
		double elevationMetres, String zone, String soil, String sun, String wind) {

	static SiteAnswer of(Site site) {
		return new SiteAnswer(site.id().value(), site.owner().value(), site.name(), site.county(),
				site.point().latitude(), site.point().longitude(), site.point().elevationMetres(), site.zone().getId(),
				word(site.soil()), word(site.sun()), word(site.wind()));
	}

	static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
