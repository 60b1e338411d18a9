package org.leafward.advisories;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/** When people should act, by the words of CAP 1.2 (section 3.2.2). */
public enum Urgency {

	/** Responsive action should be taken immediately. */
	IMMEDIATE("Immediate", "act at once"),

	/** Responsive action should be taken soon, within the next hour. */
	EXPECTED("Expected", "act soon, within the hour"),

	/** Responsive action should be taken in the near future. */
	FUTURE("Future", "act in the days to come"),

	/** Responsive action is no longer required. */
	PAST("Past", "nothing more to do"),

	/** Urgency not known. */
	UNKNOWN("Unknown", "time not known");

	private final String cap;

	private final String words;

	Urgency(String cap, String words) {
		this.cap = cap;
		this.words = words;
	}

	/**
	 * The word of the Common Alerting Protocol.
	 * @return as CAP 1.2 lists it
	 */
	public String cap() {
		return this.cap;
	}

	/**
	 * What that means to a reader.
	 * @return a few words
	 */
	public String words() {
		return this.words;
	}

	/**
	 * The constant of a word of the protocol.
	 * @param cap the word, exactly
	 * @return the constant
	 * @throws BadInput when there is none
	 */
	public static Urgency of(String cap) {
		return Arrays.stream(values())
			.filter((one) -> one.cap.equals(cap))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no urgency".formatted(cap), "urgency",
					"choose one of " + Arrays.stream(values()).map(Urgency::cap).toList()));
	}

}
