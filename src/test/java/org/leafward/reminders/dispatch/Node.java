package org.leafward.reminders.dispatch;

import java.time.Clock;
import javax.sql.DataSource;
import org.leafward.reminders.Garden;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** One server of several against one database; a new one is a restart. */
record Node(Materialiser materialiser, Dispatcher dispatcher) {

	static Node start(DataSource source, Garden garden, Channel channel, Clock clock) {
		JdbcClient database = JdbcClient.create(source);
		TransactionTemplate transactions = new TransactionTemplate(new JdbcTransactionManager(source));
		MessageTable mails = new MessageTable(database);
		ClaimTable claims = new ClaimTable(database);
		Materialiser materialiser = new Materialiser(garden.people(), garden.calendar(), new ReminderTable(database),
				mails, transactions, clock);
		Ledger ledger = new Ledger(claims, mails, transactions, SenderAddress.of("Leafward <reminders@example.org>"),
				"https://plants.example.org", () -> 0.5, clock);
		return new Node(materialiser,
				new Dispatcher(claims, garden.people(), garden.calendar(), materialiser, channel, ledger, clock));
	}

}
