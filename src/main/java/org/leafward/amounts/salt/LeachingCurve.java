package org.leafward.amounts.salt;

/**
 * How much salt stays in the soil when water passes through it. Water is told as its
 * depth in parts of the depth of soil.
 * <p>
 * Amounts are taken from what was read at Purdue and A&amp;L Great Lakes Laboratories: 6
 * inches of water take half of the salt out of a foot of soil, and the same again brings
 * it to three quarters. In between it is drawn by powers, and from 12 inches on by
 * 0.25/depth, the form of Hoffman; both are our choice. What others say is known from
 * memory only and serves as a check.
 */
public final class LeachingCurve {

	/** The least share of salt to aim at: what 24 inches on a foot leave. */
	public static final double LEAST_SHARE = 0.125;

	static final String SOURCE = "6 inches of water take half of the salt out of a foot of soil, the same again brings "
			+ "it to three quarters: Purdue Landscape Report, Salt in the landscape, and A&L Great Lakes Laboratories, "
			+ "Salt injury in landscapes, both read; in between, and beyond 12 inches, our choice";

	private static final double AFTER_ITS_OWN_DEPTH = 0.25;

	private LeachingCurve() {
	}

	/**
	 * The share that stays.
	 * @param water depth of water over depth of soil, 0 or more
	 * @return 1 to 0
	 */
	public static double shareLeft(double water) {
		return (water <= 1) ? Math.pow(AFTER_ITS_OWN_DEPTH, water) : AFTER_ITS_OWN_DEPTH / water;
	}

	/**
	 * The water that leaves a share of the salt.
	 * @param share that stays, above 0; from 1 on nothing is needed
	 * @return depth of water over depth of soil
	 */
	public static double water(double share) {
		if (share >= 1) {
			return 0;
		}
		return (share >= AFTER_ITS_OWN_DEPTH) ? Math.log(share) / Math.log(AFTER_ITS_OWN_DEPTH)
				: AFTER_ITS_OWN_DEPTH / share;
	}

	/**
	 * The share that stays under ponded water by Reeve (USDA Agriculture Handbook 60,
	 * from memory): 1/(5 water) + 0.15.
	 * @param water depth of water over depth of soil, above 0
	 * @return 0.15 to 1
	 */
	public static double reeve(double water) {
		return Math.min(1, 1 / (5 * water) + 0.15);
	}

	/**
	 * The share that stays by Hoffman, from memory: k/water.
	 * @param water depth of water over depth of soil, above 0
	 * @param k 0.1 under sprinklers and in sand, 0.3 in fine soil under ponded water,
	 * 0.45 in peat
	 * @return 0 to 1
	 */
	public static double hoffman(double water, double k) {
		return Math.min(1, k / water);
	}

}
