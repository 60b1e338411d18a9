package org.leafward.feeds.poll;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.core.PollIndex;
import org.leafward.feeds.core.PollIndex.Answer;
import org.leafward.feeds.store.PollTable;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What every address answers to a poll, in memory. Triggers of the database tell of each
 * change (LISTEN and NOTIFY), whichever node made it. While the database can't tell, the
 * board is empty and each poll asks the database itself.
 */
@Component
public class PollBoard implements DisposableBean {

	private static final Logger LOG = LoggerFactory.getLogger(PollBoard.class);

	/** How long it waits for news before it sees whether the connection still works. */
	private static final int PATIENCE = 10_000;

	private static final Duration AGAIN = Duration.ofSeconds(2);

	/** News that wait for each other; a bound for one look at the database. */
	private static final int AT_ONCE = 2_000;

	private final DataSource source;

	private final PollTable table;

	private final TransactionTemplate reading;

	private final PollIndex index = new PollIndex();

	private final Map<String, CountDownLatch> waiting = new ConcurrentHashMap<>();

	private volatile boolean ready;

	private volatile boolean closed;

	private @Nullable Thread thread;

	PollBoard(DataSource source, PollTable table, PlatformTransactionManager transactions) {
		this.source = source;
		this.table = table;
		this.reading = new TransactionTemplate(transactions);
		this.reading.setReadOnly(true);
	}

	@EventListener(ApplicationReadyEvent.class)
	synchronized void start() {
		if (this.thread == null && !this.closed) {
			Thread listener = new Thread(this::run, "feeds-poll-board");
			listener.setDaemon(true);
			listener.start();
			this.thread = listener;
		}
	}

	/**
	 * What an address answers.
	 * @param hash SHA-256 of its token
	 * @param form in which form
	 * @return null when the database has to be asked
	 */
	public @Nullable Answer find(byte[] hash, FeedForm form) {
		return this.ready ? this.index.find(hash, form.ordinal()) : null;
	}

	/**
	 * Notes that an address was asked.
	 * @param hash SHA-256 of its token
	 * @param hour the hour, counted from 1970
	 * @return whether nobody had noted that within the hour
	 */
	public boolean asked(byte[] hash, int hour) {
		return this.index.asked(hash, hour);
	}

	/**
	 * Whether polls are answered from here.
	 * @return false at the start, and while the database can't be reached
	 */
	public boolean ready() {
		return this.ready;
	}

	/**
	 * How many addresses are here.
	 * @return of both forms
	 */
	public int size() {
		return this.index.size();
	}

	/** Reads all addresses anew. */
	public void reload() {
		this.index.clear();
		this.reading.executeWithoutResult((status) -> this.table.all(this::note));
	}

	/**
	 * Returns once this node answers as the caller's transaction has it: an address that
	 * was killed is dead when the page says so. Within a transaction this happens after
	 * its end, and what is written after this call is not waited for.
	 */
	public void settle() {
		if (!this.ready) {
			return;
		}
		// News come in the order in which they were sent, so what comes back here is
		// later than all before it.
		String mark = "P" + UUID.randomUUID();
		CountDownLatch heard = new CountDownLatch(1);
		this.waiting.put(mark, heard);
		boolean inTransaction = TransactionSynchronizationManager.isSynchronizationActive();
		try {
			this.table.tell(mark);
		}
		catch (RuntimeException ex) {
			this.waiting.remove(mark);
			throw ex;
		}
		if (!inTransaction) {
			await(mark, heard);
			return;
		}
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
			@Override
			public void afterCompletion(int status) {
				if (status == STATUS_COMMITTED) {
					await(mark, heard);
				}
				else {
					PollBoard.this.waiting.remove(mark);
				}
			}
		});
	}

	private void await(String mark, CountDownLatch heard) {
		try {
			if (!heard.await(2, TimeUnit.SECONDS)) {
				LOG.warn("The database was slow to tell of a change of a calendar's address");
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		finally {
			this.waiting.remove(mark);
		}
	}

	private void run() {
		while (!this.closed) {
			try (Connection connection = this.source.getConnection()) {
				connection.setAutoCommit(true);
				listen(connection);
			}
			catch (SQLException | RuntimeException ex) {
				if (!this.closed) {
					LOG.warn("Polls ask the database until it tells of changes again: {}", ex.toString());
				}
			}
			this.ready = false;
			this.index.clear();
			this.waiting.values().forEach(CountDownLatch::countDown);
			pause();
		}
	}

	private void pause() {
		try {
			Thread.sleep(this.closed ? 0 : AGAIN.toMillis());
		}
		catch (InterruptedException ex) {
			this.closed = true;
		}
	}

	private void listen(Connection connection) throws SQLException {
		PGConnection news = connection.unwrap(PGConnection.class);
		try (Statement statement = connection.createStatement()) {
			statement.execute("listen " + PollTable.CHANNEL);
			reload();
			// Those who wait for news hold connections, so the news must need none.
			PollTable own = this.table.over(connection);
			take(news.getNotifications(), own);
			this.ready = true;
			LOG.info("{} addresses of calendars are in memory", this.index.size());
			while (!this.closed) {
				PGNotification[] some = news.getNotifications(PATIENCE);
				if (some == null || some.length == 0) {
					statement.setQueryTimeout(10);
					statement.execute("select 1");
				}
				take(some, own);
			}
			statement.execute("unlisten *");
		}
	}

	private void take(PGNotification @Nullable [] news, PollTable own) {
		if (news == null) {
			return;
		}
		Set<UUID> changed = new HashSet<>();
		Set<String> marks = new HashSet<>();
		for (PGNotification one : news) {
			String what = one.getParameter();
			switch (what.charAt(0)) {
				case 'F' -> changed.add(UUID.fromString(what.substring(1)));
				case 'D' -> forget(HexFormat.of().parseHex(what.substring(1)));
				default -> marks.add(what);
			}
			if (changed.size() >= AT_ONCE) {
				look(changed, own);
				changed.clear();
			}
		}
		look(changed, own);
		marks.stream().map(this.waiting::get).filter(Objects::nonNull).forEach(CountDownLatch::countDown);
	}

	private void look(Set<UUID> changed, PollTable own) {
		if (!changed.isEmpty()) {
			own.of(changed).forEach(this::note);
		}
	}

	private void note(PollTable.Row row) {
		Answer answer = row.answer();
		if (answer != null) {
			this.index.put(row.hash(), row.form().ordinal(), answer);
		}
		else {
			this.index.remove(row.hash(), row.form().ordinal());
		}
	}

	private void forget(byte[] hash) {
		for (FeedForm form : FeedForm.values()) {
			this.index.remove(hash, form.ordinal());
		}
	}

	@Override
	public synchronized void destroy() {
		this.closed = true;
		this.ready = false;
		if (this.thread != null) {
			this.thread.interrupt();
		}
	}

}
