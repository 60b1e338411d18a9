package org.leafward.plants;

/** The light that a species wants outdoors. */
public enum Light {

	/** At least six hours of direct sun. */
	FULL_SUN,

	/** Sun or a few hours of shade. */
	SUN_TO_PART_SHADE,

	/** Three to six hours of direct sun, best in the morning. */
	PART_SHADE,

	/** Less than three hours of direct sun. */
	SHADE,

	/** Any of these. */
	SUN_TO_SHADE

}
