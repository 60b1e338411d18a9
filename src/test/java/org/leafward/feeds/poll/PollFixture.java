package org.leafward.feeds.poll;

import java.time.Clock;
import java.time.Duration;
import javax.sql.DataSource;
import org.leafward.feeds.store.TablesFixture;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** Polls without a container. */
public final class PollFixture {

	private PollFixture() {
	}

	/**
	 * A board that does not listen, so that every poll asks the database.
	 * @param source the database
	 * @return never ready
	 */
	public static PollBoard deaf(DataSource source) {
		return new PollBoard(source, TablesFixture.polls(source), new JdbcTransactionManager(source));
	}

	/**
	 * A board that listens.
	 * @param source the database, with a connection to spare
	 * @return ready soon; close it
	 */
	public static PollBoard listening(DataSource source) {
		PollBoard board = deaf(source);
		board.start();
		return board;
	}

	/**
	 * What notes fetches when it is told to.
	 * @param source the database
	 * @param board the board
	 * @param clock the time
	 * @return without a thread
	 */
	public static Fetches fetches(DataSource source, PollBoard board, Clock clock) {
		return new Fetches(TablesFixture.polls(source), board, new JdbcTransactionManager(source), clock,
				Duration.ofSeconds(1));
	}

}
