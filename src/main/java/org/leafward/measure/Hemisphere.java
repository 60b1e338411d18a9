package org.leafward.measure;

/** Which half of the earth a place lies on, and so when its summer is. */
public enum Hemisphere {

	/** Summer around July. */
	NORTH,

	/** Summer around January. */
	SOUTH

}
