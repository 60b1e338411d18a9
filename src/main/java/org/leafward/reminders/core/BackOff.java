package org.leafward.reminders.core;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** When to try again after a mail server could not take a mail. */
public final class BackOff {

	/**
	 * RFC 5321 section 4.5.4.1 asks for 30 minutes between tries in general and allows
	 * other waits where the reason is known; the first two are short because most trouble
	 * is a relay that restarts or a server that wants to be asked twice.
	 */
	private static final List<Duration> STEPS = List.of(Duration.ofMinutes(5), Duration.ofMinutes(15),
			Duration.ofHours(1), Duration.ofHours(3), Duration.ofHours(6));

	/** Share of a step by which the wait may be shorter or longer. */
	private static final double JITTER = 0.2;

	private BackOff() {
	}

	/**
	 * How long to wait.
	 * @param attempts tries so far, 1 or more
	 * @param random 0 (inclusive) to 1 (exclusive); spreads the tries of many mails
	 * @return 5 min, 15 min, 1 h, 3 h, then 6 h, each 20 % shorter to 20 % longer
	 */
	public static Duration delay(int attempts, double random) {
		if (attempts < 1 || random < 0 || random >= 1) {
			throw new IllegalArgumentException(
					"attempts %d below 1 or random %s outside [0, 1)".formatted(attempts, random));
		}
		Duration step = STEPS.get(Math.min(attempts, STEPS.size()) - 1);
		return Duration.ofMillis(Math.round(step.toMillis() * (1 - JITTER + 2 * JITTER * random)));
	}

	/**
	 * When to try again.
	 * @param now the time of the failure
	 * @param attempts tries so far, 1 or more
	 * @param random 0 (inclusive) to 1 (exclusive)
	 * @param expiresAt from when the mail is no longer worth sending
	 * @return empty when that would be too late
	 */
	public static Optional<Instant> nextTry(Instant now, int attempts, double random, Instant expiresAt) {
		Instant next = now.plus(delay(attempts, random));
		return next.isBefore(expiresAt) ? Optional.of(next) : Optional.empty();
	}

}
