package org.leafward.feeds;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.core.PollIndex.Answer;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Written;
import org.leafward.feeds.store.DocumentTable;
import org.leafward.feeds.store.DocumentTable.Built;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.feeds.poll.Fetches;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.feeds.store.FeedTable;
import org.leafward.feeds.store.FeedTable.Polled;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.util.unit.DataSize;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The stored documents. They are built when a feed is made, when tasks change and once a
 * day after midnight UTC; a request only reads.
 */
@Service
public class FeedDocuments {

	private static final Logger LOG = LoggerFactory.getLogger(FeedDocuments.class);

	private static final Duration RETRY = Duration.ofMinutes(5);

	/**
	 * Documents in a transaction: what each costs besides the building is shared, and
	 * whoever has to mark one of them waits for a few hundredths of a second.
	 */
	private static final int AT_ONCE = 8;

	private final FeedTable feeds;

	private final DocumentTable store;

	private final FeedBuilder builder;

	private final PollBoard board;

	private final Fetches fetches;

	private final DocumentShelf shelf;

	private final TransactionTemplate transaction;

	private final Clock clock;

	FeedDocuments(FeedTable feeds, DocumentTable store, FeedBuilder builder, PollBoard board, Fetches fetches,
			TransactionTemplate transaction, Clock clock,
			@Value("${leafward.feeds.kept-in-memory:64MB}") DataSize keptInMemory) {
		this.board = board;
		this.fetches = fetches;
		this.shelf = new DocumentShelf(keptInMemory.toBytes());
		this.feeds = feeds;
		this.store = store;
		this.builder = builder;
		this.transaction = transaction;
		this.clock = clock;
	}

	/**
	 * Looks a feed up by its secret. A well-formed, an odd and a wrong token cost the
	 * same: one hash and one look-up by it.
	 * @param token anything
	 * @param form of which form to tell
	 * @return empty for an unknown token
	 */
	public Optional<FeedState> find(String token, FeedForm form) {
		byte[] key = sha256(token.getBytes(StandardCharsets.UTF_8));
		Answer known = this.board.find(key, form);
		if (known == null) {
			Optional<Polled> stored = this.feeds.findByHash(key, form);
			stored.filter((polled) -> !polled.state().revoked())
				.ifPresent((polled) -> this.fetches.asked(key, polled.lastFetchedAt()));
			return stored.map(Polled::state);
		}
		byte[] tag = known.tag();
		if (tag == null) {
			return Optional.of(new FeedState(key, form, true, known.expired(), null, null));
		}
		this.fetches.asked(key, null);
		return Optional.of(new FeedState(key, form, false, false, HexFormat.of().formatHex(tag),
				Instant.ofEpochSecond(known.modified())));
	}

	/**
	 * The document as it is stored, even where it is stale; one that is missing is built.
	 * @param state the address as it was found
	 * @return empty when the feed is gone or revoked
	 */
	public Optional<FeedDocument> read(FeedState state) {
		FeedDocument lately = this.shelf.find(state);
		if (lately != null) {
			return Optional.of(lately);
		}
		Optional<FeedDocument> stored = this.store.document(state.key(), state.form());
		if (stored.isEmpty()) {
			this.transaction.executeWithoutResult((status) -> this.store.unrevoked(state.key())
				.ifPresent((claimed) -> build(claimed.in(state.form()))));
			stored = this.store.document(state.key(), state.form());
		}
		stored.ifPresent((document) -> this.shelf.put(state, document));
		return stored;
	}

	/**
	 * Writes down which calendars were asked for here, which otherwise happens within a
	 * second or so.
	 */
	public void noteFetches() {
		while (this.fetches.write() > 0) {
			// the next ones
		}
	}

	/**
	 * Marks the documents that show a site stale. Joins the caller's transaction.
	 * {@link RebuildWorker} builds them.
	 * @param site the site whose tasks changed
	 * @param person whose site it is
	 */
	@Transactional
	public void planChanged(UUID site, UUID person) {
		this.store.markStale(site, person);
	}

	/**
	 * Marks the calendars of people stale. Joins the caller's transaction.
	 * @param people whose
	 * @param others also those of their sites and groups
	 */
	@Transactional
	public void changedFor(Collection<PersonId> people, boolean others) {
		this.store.markStaleOf(people, others);
	}

	/**
	 * Marks calendars about one thing stale. Joins the caller's transaction.
	 * @param kind about what
	 * @param what its identifier; null for all of that kind
	 */
	@Transactional
	public void changed(FeedKind kind, @Nullable UUID what) {
		this.store.markStale(kind, what);
	}

	/**
	 * Builds the documents that show a site at once.
	 * @param site the site
	 * @param person whose site it is
	 */
	@Transactional
	public void buildNow(UUID site, UUID person) {
		this.store.showing(site, person).forEach(this::build);
	}

	/**
	 * Builds the documents of a feed at once.
	 * @param feed the feed
	 */
	void buildAgain(FeedId feed) {
		this.store.of(feed).forEach(this::build);
	}

	/**
	 * Builds documents that are stale or were built for a day before today (UTC), a few
	 * in a transaction. One that can't be built keeps its last document, waits five
	 * minutes and holds up no other.
	 * @param timeBox when to stop, counted from now
	 * @return how many were tried
	 */
	public int rebuildStale(Duration timeBox) {
		Instant end = this.clock.instant().plus(timeBox);
		int tried = 0;
		int some = -1;
		while (some != 0 && !this.clock.instant().isAfter(end)) {
			some = rebuildNext(AT_ONCE);
			tried += some;
		}
		return tried;
	}

	private int rebuildNext(int most) {
		List<Claimed> tried = new ArrayList<>();
		try {
			this.transaction.executeWithoutResult((status) -> {
				this.store.unhurried();
				tried.addAll(this.store.claim(today(), this.clock.instant(), most));
				tried.forEach(this::build);
			});
		}
		catch (RuntimeException ex) {
			if (tried.isEmpty()) {
				throw ex;
			}
			if (tried.size() > 1) {
				// Each by itself, to find the one.
				return IntStream.range(0, tried.size()).map((each) -> rebuildNext(1)).sum();
			}
			Claimed failed = tried.get(0);
			LOG.warn("Feed {} was not built; its last document is served and it is tried again in {}", failed.id(),
					RETRY, ex);
			this.store.retry(failed.id(), failed.form(), this.clock.instant().plus(RETRY));
		}
		return tried.size();
	}

	/**
	 * Builds the first document of a feed that the caller's transaction made. A plan that
	 * changes before that transaction ends can't see the document, so it stays marked for
	 * the job to look once more.
	 * @param feed the feed
	 */
	void buildFirst(Claimed feed) {
		build(feed);
		this.store.markStale(feed.id());
	}

	/**
	 * Builds a document and stores it. The same octets keep their tag and their date, so
	 * that a calendar that asks again is told that nothing changed.
	 * @param feed the feed, locked by the caller's transaction
	 */
	private void build(Claimed feed) {
		Instant now = this.clock.instant();
		FeedDocument before = feed.before();
		Written written = written(feed);
		String etag = HexFormat.of().formatHex(sha256(written.octets()));
		if (before != null && etag.equals(before.etag())) {
			this.store.keep(feed.id(), feed.form(), today(), now);
			return;
		}
		FeedDocument document = new FeedDocument(Packing.pack(written.octets()), etag, moment(before));
		this.store.store(new Built(feed.id(), feed.form(), document, written.aheadBy(), today(), now));
	}

	/**
	 * What a document would be now.
	 * @param feed the feed
	 * @return the same on every node
	 */
	Written written(Claimed feed) {
		FeedDocument before = feed.before();
		return this.builder.build(feed, today(),
				new Before((before != null) ? before.octets() : new byte[0], feed.aheadBy(), moment(before)));
	}

	/** When it changes if it does: now, and later than everything in the one before. */
	private Instant moment(@Nullable FeedDocument before) {
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		return (before != null && !now.isAfter(before.lastModified())) ? before.lastModified().plusSeconds(1) : now;
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
	}

	static byte[] sha256(byte[] octets) {
		try {
			return MessageDigest.getInstance("SHA-256").digest(octets);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
