package org.leafward.workdays;

/** Where a workday stands. Names are kept in the database. */
public enum WorkdayState {

	/** Planned by those who lead; nobody else knows. */
	PROPOSED,

	/** Fixed and published; members sign up. */
	FIXED,

	/** Called off after it was published. */
	CALLED_OFF,

	/** Over, with its hours noted. */
	HELD

}
