package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leafward.reminders.Suppressed;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Addresses that get no reminders, since a mail server said that nobody is there. Capital
 * and small letters are one. Letters with links to sign in still go there.
 */
@Repository
public class SuppressionTable {

	private final JdbcClient database;

	private final Clock clock;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 * @param clock what time it is
	 */
	public SuppressionTable(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * Sends nothing more to an address. What is known of it already stays.
	 * @param address the address
	 * @param reason what the mail server said, one line
	 * @return whether it is news
	 */
	public boolean suppress(String address, String reason) {
		return this.database.sql("""
				insert into reminders.suppressed (address, reason, since) values (lower(?), ?, ?)
				on conflict (address) do nothing
				""").params(address, reason, Rows.time(this.clock.instant())).update() > 0;
	}

	/**
	 * Which of some addresses get nothing.
	 * @param addresses any addresses
	 * @return those of them, written as they were given
	 */
	public Set<String> find(Collection<String> addresses) {
		if (addresses.isEmpty()) {
			return Set.of();
		}
		return Set.copyOf(this.database
			.sql("select given from unnest(?::text[]) given join reminders.suppressed s on s.address = lower(given)")
			.param(addresses.toArray(String[]::new))
			.query(String.class)
			.list());
	}

	/**
	 * What is known of one address.
	 * @param address any address
	 * @return empty when reminders go there
	 */
	public Optional<Suppressed> find(String address) {
		return this.database.sql("select * from reminders.suppressed where address = lower(?)")
			.param(address)
			.query(SuppressionTable::suppressed)
			.optional();
	}

	/**
	 * All of them.
	 * @param skip how many to leave out, 0 or more
	 * @param most how many at most
	 * @return the newest first
	 */
	public List<Suppressed> list(long skip, int most) {
		return this.database
			.sql("select * from reminders.suppressed order by since desc, address limit :most offset :skip")
			.param("most", most)
			.param("skip", skip)
			.query(SuppressionTable::suppressed)
			.list();
	}

	/**
	 * Sends to an address again.
	 * @param address the address
	 * @return whether it got nothing before
	 */
	public boolean lift(String address) {
		return this.database.sql("delete from reminders.suppressed where address = lower(?)")
			.param(address)
			.update() > 0;
	}

	private static Suppressed suppressed(ResultSet row, int number) throws SQLException {
		return new Suppressed(row.getString("address"), row.getString("reason"), Rows.time(row, "since"));
	}

}
