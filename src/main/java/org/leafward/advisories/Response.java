package org.leafward.advisories;

import java.util.Arrays;
import org.leafward.measure.BadInput;

/** What kind of action is asked for, by the words of CAP 1.2 (section 3.2.2). */
public enum Response {

	/** Make preparations. */
	PREPARE("Prepare", "prepare"),

	/** Execute a planned activity. */
	EXECUTE("Execute", "do what is planned"),

	/** Avoid the subject event. */
	AVOID("Avoid", "keep from doing"),

	/** Take shelter in place. */
	SHELTER("Shelter", "cover or bring in"),

	/** Attend to information sources. */
	MONITOR("Monitor", "keep watch"),

	/** Evaluate the information. */
	ASSESS("Assess", "look and judge"),

	/** The subject event no longer poses a threat. */
	ALL_CLEAR("AllClear", "no more need for it"),

	/** No action recommended. */
	NONE("None", "nothing to do");

	private final String cap;

	private final String words;

	Response(String cap, String words) {
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
	public static Response of(String cap) {
		return Arrays.stream(values())
			.filter((one) -> one.cap.equals(cap))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no response".formatted(cap), "response",
					"choose one of " + Arrays.stream(values()).map(Response::cap).toList()));
	}

}
