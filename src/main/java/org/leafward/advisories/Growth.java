package org.leafward.advisories;

import java.util.List;

/**
 * How much of some plants grows in some counties, as the register has it. Model gardens
 * of the server don't count.
 *
 * @param people how many people grow them; each counts once, whatever their sites
 * @param sites at how many sites
 * @param plantings how many plantings
 * @param groups by plant group; a planting counts in each of its groups
 * @param counties by county, in the order that was asked for; a person with sites in two
 * counties counts in both
 */
public record Growth(long people, long sites, long plantings, List<OfGroup> groups, List<OfCounty> counties) {

	/** Nothing grows. */
	public static final Growth NONE = new Growth(0, 0, 0, List.of(), List.of());

	public Growth {
		groups = List.copyOf(groups);
		counties = List.copyOf(counties);
	}

	/**
	 * What grows of a plant group.
	 *
	 * @param group its code
	 * @param sites at how many sites
	 * @param plantings how many plantings
	 */
	public record OfGroup(String group, long sites, long plantings) {
	}

	/**
	 * What grows in a county.
	 *
	 * @param county its code
	 * @param people how many people grow them
	 * @param sites at how many sites
	 * @param plantings how many plantings
	 */
	public record OfCounty(String county, long people, long sites, long plantings) {
	}

}
