package org.leafward.amounts.light;

/**
 * What all days of a ramp have in common.
 *
 * @param start where the plant stands now
 * @param site where it will grow
 * @param limits the weather that it is kept out of
 * @param steps how many days, when none is held
 * @param lightAlready whether it has the site's light already, so that only wind and
 * temperature are left to get used to
 * @param presentMoles light that it gets now, mol/m² a day
 */
public record RampBasis(StartingLight start, SiteLight site, RampLimits limits, int steps, boolean lightAlready,
		double presentMoles) {
}
