package org.leafward.reminders;

import java.util.Arrays;
import java.util.List;
import org.leafward.measure.BadInput;

/** What a person can be told of. */
public enum Topic {

	/** The first day of what is to be done. */
	TO_DO("to-do", "What is to be done", List.of(Manner.OFF, Manner.WEEKLY, Manner.MORNING, Manner.SINGLE)),

	/** The first day of a time in which something must be left. */
	HOLD_OFF("hold-off", "What to leave for a while",
			List.of(Manner.OFF, Manner.WEEKLY, Manner.MORNING, Manner.SINGLE)),

	/** The first day of a ramp of light, and each day on which it waits. */
	RAMP("ramp", "Ramps of light: their first day, and days that wait for weather",
			List.of(Manner.OFF, Manner.WEEKLY, Manner.MORNING, Manner.SINGLE)),

	/** The first day on which to look for something. */
	LOOK_FOR("look-for", "What to look for", List.of(Manner.OFF, Manner.WEEKLY, Manner.MORNING, Manner.SINGLE)),

	/** A night that needs a cover. */
	TONIGHT("tonight", "Frost tonight", List.of(Manner.OFF, Manner.MORNING, Manner.SINGLE)),

	/** A task that was told moved, or is not needed any more. */
	CHANGE("change", "What moved, and what fell away, after you were told",
			List.of(Manner.OFF, Manner.WEEKLY, Manner.MORNING, Manner.SINGLE)),

	/**
	 * A regional advisory that concerns the person's gardens, its changes and its end.
	 */
	ADVISORY("advisory", "Advisories for where you garden", List.of(Manner.OFF, Manner.MORNING, Manner.SINGLE)),

	/** This week and the next. */
	OUTLOOK("outlook", "The weekly outlook", List.of(Manner.OFF, Manner.WEEKLY));

	private final String code;

	private final String words;

	private final List<Manner> manners;

	Topic(String code, String words, List<Manner> manners) {
		this.code = code;
		this.words = words;
		this.manners = manners;
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
	 * How one can be told of it.
	 * @return the choices, the quietest first
	 */
	public List<Manner> manners() {
		return this.manners;
	}

	/**
	 * Reads a code.
	 * @param code what {@link #code()} gives
	 * @return the topic
	 * @throws BadInput if there is no such topic
	 */
	public static Topic of(String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code.equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is nothing that one is told of".formatted(code), "topic",
					"use " + String.join(", ", Arrays.stream(values()).map(Topic::code).toList())));
	}

}
