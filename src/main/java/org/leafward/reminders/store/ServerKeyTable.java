package org.leafward.reminders.store;

import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keys that the server makes for itself at first need, the same for all nodes. */
@Repository
public class ServerKeyTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public ServerKeyTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The key of a name. When two nodes need it for the first time at once, the later one
	 * takes the earlier one's.
	 * @param name what it is for
	 * @param make makes a new one; may be called in vain
	 * @return the key, secret
	 */
	public byte[] of(String name, Supplier<byte[]> make) {
		return find(name).orElseGet(() -> {
			this.database.sql("insert into reminders.server_key (name, value) values (?, ?) on conflict do nothing")
				.params(name, make.get())
				.update();
			return find(name).orElseThrow();
		});
	}

	private Optional<byte[]> find(String name) {
		return this.database.sql("select value from reminders.server_key where name = ?")
			.param(name)
			.query((row, number) -> row.getBytes(1))
			.optional();
	}

}
