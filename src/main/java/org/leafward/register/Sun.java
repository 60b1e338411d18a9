package org.leafward.register;

/** Light that a site gets. */
public enum Sun {

	FULL_SUN("full sun"), PART_SHADE("part shade"), SHADE("shade");

	private final String words;

	Sun(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
