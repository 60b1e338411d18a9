package org.leafward.reminders;

/** Where the reminder of one task stands. */
public enum ReminderState {

	/** Waits for its time, or for the next try. */
	PENDING,

	/** A node is sending it; in the table it waits and has the name of a claim. */
	CLAIMED,

	/** A mail server has taken the mail. */
	SENT,

	/** No mail server is set up; the mail stays in the outbox. */
	KEPT,

	/** The mail server will never take the mail. */
	FAILED,

	/** Could not be sent while it was of use. */
	EXPIRED,

	/** The task went away before its reminder was sent. */
	WITHDRAWN

}
