package org.leafward.advisories;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/**
 * What it is about, by the words of CAP 1.2 (section 3.2.2), as far as gardens need them.
 */
public enum Category {

	/** Meteorological. */
	MET("Met", "weather"),

	/** Pollution and other environmental. */
	ENV("Env", "soil, water and plant health"),

	/** Medical and public health. */
	HEALTH("Health", "health of people"),

	/** General emergency and public safety. */
	SAFETY("Safety", "safety"),

	/** Other events. */
	OTHER("Other", "something else");

	private final String cap;

	private final String words;

	Category(String cap, String words) {
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
	public static Category of(String cap) {
		return Arrays.stream(values())
			.filter((one) -> one.cap.equals(cap))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no category".formatted(cap), "category",
					"choose one of " + Arrays.stream(values()).map(Category::cap).toList()));
	}

}
