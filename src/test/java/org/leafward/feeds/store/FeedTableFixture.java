package org.leafward.feeds.store;

import org.springframework.jdbc.core.simple.JdbcClient;

/** The table without a container. */
public final class FeedTableFixture {

	private FeedTableFixture() {
	}

	public static FeedTable on(JdbcClient database) {
		return new FeedTable(database);
	}

}
