package org.leafward.workdays;

/** How somebody stands to a workday. Names are kept in the database. */
public enum SignUpState {

	/** Has a place. */
	IN,

	/** Gets the next place that comes free. */
	WAITING,

	/** Said no, or stepped back. */
	OUT

}
