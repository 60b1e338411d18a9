package org.leafward.care;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.IntStream;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.store.ExplanationTable;
import org.leafward.care.store.ReplanTable;
import org.leafward.care.store.SitePlanTable;
import org.leafward.care.store.WordingTable;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Derives the tasks of sites and writes the difference, at once or by way of a queue that
 * all nodes share. Deriving twice writes nothing the second time.
 */
@Service
public class Replanning {

	private static final Logger LOG = LoggerFactory.getLogger(Replanning.class);

	private static final Duration RETRY_AFTER = Duration.ofMinutes(5);

	/** Sites of one transaction. */
	private static final int BATCH = 25;

	private static final int PIECE = 5_000;

	private static final int MOST_WORKERS = 4;

	private final Register register;

	private final Derivation derivation;

	private final ReplanTable queue;

	private final SitePlanTable plans;

	private final WordingTable wordings;

	private final ExplanationTable explanations;

	private final Clock clock;

	private final TransactionTemplate transaction;

	/**
	 * Held by the call that drains on this node: more threads would only wait for each
	 * other.
	 */
	private final Lock draining = new ReentrantLock(true);

	Replanning(Register register, Derivation derivation, ReplanTable queue, SitePlanTable plans, WordingTable wordings,
			ExplanationTable explanations, Clock clock, PlatformTransactionManager transactions) {
		this.register = register;
		this.derivation = derivation;
		this.queue = queue;
		this.plans = plans;
		this.wordings = wordings;
		this.explanations = explanations;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
		this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
	}

	/**
	 * Derives the tasks of one site in a transaction of its own.
	 * @param site the site; nothing happens when it is not there
	 * @return what was written
	 */
	public Optional<PlanDiff> derive(SiteId site) {
		Map<SiteId, PlanDiff> diffs = this.transaction.execute((status) -> this.derivation.derive(List.of(site)));
		return Optional.ofNullable((diffs != null) ? diffs.get(site) : null);
	}

	/**
	 * Asks for sites to be derived by {@link #drain}, on this node or another.
	 * @param sites the sites
	 */
	public void ask(List<SiteId> sites) {
		for (int from = 0; from < sites.size(); from += PIECE) {
			List<SiteId> piece = sites.subList(from, Math.min(from + PIECE, sites.size()));
			this.transaction.executeWithoutResult((status) -> this.queue.ask(piece, this.clock.instant()));
		}
	}

	/** Asks for every site to be derived, piece by piece. */
	public void askAll() {
		List<SiteId> piece = this.register.idsAfter(null, PIECE);
		while (!piece.isEmpty()) {
			ask(piece);
			piece = this.register.idsAfter(piece.get(piece.size() - 1), PIECE);
		}
	}

	/**
	 * Derives due sites until there are none left or the time is up, some in each
	 * transaction and on as many threads as there are processors, at most
	 * {@value #MOST_WORKERS}. What a killed node had begun comes back to the queue by
	 * itself. A site that fails is put off and does not stop the others. Calls on one
	 * node take turns.
	 * @param limit how long to wait for the turn and to go on
	 * @return number of sites derived
	 */
	public int drain(Duration limit) {
		Instant end = this.clock.instant().plus(limit);
		try {
			if (!this.draining.tryLock(limit.toMillis(), TimeUnit.MILLISECONDS)) {
				return 0;
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			return 0;
		}
		try {
			return drain(end);
		}
		finally {
			this.draining.unlock();
		}
	}

	private int drain(Instant end) {
		int workers = Math.max(1, Math.min(MOST_WORKERS, Runtime.getRuntime().availableProcessors()));
		ExecutorService threads = Executors.newFixedThreadPool(workers);
		try {
			List<Future<Integer>> working = IntStream.range(0, workers)
				.mapToObj((worker) -> threads.submit(() -> work(end)))
				.toList();
			int derived = 0;
			for (Future<Integer> worker : working) {
				derived += worker.get();
			}
			return derived;
		}
		catch (ExecutionException ex) {
			throw new IllegalStateException("Deriving tasks stopped: " + ex.getCause(), ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			return 0;
		}
		finally {
			threads.shutdownNow();
		}
	}

	private int work(Instant end) {
		int derived = 0;
		// After a failure each site gets a transaction of its own for a while, so that
		// the one at fault is found and the others are not held up.
		int alone = 0;
		while (!this.clock.instant().isAfter(end)) {
			int most = (alone > 0) ? 1 : BATCH;
			List<SiteId> taken = new ArrayList<>();
			try {
				this.transaction.executeWithoutResult((status) -> {
					taken.addAll(this.queue.take(this.clock.instant(), most));
					this.derivation.derive(taken);
				});
				if (taken.isEmpty()) {
					break;
				}
				derived += taken.size();
				alone = Math.max(0, alone - 1);
			}
			catch (RuntimeException ex) {
				if (taken.isEmpty()) {
					throw ex;
				}
				if (taken.size() > 1) {
					LOG.warn("Deriving {} sites together failed; each is tried alone", taken.size(), ex);
					alone = taken.size();
				}
				else {
					putOff(taken.get(0), ex);
				}
			}
		}
		return derived;
	}

	private void putOff(SiteId site, RuntimeException ex) {
		LOG.error("Deriving the tasks of site {} failed; it is tried again in {}", site, RETRY_AFTER, ex);
		Instant later = this.clock.instant().plus(RETRY_AFTER);
		this.transaction
			.executeWithoutResult((status) -> this.queue.putOff(site, later, String.valueOf(ex.getMessage())));
	}

	/**
	 * How far replanning is, over all nodes.
	 * @param since from when on derived sites are counted
	 * @return the progress
	 */
	public ReplanProgress progress(Instant since) {
		ReplanTable.Depth depth = this.queue.depth();
		return new ReplanProgress(depth.sites(), depth.oldest(), depth.failing(), depth.lastError(), since,
				this.plans.derivedSince(since));
	}

	/**
	 * Sites that failed and wait for their next try.
	 * @param most how many at most, 1 to 200
	 * @return those that are tried next first
	 */
	public List<ReplanFailure> failures(int most) {
		return this.queue.failures(most);
	}

	/** Forgets explanations and words that no task has any more. */
	public void tidy() {
		this.transaction.executeWithoutResult((status) -> {
			this.plans.lockAll();
			LOG.info("{} unused explanations and {} unused wordings forgotten", this.explanations.forgetUnused(),
					this.wordings.forgetUnused());
		});
	}

}
