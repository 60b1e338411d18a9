package org.leafward.accounts;

/** What somebody may do beyond looking after their own plants, which everybody may. */
public enum Role {

	/** Plans workdays of a group. */
	COORDINATOR("group coordinator"),

	/** Keeps the rules and serves the people of some counties. */
	SPECIALIST("area specialist"),

	/** Runs the server; may do everything. */
	OPERATOR("operator");

	private final String words;

	Role(String words) {
		this.words = words;
	}

	/**
	 * The role as the trade calls it.
	 * @return for example "area specialist"
	 */
	public String words() {
		return this.words;
	}

}
