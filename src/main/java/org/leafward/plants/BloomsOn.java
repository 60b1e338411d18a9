package org.leafward.plants;

/** The wood that bears the flowers of a woody plant, which decides when to prune it. */
public enum BloomsOn {

	/** Shoots of last year: a cut in winter takes the flowers away. */
	OLD_WOOD,

	/** Shoots of this year: a cut in late winter does no harm. */
	NEW_WOOD,

	/** Both. */
	BOTH

}
