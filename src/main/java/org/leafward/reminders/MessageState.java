package org.leafward.reminders;

/** Where a mail stands. */
public enum MessageState {

	/** Not yet taken by a mail server; it is tried again. */
	WAITING,

	/** A mail server has taken it. */
	SENT,

	/** No mail server was set up when it was due; it stays in the outbox to be read. */
	KEPT,

	/** The mail server will never take it. */
	FAILED,

	/** It lost its use before a mail server took it. */
	DROPPED

}
