package org.leafward.register;

/** Where seedlings or houseplants stand before they go out. */
public enum RaisedIn {

	/** A window towards the midday sun: south, in the southern hemisphere north. */
	MIDDAY_WINDOW("in a window towards the midday sun"),

	/** A window towards the morning sun: east. */
	MORNING_WINDOW("in a window towards the morning sun"),

	/** A window towards the afternoon sun: west. */
	AFTERNOON_WINDOW("in a window towards the afternoon sun"),

	/** A window that the sun doesn't reach. */
	SUNLESS_WINDOW("in a window without sun"),

	/** Under lamps alone. */
	LAMPS("under lamps"),

	/** In a greenhouse or a cold frame. */
	GREENHOUSE("in a greenhouse or cold frame");

	private final String words;

	RaisedIn(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
