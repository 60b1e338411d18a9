package org.leafward.feeds;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.leafward.feeds.store.FeedTable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Ends feeds that nobody uses any more. */
@Service
public class FeedExpiry {

	private static final int AT_ONCE = 100;

	private final FeedTable feeds;

	private final ApplicationEventPublisher events;

	private final TransactionTemplate transaction;

	private final Clock clock;

	FeedExpiry(FeedTable feeds, ApplicationEventPublisher events, TransactionTemplate transaction, Clock clock) {
		this.feeds = feeds;
		this.events = events;
		this.transaction = transaction;
		this.clock = clock;
	}

	/**
	 * Ends the feeds whose last day has come; those who listen are told of each.
	 * @return how many
	 */
	public int expire() {
		int ended = 0;
		int now;
		do {
			now = Objects.requireNonNull(this.transaction.execute((status) -> some()));
			ended += now;
		}
		while (now == AT_ONCE);
		return ended;
	}

	private int some() {
		Instant at = this.clock.instant();
		List<FeedExpired> ended = this.feeds.expire(LocalDate.ofInstant(at, ZoneOffset.UTC), at, AT_ONCE);
		ended.forEach(this.events::publishEvent);
		return ended.size();
	}

}
