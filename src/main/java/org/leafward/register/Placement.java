package org.leafward.register;

/** Where a planting has its roots. */
public enum Placement {

	GROUND("in the ground"), CONTAINER("in a container");

	private final String words;

	Placement(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
