package org.leafward.amounts.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How far a ramp has come. Days are counted by the calendar: day 1 is the ramp's first
 * day, and a day keeps its number whatever is held. A held day repeats its step the next
 * day and shifts the rest; after more than three held days in a row the plant goes back
 * one step, as it has grown soft. So the ramp grows at its end, to twice its length at
 * most.
 *
 * @param turns the days from 1 on, past ones included
 * @param complete whether the last step is reached within twice the length; otherwise the
 * plant isn't ready and the ramp is best begun anew in better weather
 */
public record RampProgress(List<Turn> turns, boolean complete) {

	/** So many held days in a row cost nothing yet. From memory. */
	private static final int PATIENCE = 3;

	public RampProgress {
		turns = List.copyOf(turns);
	}

	/** What is known of a past day. */
	public enum Log {

		/** It was done. */
		TAKEN,

		/** The plant stayed in. */
		HELD,

		/**
		 * Nobody said anything; the weather that is known decides, else it counts as
		 * done.
		 */
		UNKNOWN

	}

	/**
	 * A day of the ramp.
	 *
	 * @param number of the day, from 1
	 * @param step which step it has, from 1; on a held day the one that waits
	 * @param past whether the day is over
	 * @param hold why it is held; null when it isn't, or when only the log says so
	 * @param held whether it is held
	 */
	public record Turn(int number, int step, boolean past, @Nullable Hold hold, boolean held) {
	}

	/**
	 * Works out the days.
	 * @param steps how many the ramp has, 1 or more
	 * @param past what is known of day 1 and on, in order; today is the day after the
	 * last
	 * @param holds days that the weather holds, by their number, past or to come; what
	 * was logged as done goes before it
	 * @return days 1 to the end of the ramp
	 */
	public static RampProgress of(int steps, List<Log> past, Map<Integer, Hold> holds) {
		if (steps < 1) {
			throw new IllegalArgumentException("a ramp of %d steps".formatted(steps));
		}
		List<Turn> turns = new ArrayList<>();
		int step = 1;
		int heldInARow = 0;
		for (int number = 1; number <= 2 * steps && step <= steps; number++) {
			boolean over = number <= past.size();
			Log log = over ? past.get(number - 1) : Log.UNKNOWN;
			Hold hold = (log != Log.TAKEN) ? holds.get(number) : null;
			boolean held = log == Log.HELD || hold != null;
			turns.add(new Turn(number, step, over, hold, held));
			heldInARow = held ? heldInARow + 1 : 0;
			if (!held) {
				step++;
			}
			else if (heldInARow == PATIENCE + 1) {
				step = Math.max(1, step - 1);
			}
		}
		return new RampProgress(turns, step > steps);
	}

	/**
	 * The number of the last day.
	 * @return 1 or more
	 */
	public int length() {
		return this.turns.size();
	}

	/**
	 * A day.
	 * @param number from 1
	 * @return its turn, null when the ramp is over by then
	 */
	public @Nullable Turn on(int number) {
		return (number >= 1 && number <= this.turns.size()) ? this.turns.get(number - 1) : null;
	}

}
