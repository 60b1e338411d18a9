package org.leafward.advisories.shelf;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.store.SentTable;
import org.springframework.stereotype.Component;

/**
 * All advisories that have not ended for long, in memory. Each node looks now and then
 * whether a message is new, which is one look at an index.
 */
@Component
public class Chains {

	/**
	 * How long a feed keeps what has ended: a reader that asks once a day still hears of
	 * it.
	 */
	public static final Duration KEPT = Duration.ofHours(24);

	/** A message that another node wrote is seen that much later at most. */
	private static final Duration LOOK = Duration.ofSeconds(2);

	private static final Duration AFRESH = Duration.ofMinutes(30);

	private final SentTable table;

	private final Clock clock;

	private volatile Snapshot snapshot = new Snapshot(-1, Instant.EPOCH, Instant.EPOCH, List.of());

	Chains(SentTable table, Clock clock) {
		this.table = table;
		this.clock = clock;
	}

	/** What is known, and since when. */
	private record Snapshot(long seq, Instant loaded, Instant looked, List<Chain> chains) {
	}

	/**
	 * What has not ended, or did within the last day.
	 * @return what was sent last comes first
	 */
	public List<Chain> all() {
		return now().chains();
	}

	/**
	 * A number that rises with every message, for caches.
	 * @return the highest that is known
	 */
	public long version() {
		return now().seq();
	}

	private Snapshot now() {
		Snapshot known = this.snapshot;
		Instant now = this.clock.instant();
		if (now.isBefore(known.looked().plus(LOOK)) && !now.isBefore(known.looked())) {
			return known;
		}
		synchronized (this) {
			long latest = this.table.latest();
			boolean old = known.loaded().equals(Instant.EPOCH) || now.isAfter(known.loaded().plus(AFRESH));
			this.snapshot = (latest != known.seq() || old) ? load(latest, now)
					: new Snapshot(known.seq(), known.loaded(), now, known.chains());
			return this.snapshot;
		}
	}

	private Snapshot load(long latest, Instant now) {
		List<Chain> chains = new ArrayList<>(byAdvisory(this.table.endingAfter(now.minus(KEPT).minus(AFRESH))));
		chains.sort(Comparator.comparing((Chain one) -> one.latest().seq()).reversed());
		return new Snapshot(latest, now, now, List.copyOf(chains));
	}

	private static List<Chain> byAdvisory(List<Message> messages) {
		Map<UUID, List<Message>> all = new LinkedHashMap<>();
		messages.forEach((one) -> all.computeIfAbsent(one.advisory(), (id) -> new ArrayList<>()).add(one));
		return all.values().stream().map(Chain::new).toList();
	}

	/** Has the next question look at the table, on this node. */
	public void look() {
		Snapshot known = this.snapshot;
		this.snapshot = new Snapshot(known.seq(), known.loaded(), Instant.EPOCH, known.chains());
	}

	/**
	 * An advisory, however long ago it ended.
	 * @param advisory its identifier
	 * @return empty when there is none
	 */
	public Optional<Chain> find(UUID advisory) {
		Optional<Chain> known = all().stream().filter((one) -> one.advisory().equals(advisory)).findFirst();
		if (known.isPresent()) {
			return known;
		}
		List<Message> messages = this.table.of(advisory);
		return messages.isEmpty() ? Optional.empty() : Optional.of(new Chain(messages));
	}

}
