package org.leafward.climate.core;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long a service outside is left alone after it failed. The steps are common
 * practice; no standard sets them.
 */
public final class FetchBackOff {

	/** The longest wait before the spread, and the longest a service may ask for. */
	public static final Duration LONGEST = Duration.ofHours(24);

	private static final List<Duration> STEPS = List.of(Duration.ofMinutes(5), Duration.ofMinutes(15),
			Duration.ofHours(1), Duration.ofHours(3), Duration.ofHours(6), Duration.ofHours(12), LONGEST);

	/** Share of a step by which the wait may be shorter or longer. */
	private static final double JITTER = 0.2;

	private FetchBackOff() {
	}

	/**
	 * How long to wait.
	 * @param failures failures in a row, 1 or more
	 * @param random 0 (inclusive) to 1 (exclusive); spreads the tries of many stations
	 * @param asked how long the service asked to be left alone, if it did
	 * @return 5 min, 15 min, 1, 3, 6, 12, then 24 h, each 20 % shorter to 20 % longer;
	 * never shorter than asked for, but for that at most 24 h
	 * @throws IllegalArgumentException when failures or random is out of bounds
	 */
	public static Duration delay(int failures, double random, @Nullable Duration asked) {
		if (failures < 1 || random < 0 || random >= 1) {
			throw new IllegalArgumentException(
					"failures %d below 1 or random %s outside [0, 1)".formatted(failures, random));
		}
		Duration step = STEPS.get(Math.min(failures, STEPS.size()) - 1);
		Duration wait = Duration.ofMillis(Math.round(step.toMillis() * (1 - JITTER + 2 * JITTER * random)));
		Duration least = (asked == null) ? Duration.ZERO : (asked.compareTo(LONGEST) > 0) ? LONGEST : asked;
		return (wait.compareTo(least) < 0) ? least : wait;
	}

}
