package org.leafward.amounts.salt;

/**
 * How much salt stays in the soil when water passes through it. Water is told as its
 * depth in parts of the depth of soil.
 * <p>
 * Amounts are taken from the rule of thumb: half of the salt goes with 6 inches of water
 * on a foot of soil (read at Purdue and A&amp;L Great Lakes Laboratories), 80 % with 12
 * and 90 % with 24 inches (from memory). Between the points it is drawn by powers up to
 * 12 inches and by 0.2/depth from there on, both our choice. The curves of Reeve and
 * Hoffman serve as a check, since they are known from memory only.
 */
public final class LeachingCurve {

	/** The least share of salt that the rule of thumb reaches. */
	public static final double LEAST_SHARE = 0.1;

	static final String SOURCE = "rule of thumb: 6 inches of water on a foot of soil take half of the salt (Purdue "
			+ "Landscape Report, Salt in the landscape; A&L Great Lakes Laboratories, Salt injury in landscapes; both "
			+ "read), 12 inches 80 %, 24 inches 90 % (from memory)";

	private LeachingCurve() {
	}

	/**
	 * The share that stays, by the rule of thumb.
	 * @param water depth of water over depth of soil, 0 or more
	 * @return 1 to 0
	 */
	public static double shareLeft(double water) {
		if (water >= 1) {
			return 0.2 / water;
		}
		return (water <= 0.5) ? Math.pow(0.25, water) : 0.5 * Math.pow(0.4, 2 * water - 1);
	}

	/**
	 * The water that leaves a share of the salt, by the rule of thumb.
	 * @param share that stays, above 0; from 1 on nothing is needed
	 * @return depth of water over depth of soil
	 */
	public static double water(double share) {
		if (share >= 1) {
			return 0;
		}
		if (share >= 0.5) {
			return Math.log(share) / Math.log(0.25);
		}
		return (share >= 0.2) ? 0.5 + Math.log(share / 0.5) / Math.log(0.4) / 2 : 0.2 / share;
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
