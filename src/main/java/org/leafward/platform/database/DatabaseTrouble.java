package org.leafward.platform.database;

/**
 * The server can't start with the database as it is. The message says what is wrong, the
 * action what to do; both are printed instead of a stack trace.
 */
class DatabaseTrouble extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String action;

	DatabaseTrouble(String what, String action) {
		super(what);
		this.action = action;
	}

	String action() {
		return this.action;
	}

}
