package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Queue;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.dispatch.Drafts.Sorted;
import org.leafward.reminders.dispatch.Ledger.Outgoing;
import org.leafward.reminders.dispatch.Ledger.Result;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.ClaimTable.Bounds;
import org.leafward.reminders.store.ClaimTable.Reaped;
import org.leafward.reminders.store.Claimed;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Sends what is due: claims the due rows of some people, writes their messages, hands
 * them on, records what came of it; then the next people. Claiming, writing and recording
 * are short transactions and messages leave between them. A node that dies in between
 * leaves claims that end by themselves; a message that had left by then goes out once
 * more under the same Message-ID. These are the messages being handed on at that moment
 * and those not yet recorded, {@value #UNRECORDED} and a few at most.
 */
public class Dispatcher implements AutoCloseable {

	static final Duration TIME_BOX = Duration.ofSeconds(25);

	/** Tasks in one message; a person with more gets a second one. */
	static final int MOST_TASKS = 50;

	/** Small, as a node that dies may have handed on as many without a record. */
	static final int UNRECORDED = 32;

	/** While one waits for the database another one writes messages. */
	private static final int LOOPS = 2;

	private static final Bounds BOUNDS = new Bounds(200, MOST_TASKS);

	private static final Logger LOG = LoggerFactory.getLogger(Dispatcher.class);

	private final ClaimTable claims;

	private final Drafts drafts;

	private final Materialiser materialiser;

	private final Map<String, Channel> channels;

	private final Ledger ledger;

	private final ExecutorService senders;

	private final int threads;

	private final Duration claim;

	private final DispatchWatch watch;

	private final Clock clock;

	/**
	 * Creates the service.
	 * @param claims rows that are due
	 * @param drafts decides what is sent
	 * @param materialiser makes rows anew for tasks that moved
	 * @param channels where messages go
	 * @param ledger writes down what happens to a message
	 * @param threads how many messages leave at once through a channel, 1 to 64
	 * @param claim how long a claim lasts, far longer than its messages can take with all
	 * time-outs
	 * @param watch is told what comes of messages
	 * @param clock what time it is
	 */
	Dispatcher(ClaimTable claims, Drafts drafts, Materialiser materialiser, List<Channel> channels, Ledger ledger,
			int threads, Duration claim, DispatchWatch watch, Clock clock) {
		this.claims = claims;
		this.drafts = drafts;
		this.materialiser = materialiser;
		this.channels = channels.stream().collect(Collectors.toMap(Channel::code, (channel) -> channel));
		this.ledger = ledger;
		this.threads = threads;
		this.claim = claim;
		this.watch = watch;
		this.senders = Executors.newCachedThreadPool((task) -> {
			Thread thread = new Thread(task, "reminders-send");
			thread.setDaemon(true);
			return thread;
		});
		this.clock = clock;
	}

	/**
	 * Sends until nothing is due, the time box ends or nobody can be reached. Each
	 * channel goes its own pace, so that one whose other side hangs holds up no other.
	 * @return how many messages were handed on or kept
	 */
	public int run() {
		Instant end = this.clock.instant().plus(TIME_BOX);
		List<Future<Integer>> loops = new ArrayList<>();
		for (String channel : this.channels.keySet()) {
			AtomicBoolean closed = new AtomicBoolean();
			for (int i = 0; i < Math.min(LOOPS, this.threads); i++) {
				loops.add(this.senders.submit(() -> run(channel, end, closed)));
			}
		}
		int messages = 0;
		RuntimeException trouble = null;
		for (Future<Integer> loop : loops) {
			try {
				messages += result(loop);
			}
			catch (IllegalStateException ex) {
				// The others are waited for all the same.
				trouble = ex;
			}
		}
		if (trouble != null) {
			throw trouble;
		}
		return messages;
	}

	private int run(String channel, Instant end, AtomicBoolean closed) {
		int messages = 0;
		while (!closed.get() && this.clock.instant().isBefore(end)) {
			UUID token = UUID.randomUUID();
			Instant now = this.clock.instant();
			List<Claimed> rows = this.claims.claim(now, now.plus(this.claim), token, BOUNDS, channel);
			if (rows.isEmpty()) {
				break;
			}
			messages += send(token, rows, closed);
		}
		return messages;
	}

	private static int result(Future<Integer> loop) {
		try {
			return loop.get();
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException("interrupted while messages leave; their claims end by themselves", ex);
		}
		catch (ExecutionException ex) {
			throw new IllegalStateException("reminders could not be claimed", ex.getCause());
		}
	}

	/**
	 * Puts back what dead nodes had claimed.
	 * @return how many reminders, and messages among them that may have left
	 */
	public Reaped reap() {
		Reaped reaped = this.claims.reap(this.clock.instant());
		if (reaped.rows() > 0) {
			LOG.warn("{} reminders were claimed by a node that did not finish them; {} messages may go out twice",
					reaped.rows(), reaped.messages());
			this.watch.repeated(reaped.messages());
		}
		return reaped;
	}

	private int send(UUID token, List<Claimed> rows, AtomicBoolean closed) {
		try {
			Sorted sorted = this.drafts.sort(rows, this.clock.instant());
			List<Outgoing> outgoing = this.ledger.open(token, sorted);
			sorted.moved().forEach(this.materialiser::person);
			return deliver(token, outgoing, closed);
		}
		catch (RuntimeException ex) {
			LOG.error("could not send {} reminders", rows.size(), ex);
			this.ledger.later(token, rows, "internal trouble: " + ex.getClass().getSimpleName());
			return 0;
		}
	}

	/** Some threads hand messages on; this one records what came of them. */
	private int deliver(UUID token, List<Outgoing> outgoing, AtomicBoolean closed) {
		if (TransactionSynchronizationManager.isActualTransactionActive()) {
			throw new IllegalStateException("a message must not leave inside a transaction");
		}
		Queue<Outgoing> open = new ConcurrentLinkedQueue<>(outgoing);
		BlockingQueue<Result> results = new ArrayBlockingQueue<>(UNRECORDED / LOOPS);
		// The slowest message that begins then still ends within the claim.
		Instant latest = this.clock.instant().plus(this.claim.dividedBy(4));
		for (int i = 0; i < Math.min(Math.max(1, this.threads / LOOPS), outgoing.size()); i++) {
			this.senders.execute(() -> work(open, results, closed, latest));
		}
		int handedOn = 0;
		List<Result> some = new ArrayList<>();
		for (int seen = 0; seen < outgoing.size(); seen += some.size()) {
			some.clear();
			some.add(take(results));
			results.drainTo(some);
			handedOn += recordPatiently(token, some);
		}
		return handedOn;
	}

	/**
	 * A database that is away for a while must not make messages go out twice: what came
	 * of them is kept and written down when it is back, as long as the claim lasts.
	 */
	private int recordPatiently(UUID token, List<Result> some) {
		Instant end = this.clock.instant().plus(this.claim.dividedBy(2));
		while (true) {
			try {
				return record(token, some);
			}
			catch (DataAccessException | TransactionException ex) {
				if (this.clock.instant().isAfter(end)) {
					throw ex;
				}
				LOG.warn("could not write down what came of {} messages; trying again", some.size(), ex);
				pause();
			}
		}
	}

	private static void pause() {
		try {
			Thread.sleep(1_000);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException("interrupted while waiting for the database", ex);
		}
	}

	private void work(Queue<Outgoing> open, BlockingQueue<Result> results, AtomicBoolean closed, Instant latest) {
		for (Outgoing next = open.poll(); next != null; next = open.poll()) {
			boolean leave = closed.get() || this.clock.instant().isAfter(latest);
			Result result = new Result(next, leave ? NOT_TRIED : deliver(next));
			if (result.delivery().outcome() == Outcome.UNREACHABLE) {
				closed.set(true);
			}
			put(results, result);
		}
	}

	/** Marks what was not tried since nobody could be reached, or the claim runs out. */
	private static final Delivery NOT_TRIED = new Delivery(Outcome.UNREACHABLE, "not tried");

	private Delivery deliver(Outgoing next) {
		try {
			return Objects.requireNonNull(this.channels.get(next.message().channel())).deliver(next.message());
		}
		catch (RuntimeException ex) {
			LOG.error("channel {} could not hand on message {}", next.message().channel(), next.message().id(), ex);
			return new Delivery(Outcome.LATER, OneLine.of("internal trouble: " + ex.getClass().getSimpleName()));
		}
	}

	private int record(UUID token, List<Result> some) {
		List<Result> tried = some.stream().filter((result) -> result.delivery() != NOT_TRIED).toList();
		some.stream()
			.filter((result) -> result.delivery() == NOT_TRIED)
			.forEach((result) -> this.ledger.putBack(token, result.outgoing().rows()));
		if (!tried.isEmpty()) {
			this.ledger.close(token, tried);
			tried.forEach((result) -> this.watch.delivered(result.outgoing().message().channel(),
					result.delivery().outcome()));
		}
		Set<Outcome> away = Set.of(Outcome.TAKEN, Outcome.KEPT);
		return (int) tried.stream().filter((result) -> away.contains(result.delivery().outcome())).count();
	}

	private Result take(BlockingQueue<Result> results) {
		try {
			Result result = results.poll(this.claim.toMillis(), TimeUnit.MILLISECONDS);
			if (result == null) {
				throw new IllegalStateException("no word of a message for as long as its claim");
			}
			return result;
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException("interrupted while messages leave; their claims end by themselves", ex);
		}
	}

	private static void put(BlockingQueue<Result> results, Result result) {
		try {
			results.put(result);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public void close() {
		this.senders.shutdown();
	}

}
