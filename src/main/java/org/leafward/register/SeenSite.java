package org.leafward.register;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.GeoPoint;

/**
 * A site as far as somebody may see it.
 *
 * @param site the site; for specialists its position is coarse, and so is all that is
 * worked out from it: distances to three stations would give the garden away
 * @param mayChange whether they may change it
 * @param ownerFirstName for specialists who looks after it; null for others
 */
public record SeenSite(Site site, boolean mayChange, @Nullable String ownerFirstName) {

	/** Tenths of a degree: about 11 km from north to south. */
	private static final double PER_DEGREE = 10;

	private static final double HEIGHT_STEP_METRES = 10;

	static SeenSite own(Site site) {
		return new SeenSite(site, true, null);
	}

	static SeenSite coarse(Site site, String ownerFirstName) {
		GeoPoint exact = site.point();
		GeoPoint coarse = new GeoPoint(tenths(exact.latitude()), tenths(exact.longitude()),
				Math.round(exact.elevationMetres() / HEIGHT_STEP_METRES) * HEIGHT_STEP_METRES);
		return new SeenSite(new Site(site.id(), site.owner(), site.name(), site.county(), coarse, site.zone(),
				site.soil(), site.sun(), site.wind(), site.microclimate(), site.region(), site.features(),
				site.litresPerMinute()), false, ownerFirstName);
	}

	private static double tenths(double degrees) {
		return Math.round(degrees * PER_DEGREE) / PER_DEGREE;
	}

}
