package org.leafward.reminders.store;

import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Keys that the server makes for itself, one of each name for all nodes. */
@Repository
public class ServerKeyTable {

	private final JdbcClient database;

	private final TransactionTemplate transaction;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 * @param transactions a key stays when the caller's transaction fails: it may be in
	 * use by then
	 */
	public ServerKeyTable(JdbcClient database, PlatformTransactionManager transactions) {
		this.database = database;
		this.transaction = new TransactionTemplate(transactions);
		this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
	}

	/**
	 * The key of a name.
	 * @param name the name
	 * @param fresh makes one; it is only kept when there is none yet
	 * @return the same on every node
	 */
	public byte[] of(String name, Supplier<byte[]> fresh) {
		byte[] key = this.transaction.execute((status) -> {
			// Of two nodes at once the later waits here, and finds the other's key.
			this.database.sql("""
					insert into reminders.server_key (name, value)
					select :name, :value where not exists (select from reminders.server_key where name = :name)
					on conflict (name) do nothing
					""").param("name", name).param("value", fresh.get()).update();
			return this.database.sql("select value from reminders.server_key where name = ?")
				.param(name)
				.query((row, number) -> row.getBytes("value"))
				.single();
		});
		if (key == null) {
			throw new IllegalStateException("a key that was just kept is there");
		}
		return key;
	}

}
