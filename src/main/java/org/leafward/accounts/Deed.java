package org.leafward.accounts;

/**
 * What is written down for good when somebody does it. Names are kept in the database.
 */
public enum Deed {

	/** Published a version of a rule pack. */
	CHANGED_RULES("changed rules"),

	/** Sent an advisory, changed one or called one off. */
	SENT_ALERT("sent an alert"),

	/** Moved a limit of the watch for a county or a region. */
	MOVED_WATCH_LIMIT("moved a limit of the watch"),

	/** Opened the site of somebody else. */
	SAW_SITE("opened a site"),

	/** Gave somebody a role. */
	GRANTED_ROLE("granted a role"),

	/** Took a role from somebody. */
	WITHDREW_ROLE("withdrew a role"),

	/** Ended the sessions of somebody else. */
	ENDED_SESSIONS("ended all sessions"),

	/** Made a token for programs. */
	MADE_TOKEN("made a token"),

	/** Ended a token. */
	REVOKED_TOKEN("revoked a token"),

	/** Said where a webhook goes, or took another secret for it. */
	SET_WEBHOOK("set a webhook"),

	/** Removed a webhook. */
	REMOVED_WEBHOOK("removed a webhook"),

	/** Took away all that was kept about them. */
	EXPORTED("took a copy of everything"),

	/** Had all deleted that was kept about them. */
	DELETED("deleted an account");

	private final String words;

	Deed(String words) {
		this.words = words;
	}

	/**
	 * The deed in words, after who did it.
	 * @return for example "opened a site"
	 */
	public String words() {
		return this.words;
	}

}
