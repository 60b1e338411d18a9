package org.leafward.advisories;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/** How sure it is, by the words of CAP 1.2 (section 3.2.2). */
public enum Certainty {

	/** Determined to have occurred or to be ongoing. */
	OBSERVED("Observed", "seen already"),

	/** Probability above one half. */
	LIKELY("Likely", "more likely than not"),

	/** Possible but not likely. */
	POSSIBLE("Possible", "may come"),

	/** Not expected to occur. */
	UNLIKELY("Unlikely", "hardly to be expected"),

	/** Certainty unknown. */
	UNKNOWN("Unknown", "not known how sure");

	private final String cap;

	private final String words;

	Certainty(String cap, String words) {
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
	public static Certainty of(String cap) {
		return Arrays.stream(values())
			.filter((one) -> one.cap.equals(cap))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no certainty".formatted(cap), "certainty",
					"choose one of " + Arrays.stream(values()).map(Certainty::cap).toList()));
	}

}
