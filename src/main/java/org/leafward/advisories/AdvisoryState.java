package org.leafward.advisories;

/** Where an advisory stands at a moment. */
public enum AdvisoryState {

	/** Issued, and what it speaks of has not begun. */
	AHEAD("ahead"),

	/** What it speaks of goes on. */
	IN_FORCE("in force"),

	/** Its time is over. */
	OVER("over"),

	/** Called off before its time was over. */
	CANCELLED("called off");

	private final String words;

	AdvisoryState(String words) {
		this.words = words;
	}

	/**
	 * The state in words.
	 * @return for example "in force"
	 */
	public String words() {
		return this.words;
	}

	/**
	 * Whether people should act on it.
	 * @return true before it ends
	 */
	public boolean current() {
		return this == AHEAD || this == IN_FORCE;
	}

}
