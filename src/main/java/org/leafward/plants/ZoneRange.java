package org.leafward.plants;

/**
 * The USDA plant hardiness zones in which a species is usually grown outdoors.
 *
 * @param coldest coldest zone, 1 to 13
 * @param warmest warmest zone, from {@code coldest} to 13
 */
public record ZoneRange(int coldest, int warmest) {

	public ZoneRange {
		if (coldest < 1 || warmest > 13 || warmest < coldest) {
			throw new IllegalArgumentException("zones %d to %d are not within 1 to 13".formatted(coldest, warmest));
		}
	}

}
