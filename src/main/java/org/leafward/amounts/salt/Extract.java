package org.leafward.amounts.salt;

/** How a laboratory drew the water in which it measured. */
public enum Extract {

	/** From a paste of soil that is just saturated, the reference for all limits. */
	SATURATED_PASTE("saturated paste"),

	/** From one part of soil shaken with two parts of water. */
	ONE_TO_TWO("one part of soil in two of water (1:2)");

	private final String words;

	Extract(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
