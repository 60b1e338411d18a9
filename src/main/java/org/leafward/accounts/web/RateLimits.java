package org.leafward.accounts.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * How often somebody may try. Each node counts for itself, so behind several of them the
 * bounds are that much wider.
 */
@Component
class RateLimits {

	/** More askers than that at a time are an attack; the longest idle are forgotten. */
	private static final long MOST_ASKERS = 100_000;

	/** What is limited. */
	enum Kind {

		/** Links by mail, by who asks. */
		LINKS_OF_ASKER(10, Duration.ofMinutes(10)),

		/** Links by mail, by the address that gets them. */
		LINKS_TO_ADDRESS(4, Duration.ofMinutes(30)),

		/** Secrets that were wrong: tokens and links. */
		GUESSES(30, Duration.ofMinutes(10)),

		/** Files and other large bodies. */
		UPLOADS(120, Duration.ofMinutes(10)),

		/** Calls of the API that change something, by token. */
		CALLS(1200, Duration.ofMinutes(10)),

		/** Trial messages, by person. */
		TRIALS(5, Duration.ofHours(1)),

		/** Whatever strangers may create. */
		CREATIONS(20, Duration.ofHours(1));

		private final int times;

		private final Duration within;

		Kind(int times, Duration within) {
			this.times = times;
			this.within = within;
		}

	}

	/** Who wants what. */
	private record Asker(Kind kind, String who) {
	}

	private final Cache<Asker, Bucket> buckets = Caffeine.newBuilder()
		.maximumSize(MOST_ASKERS)
		.expireAfterAccess(Duration.ofHours(2))
		.build();

	private final boolean on;

	RateLimits(@Value("${leafward.rate-limits:true}") boolean on) {
		this.on = on;
	}

	/**
	 * Uses one try up.
	 * @param kind of what
	 * @param who by whom: an address, a person
	 * @return seconds to wait; 0 when it may go on
	 */
	long waitFor(Kind kind, String who) {
		if (!this.on) {
			return 0;
		}
		var probe = bucket(kind, who).tryConsumeAndReturnRemaining(1);
		return probe.isConsumed() ? 0 : Math.max(1, Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1);
	}

	/**
	 * Whether all tries are used up, without using one.
	 * @param kind of what
	 * @param who by whom
	 * @return seconds to wait; 0 when there are some left
	 */
	long blocked(Kind kind, String who) {
		if (!this.on) {
			return 0;
		}
		var probe = bucket(kind, who).estimateAbilityToConsume(1);
		return probe.canBeConsumed() ? 0
				: Math.max(1, Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1);
	}

	private Bucket bucket(Kind kind, String who) {
		return this.buckets.get(new Asker(kind, who),
				(asker) -> Bucket.builder()
					.addLimit(Bandwidth.builder().capacity(kind.times).refillGreedy(kind.times, kind.within).build())
					.build());
	}

}
