package org.leafward.care.core.rule;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * States or provinces and counties.
 *
 * @param regions codes of ISO 3166-2 such as US-MI
 * @param counties names as sites give them, compared without regard to case; with regions
 * as well, only the counties of that name there
 */
public record Where(Set<String> regions, Set<String> counties) {

	/** Everywhere. */
	public static final Where ANYWHERE = new Where(Set.of(), Set.of());

	public Where {
		regions = Set.copyOf(regions);
		counties = counties.stream().map(Where::fold).collect(Collectors.toUnmodifiableSet());
	}

	/**
	 * Whether a site lies here.
	 * @param region its region's code, empty when not known
	 * @param county its county, empty when not known
	 * @return true when it does for certain
	 */
	public boolean contains(String region, String county) {
		return (this.regions.isEmpty() || this.regions.contains(region))
				&& (this.counties.isEmpty() || this.counties.contains(fold(county)));
	}

	private static String fold(String county) {
		return county.strip().toLowerCase(Locale.ROOT);
	}

}
