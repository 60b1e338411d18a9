package org.leafward.feeds;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.core.FeedLife;
import org.leafward.feeds.store.DocumentTable;
import org.leafward.feeds.store.DocumentTable.Built;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.feeds.store.FeedTable;
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

	/**
	 * A person with many sites has a change for each of them in a row. A document built
	 * so shortly before is left to the job.
	 */
	private static final Duration JUST_BUILT = Duration.ofSeconds(10);

	private static final Duration RETRY = Duration.ofMinutes(5);

	/** How exactly it is known when a calendar last asked; saves a write per request. */
	private static final Duration FETCH_NOTED = Duration.ofHours(1);

	private final FeedTable feeds;

	private final DocumentTable store;

	private final FeedBuilder builder;

	private final TransactionTemplate transaction;

	private final Clock clock;

	FeedDocuments(FeedTable feeds, DocumentTable store, FeedBuilder builder, TransactionTemplate transaction,
			Clock clock) {
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
	 * @return empty for an unknown token
	 */
	public Optional<FeedState> find(String token) {
		Optional<FeedState> found = this.feeds.findByHash(sha256(token.getBytes(StandardCharsets.UTF_8)));
		found.filter((state) -> !state.revoked()).ifPresent(this::noteFetch);
		return found;
	}

	private void noteFetch(FeedState state) {
		Instant now = this.clock.instant();
		Instant last = state.lastFetchedAt();
		if (last == null || !last.plus(FETCH_NOTED).isAfter(now)) {
			this.feeds.noteFetch(state.id(), now);
			if (FeedLife.of(state.createdAt(), last).announcedOn(today())) {
				// It says that it ends, and now it doesn't.
				this.store.markStale(state.id());
			}
		}
	}

	/**
	 * The document as it is stored, even where it is stale; one that is missing is built.
	 * @param feed the feed
	 * @return empty when the feed is gone or revoked
	 */
	public Optional<FeedDocument> read(FeedId feed) {
		Optional<FeedDocument> stored = this.store.document(feed);
		if (stored.isPresent()) {
			return stored;
		}
		this.transaction
			.executeWithoutResult((status) -> this.store.unrevoked(feed).ifPresent((claimed) -> build(claimed)));
		return this.store.document(feed);
	}

	/**
	 * Marks the documents that show a site stale and builds them again. Joins the
	 * caller's transaction.
	 * @param site the site whose tasks changed
	 * @param person whose site it is
	 */
	@Transactional
	public void planChanged(UUID site, UUID person) {
		Instant justBefore = this.clock.instant().minus(JUST_BUILT);
		for (Claimed claimed : this.store.markStale(site, person)) {
			if (claimed.kind() == FeedKind.SITE || !claimed.builtAt().isAfter(justBefore)) {
				build(claimed);
			}
		}
	}

	/**
	 * Builds documents that are stale or were built for a day before today (UTC), one
	 * transaction each. One that can't be built keeps its last document, waits five
	 * minutes and holds up no other.
	 * @param timeBox when to stop, counted from now
	 * @return how many were tried
	 */
	public int rebuildStale(Duration timeBox) {
		Instant end = this.clock.instant().plus(timeBox);
		int tried = 0;
		while (!this.clock.instant().isAfter(end) && rebuildNext()) {
			tried++;
		}
		return tried;
	}

	private boolean rebuildNext() {
		AtomicReference<@Nullable FeedId> tried = new AtomicReference<>();
		try {
			this.transaction.executeWithoutResult(
					(status) -> this.store.claimStale(today(), this.clock.instant()).ifPresent((claimed) -> {
						tried.set(claimed.id());
						build(claimed);
					}));
		}
		catch (RuntimeException ex) {
			FeedId failed = tried.get();
			if (failed == null) {
				throw ex;
			}
			LOG.warn("Feed {} was not built; its last document is served and it is tried again in {}", failed, RETRY,
					ex);
			this.store.retry(failed, this.clock.instant().plus(RETRY));
		}
		return tried.get() != null;
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
		LocalDate day = today();
		byte[] octets = this.builder.build(feed, day);
		String etag = HexFormat.of().formatHex(sha256(octets));
		if (etag.equals(feed.etag())) {
			this.store.keep(feed.id(), day, now);
			return;
		}
		Instant modified = now.truncatedTo(ChronoUnit.SECONDS);
		if (feed.lastModified() != null && !modified.isAfter(feed.lastModified())) {
			modified = feed.lastModified().plusSeconds(1);
		}
		this.store.store(new Built(feed.id(), new FeedDocument(octets, gzip(octets), etag, modified), day, now));
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

	private static byte[] gzip(byte[] octets) {
		ByteArrayOutputStream packed = new ByteArrayOutputStream(octets.length / 4);
		try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
			out.write(octets);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return packed.toByteArray();
	}

}
