package org.leafward.care.core.review;

import java.util.Locale;

/** What became of a task that asked for something. */
public enum Outcome {

	/** Done by its last day, or before its first. */
	ON_TIME("done on time"),

	/** Done after its last day. */
	LATE("done late"),

	/** Left out on purpose, with a reason. */
	LEFT_OUT("left out"),

	/** Its days passed, and nobody did it or left it out. */
	MISSED("missed"),

	/** Rules or weather took it back. */
	NOT_NEEDED("no longer needed"),

	/** Its days are not over. */
	OPEN("still open");

	private final String words;

	Outcome(String words) {
		this.words = words;
	}

	/**
	 * The outcome for readers.
	 * @return for example "done on time"
	 */
	public String words() {
		return this.words;
	}

	/**
	 * The name used by the API and in tables.
	 * @return in lower case with hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
