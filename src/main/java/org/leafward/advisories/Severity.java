package org.leafward.advisories;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/** How much harm it can do, by the words of CAP 1.2 (section 3.2.2). */
public enum Severity {

	/** Extraordinary threat to life or property. */
	EXTREME("Extreme", "extraordinary harm"),

	/** Significant threat. */
	SEVERE("Severe", "heavy losses"),

	/** Possible threat. */
	MODERATE("Moderate", "clear damage"),

	/** Minimal to no known threat. */
	MINOR("Minor", "little damage"),

	/** Severity unknown. */
	UNKNOWN("Unknown", "harm not known");

	private final String cap;

	private final String words;

	Severity(String cap, String words) {
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
	public static Severity of(String cap) {
		return Arrays.stream(values())
			.filter((one) -> one.cap.equals(cap))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no severity".formatted(cap), "severity",
					"choose one of " + Arrays.stream(values()).map(Severity::cap).toList()));
	}

}
