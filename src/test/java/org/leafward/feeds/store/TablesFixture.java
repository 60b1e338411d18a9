package org.leafward.feeds.store;

import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables without a container. */
public final class TablesFixture {

	private TablesFixture() {
	}

	public static FeedTable feeds(JdbcClient database) {
		return new FeedTable(database);
	}

	public static DocumentTable documents(JdbcClient database) {
		return new DocumentTable(database);
	}

}
