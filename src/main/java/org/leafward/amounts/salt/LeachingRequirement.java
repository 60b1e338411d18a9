package org.leafward.amounts.salt;

import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;

/**
 * What each watering needs beyond the plants' use so that the salt of the water itself
 * doesn't gather.
 */
public final class LeachingRequirement {

	/** Where the formula comes from. */
	public static final String SOURCE = "LR = ECw/(5 ECe − ECw), page 180 of FAO Irrigation and Drainage Paper 56, "
			+ "which quotes Paper 29";

	private LeachingRequirement() {
	}

	/**
	 * The share of the water that has to pass through.
	 * @param water conductivity of the water ECw, dS/m, 0 to 20
	 * @param soil conductivity of the saturated paste ECe that is borne, dS/m, above 0 to
	 * 50
	 * @return 0 to below 1
	 * @throws BadInput when the water is too salty for it
	 */
	public static double share(double water, double soil) {
		Quantity.within("waterEc", "conductivity of the water", water, 0, 20);
		Quantity.within("wanted", "conductivity of the soil", soil, 0.01, 50);
		double share = water / (5 * soil - water);
		if (5 * soil <= water || share >= 1) {
			throw new BadInput("water of %.1f dS/m can't hold the soil at %.1f dS/m".formatted(water, soil), "waterEc",
					"use water with less salt, such as rain");
		}
		return share;
	}

	/**
	 * Water to put on, the share included: ET/(1 - LR), read in a lecture on ASCE Manual
	 * 71 at San Diego State University.
	 * @param used what plants use, mm, 0 or more
	 * @param share leaching requirement, 0 to below 1
	 * @return mm
	 */
	public static double applied(double used, double share) {
		return used / (1 - share);
	}

}
