package org.leafward.feeds.poll;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.store.PollTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Notes when calendars are asked for, exact to an hour, behind the answers: no poll waits
 * for a write. What is lost when a server dies costs nothing, as programs ask again.
 */
@Component
public class Fetches implements DisposableBean {

	private static final Logger LOG = LoggerFactory.getLogger(Fetches.class);

	/** How exactly it is known when a calendar was last asked for. */
	private static final Duration EXACT_TO = Duration.ofHours(1);

	/** More are left for their next poll. */
	private static final int MOST_WAITING = 100_000;

	private static final int AT_ONCE = 500;

	private final PollTable table;

	private final PollBoard board;

	private final TransactionTemplate transaction;

	private final Clock clock;

	private final Duration pause;

	private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>(MOST_WAITING);

	private final ScheduledExecutorService writer = Executors.newSingleThreadScheduledExecutor((task) -> {
		Thread thread = new Thread(task, "feeds-fetches");
		thread.setDaemon(true);
		return thread;
	});

	private boolean begun;

	Fetches(PollTable table, PollBoard board, PlatformTransactionManager transactions, Clock clock,
			@Value("${leafward.feeds.note-fetches-every:1s}") Duration pause) {
		this.table = table;
		this.board = board;
		this.transaction = new TransactionTemplate(transactions);
		this.clock = clock;
		this.pause = pause;
	}

	/**
	 * Notes that an address was asked.
	 * @param hash SHA-256 of its token
	 * @param before when it was last asked, as far as the caller knows; null for not
	 * known
	 */
	public void asked(byte[] hash, @Nullable Instant before) {
		Instant now = this.clock.instant();
		boolean news = this.board.ready() ? this.board.asked(hash, (int) (now.getEpochSecond() / 3600))
				: before == null || !before.plus(EXACT_TO).isAfter(now);
		if (news) {
			this.waiting.offer(hash);
		}
	}

	/**
	 * Writes down what waits, up to 500.
	 * @return how many
	 */
	public int write() {
		List<byte[]> some = new ArrayList<>();
		this.waiting.drainTo(some, AT_ONCE);
		if (!some.isEmpty()) {
			Instant at = this.clock.instant();
			this.transaction.executeWithoutResult((status) -> this.table.noteFetches(some, at));
		}
		return some.size();
	}

	@EventListener(ApplicationReadyEvent.class)
	synchronized void start() {
		if (!this.begun) {
			this.begun = true;
			this.writer.scheduleWithFixedDelay(this::writeOrTell, this.pause.toMillis(), this.pause.toMillis(),
					TimeUnit.MILLISECONDS);
		}
	}

	private void writeOrTell() {
		try {
			write();
		}
		catch (RuntimeException ex) {
			LOG.warn("It isn't noted that some calendars were asked for: {}", ex.toString());
		}
	}

	@Override
	public void destroy() {
		this.writer.shutdownNow();
	}

}
