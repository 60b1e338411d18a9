package org.leafward.lookalikes;

/** Where a case stands. */
public enum CaseState {

	/** Questions can be answered. */
	OPEN("open"),

	/** A sample is on its way to a laboratory. */
	WAITING("waiting for a laboratory"),

	/** It was said what it is taken for. */
	CLOSED("closed");

	private final String words;

	CaseState(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
