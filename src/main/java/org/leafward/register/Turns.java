package org.leafward.register;

import java.util.Objects;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.springframework.dao.TransientDataAccessResourceException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Lets only so many changes run at once. Whoever listens to a change works right after
 * its commit, when its connection is still held, and takes a second one. Without a bound,
 * as many changes as the pool has connections would each hold one and wait for another.
 * Those that wait here hold none.
 */
@Component
class Turns {

	/** Twice this many connections must leave room in the pool for readers and jobs. */
	static final int MOST_AT_ONCE = 5;

	private static final int LONGEST_WAIT_SECONDS = 30;

	private final Semaphore turns = new Semaphore(MOST_AT_ONCE, true);

	private final TransactionTemplate transaction;

	/** Changes within a change have its turn: two turns for one would block others. */
	private final ThreadLocal<Boolean> mine = ThreadLocal.withInitial(() -> false);

	Turns(TransactionTemplate transaction) {
		this.transaction = transaction;
	}

	/**
	 * Makes a change in a transaction when it is its turn.
	 * @param <T> what comes of it
	 * @param change the change
	 * @return what came of it
	 * @throws TransientDataAccessResourceException when there was no turn for half a
	 * minute; nothing was changed then
	 */
	<T> T change(Supplier<T> change) {
		if (this.mine.get()) {
			return Objects.requireNonNull(this.transaction.execute((status) -> change.get()));
		}
		try {
			if (!this.turns.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
				throw new TransientDataAccessResourceException("too many changes at once");
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new TransientDataAccessResourceException("interrupted while waiting for a turn", ex);
		}
		try {
			this.mine.set(true);
			return Objects.requireNonNull(this.transaction.execute((status) -> change.get()));
		}
		finally {
			this.mine.remove();
			this.turns.release();
		}
	}

}
