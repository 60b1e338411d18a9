package org.leafward.register;

/** How a laboratory drew the water in which it measured the conductivity. */
public enum SoilExtract {

	/** From a paste of soil that is just saturated. */
	SATURATED_PASTE("a saturated paste"),

	/** From one part of soil in two parts of water. */
	ONE_TO_TWO("one part of soil in two of water (1:2)");

	private final String words;

	SoilExtract(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
