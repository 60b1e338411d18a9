package org.leafward.feeds;

import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.language.Speech;
import org.leafward.measure.BadInput;

/**
 * What a calendar holds and how it speaks.
 *
 * @param speech language and units
 * @param parts what it holds, at least one
 * @param alarm when an alarm rings on the first day of what is to be done; null for none
 * @param behind days shown before today, 0 to 180
 * @param ahead days shown after today, 7 to 400
 */
public record FeedOptions(Speech speech, Set<FeedPart> parts, @Nullable LocalTime alarm, int behind, int ahead) {

	/** Most days behind. */
	public static final int MOST_BEHIND = 180;

	/** Most days ahead: a year and a season's slack; common practice. */
	public static final int MOST_AHEAD = 400;

	private static final int LEAST_AHEAD = 7;

	/**
	 * Everything, without alarms: most programs ignore them, and some ring strangers'.
	 */
	public static final FeedOptions USUAL = of(Speech.USUAL);

	/**
	 * Checks the bounds.
	 * @throws BadInput when a part is missing or a number is outside of its bounds
	 */
	public FeedOptions {
		if (parts.isEmpty()) {
			throw new BadInput("the calendar would hold nothing", "parts", "tick at least one");
		}
		parts = Set.copyOf(parts);
		within("behind", "days behind", behind, 0, MOST_BEHIND);
		within("ahead", "days ahead", ahead, LEAST_AHEAD, MOST_AHEAD);
		if (alarm != null) {
			alarm = alarm.withSecond(0).withNano(0);
		}
	}

	/**
	 * Everything, in a language and units.
	 * @param speech language and units
	 * @return without alarms, as far back and ahead as there is
	 */
	public static FeedOptions of(Speech speech) {
		return new FeedOptions(speech, EnumSet.allOf(FeedPart.class), null, MOST_BEHIND, MOST_AHEAD);
	}

	private static void within(String field, String what, int value, int low, int high) {
		if (value < low || value > high) {
			throw new BadInput("%,d %s is outside of %d to %d".formatted(value, what, low, high), field,
					"give a number between the two");
		}
	}

	/**
	 * Whether tasks of a kind are in it.
	 * @param kind the kind
	 * @return false when its part was left out
	 */
	public boolean has(TaskKind kind) {
		return this.parts.stream().anyMatch((part) -> part.kind() == kind);
	}

}
