package org.leafward.lookalikes;

/** On what a case rests when it says what something is taken for. */
public enum Basis {

	/** The answers and the record; the gardener settled on it. */
	ANSWERS("by the answers and the record"),

	/** Somebody at the help desk said so. */
	HELP_DESK("by the help desk"),

	/** A laboratory found it. */
	LABORATORY("by a laboratory");

	private final String words;

	Basis(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
