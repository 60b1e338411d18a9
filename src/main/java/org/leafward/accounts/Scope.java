package org.leafward.accounts;

import java.util.Locale;

/** What a token may be used for. None of them includes another. */
public enum Scope {

	/** Look at what its person may look at. */
	READ("look at your things"),

	/** Change what its person may change. */
	WRITE("change your things"),

	/** Look at and publish rule packs, as long as its person is a specialist. */
	RULES("change rules");

	private final String words;

	Scope(String words) {
		this.words = words;
	}

	/**
	 * Its name in answers and in the database.
	 * @return for example "read"
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	/**
	 * What it allows, for its person.
	 * @return for example "look at your things"
	 */
	public String words() {
		return this.words;
	}

}
