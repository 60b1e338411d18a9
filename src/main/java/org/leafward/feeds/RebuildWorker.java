package org.leafward.feeds;

import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Builds stale documents in the background as soon as there are some. What it misses, the
 * job finds within a minute.
 */
@Component
public class RebuildWorker implements DisposableBean {

	private static final Logger LOG = LoggerFactory.getLogger(RebuildWorker.class);

	/** It ends earlier when nothing is stale. */
	private static final Duration ROUND = Duration.ofMinutes(1);

	private final FeedDocuments documents;

	private final ExecutorService threads;

	private final int most;

	private volatile boolean closed;

	/** Rounds that wait or run. */
	private final AtomicInteger rounds = new AtomicInteger();

	/**
	 * Creates the worker.
	 * @param documents what it calls
	 * @param most how many documents are built at a time; 0 for one for each processor,
	 * as they wait for the database in turns
	 */
	RebuildWorker(FeedDocuments documents, @Value("${leafward.feeds.build-threads:0}") int most) {
		this.documents = documents;
		this.most = (most > 0) ? most : Runtime.getRuntime().availableProcessors();
		this.threads = Executors.newFixedThreadPool(this.most, (task) -> {
			Thread thread = new Thread(task, "feeds-build");
			thread.setDaemon(true);
			return thread;
		});
	}

	/** Asks for a round, after the caller's transaction where there is one. */
	public void soon() {
		if (!TransactionSynchronizationManager.isSynchronizationActive()) {
			ask();
			return;
		}
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
			@Override
			public void afterCommit() {
				ask();
			}
		});
	}

	private void ask() {
		// One more than can run, as the last look of a running one may be over.
		if (this.rounds.incrementAndGet() > this.most + 1) {
			this.rounds.decrementAndGet();
			return;
		}
		try {
			this.threads.execute(this::round);
		}
		catch (RejectedExecutionException ex) {
			this.rounds.decrementAndGet();
		}
	}

	private void round() {
		try {
			// What is left of a large change after a round must not wait for the job.
			int built;
			do {
				built = this.documents.rebuildStale(ROUND);
			}
			while (built > 0 && !this.closed);
		}
		catch (RuntimeException ex) {
			LOG.warn("Stale calendars wait for the job", ex);
		}
		finally {
			this.rounds.decrementAndGet();
		}
	}

	@Override
	public void destroy() {
		this.closed = true;
		this.threads.shutdownNow();
	}

}
