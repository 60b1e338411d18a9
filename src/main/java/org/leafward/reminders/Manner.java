package org.leafward.reminders;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/** How a person is told of something. */
public enum Manner {

	/** Not at all. */
	OFF("off", "no"),

	/** In the weekly outlook only. */
	WEEKLY("weekly", "in the weekly outlook"),

	/** Together with what else falls on that morning. */
	MORNING("morning", "together, in the morning"),

	/** In a message of its own. */
	SINGLE("single", "each on its own");

	private final String code;

	private final String words;

	Manner(String code, String words) {
		this.code = code;
		this.words = words;
	}

	/**
	 * Its name in forms, the API and the database.
	 * @return lower case
	 */
	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

	/**
	 * Reads a code.
	 * @param code what {@link #code()} gives
	 * @return the manner
	 * @throws BadInput if there is no such manner
	 */
	public static Manner of(String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code.equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no way to be told".formatted(code), "manner",
					"use " + String.join(", ", Arrays.stream(values()).map(Manner::code).toList())));
	}

}
