package org.leafward.climate.core.heat;

/**
 * What warmth above the upper threshold does. The names and rules are those of Zalom et
 * al. (1983), "Degree-days: the calculation and use of heat units in pest management",
 * known here through the definitions and results of UC IPM.
 */
public enum CutOff {

	/** There is no upper threshold. */
	NONE,

	/** Above it development goes on as fast as at the threshold. */
	HORIZONTAL,

	/** Above it development slows down as much as it sped up below. */
	INTERMEDIATE,

	/** Above it development stops. */
	VERTICAL

}
