package org.leafward.register.web;

import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;

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
 * @param lie how it lies to cold air: flat, hollow, slope or hilltop
 * @param nearWall whether plants stand before a wall that faces the sun
 * @param inTown whether it is built up all around
 * @param measuredOffsetCelsius how much warmer its own thermometer is than the estimate,
 * or null
 * @param region state or province by ISO 3166-2; empty when not known
 * @param irrigation whether there is irrigation or an outside tap
 * @param volunteers whether volunteers work there together
 * @param litresPerMinute what the hose or the sprinklers give; null when not known
 */
record SiteAnswer(UUID id, UUID owner, String name, String county, double latitude, double longitude,
		double elevationMetres, String zone, String soil, String sun, String wind, String lie, boolean nearWall,
		boolean inTown, @Nullable Double measuredOffsetCelsius, String region, boolean irrigation, boolean volunteers,
		@Nullable Double litresPerMinute) {

	static SiteAnswer of(Site site) {
		return new SiteAnswer(site.id().value(), site.owner().value(), site.name(), site.county(),
				site.point().latitude(), site.point().longitude(), site.point().elevationMetres(), site.zone().getId(),
				word(site.soil()), word(site.sun()), word(site.wind()), word(site.microclimate().lie()),
				site.microclimate().nearWall(), site.microclimate().inTown(),
				site.microclimate().measuredOffsetCelsius(), site.region(),
				site.features().contains(SiteFeature.IRRIGATION), site.features().contains(SiteFeature.VOLUNTEERS),
				site.litresPerMinute());
	}

	static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
