package org.leafward.register;

import org.jspecify.annotations.Nullable;

/**
 * Part of a site whose plantings share light, exposure to wind and irrigation. What it
 * doesn't have of its own is as at the site.
 *
 * @param id identifier
 * @param site of which it is a part
 * @param name what its people call it; no two beds of a site have the same
 * @param sun its own light through the day; null as at the site
 * @param wind its own exposure to wind; null as at the site
 * @param litresPerMinute what its own hose or line gives, l/min; null as at the site
 */
public record Bed(BedId id, SiteId site, String name, @Nullable Sun sun, @Nullable Wind wind,
		@Nullable Double litresPerMinute) {

	/**
	 * The site as it is in this bed.
	 * @param around the site
	 * @return the site with light, wind and water of the bed, where it has its own
	 */
	public Site over(Site around) {
		return new Site(around.id(), around.owner(), around.name(), around.county(), around.point(), around.zone(),
				around.soil(), (this.sun != null) ? this.sun : around.sun(),
				(this.wind != null) ? this.wind : around.wind(), around.microclimate(), around.region(),
				around.features(), (this.litresPerMinute != null) ? this.litresPerMinute : around.litresPerMinute());
	}

	/**
	 * What may be changed of it.
	 * @return as it is now
	 */
	public NewBed setting() {
		return new NewBed(this.name, this.sun, this.wind, this.litresPerMinute);
	}

}
