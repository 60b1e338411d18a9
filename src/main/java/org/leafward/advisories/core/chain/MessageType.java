package org.leafward.advisories.core.chain;

/** What a message does to the advisory, by the words of CAP 1.2 (section 3.2.1). */
public enum MessageType {

	/** Begins it. */
	ALERT("Alert"),

	/** Takes the place of the messages that it refers to. */
	UPDATE("Update"),

	/** Calls it off. */
	CANCEL("Cancel");

	private final String cap;

	MessageType(String cap) {
		this.cap = cap;
	}

	/**
	 * The word of the Common Alerting Protocol.
	 * @return as CAP 1.2 lists it
	 */
	public String cap() {
		return this.cap;
	}

}
