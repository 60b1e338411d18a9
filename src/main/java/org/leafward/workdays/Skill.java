package org.leafward.workdays;

/**
 * What somebody is trained or licensed for. Names are kept in the database.
 */
public enum Skill {

	/** Trained with power saws, on the ground. */
	SAW("saw use"),

	/** Holds a licence to apply pesticides. */
	PESTICIDE("pesticide licence"),

	/** Has a valid course in first aid. */
	FIRST_AID("first aid"),

	/** Drives the others or the tools. */
	DRIVING("driving");

	private final String words;

	Skill(String words) {
		this.words = words;
	}

	/**
	 * The skill in words.
	 * @return for example "first aid"
	 */
	public String words() {
		return this.words;
	}

}
