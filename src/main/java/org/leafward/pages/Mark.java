package org.leafward.pages;

/**
 * How an entry is drawn wherever it appears: by a shape and a word, and by a colour that
 * only repeats them.
 */
public enum Mark {

	/** Work to do: solid. */
	DO("Do", "mark-do"),

	/** Something to leave alone for a while: hatched. */
	HOLD_OFF("Hold off", "mark-hold-off"),

	/** A plant's way from shade to light: a gradient of light. */
	RAMP("Harden off", "mark-ramp"),

	/** Something to look for: dotted. */
	WATCH("Watch", "mark-watch"),

	/** What was to be done and is: hollow, with a tick. */
	DONE("Done", "mark-done"),

	/** A fact of the weather: thin lines. */
	WEATHER("Weather", "mark-weather");

	private final String word;

	private final String css;

	Mark(String word, String css) {
		this.word = word;
		this.css = css;
	}

	public String word() {
		return this.word;
	}

	/**
	 * The class that the style sheet knows.
	 * @return for example {@code mark-do}
	 */
	public String css() {
		return this.css;
	}

}
