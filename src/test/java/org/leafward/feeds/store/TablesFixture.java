package org.leafward.feeds.store;

import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables without a container. */
public final class TablesFixture {

	private TablesFixture() {
	}

	public static FeedTable feeds(JdbcClient database) {
		return new FeedTable(database);
	}

	public static PollTable polls(DataSource source) {
		return new PollTable(new JdbcTemplate(source));
	}

	public static DocumentTable documents(JdbcClient database) {
		return new DocumentTable(database);
	}

}
