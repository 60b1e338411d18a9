package org.leafward.workdays;

/**
 * What somebody is trained or licensed for. Names are kept in the database.
 */
public enum Skill {

	/** Trained with power saws, on the ground. */
	SAW("saw use", "chain-saw"),

	/** Holds a licence to apply pesticides. */
	PESTICIDE("pesticide licence", "pesticide-licence"),

	/** Has a valid course in first aid. */
	FIRST_AID("first aid", "first-aid"),

	/** Drives the others or the tools. */
	DRIVING("driving", "driving");

	private final String words;

	private final String code;

	Skill(String words, String code) {
		this.words = words;
		this.code = code;
	}

	/**
	 * Its name in rules.
	 * @return for example "first-aid"
	 */
	public String code() {
		return this.code;
	}

	/**
	 * The skill in words.
	 * @return for example "first aid"
	 */
	public String words() {
		return this.words;
	}

}
