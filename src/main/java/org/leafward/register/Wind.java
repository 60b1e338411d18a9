package org.leafward.register;

/** Exposure of a site to wind. */
public enum Wind {

	SHELTERED("sheltered"), AVERAGE("average"), EXPOSED("exposed");

	private final String words;

	Wind(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
