package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import javax.sql.DataSource;
import org.leafward.reminders.Garden;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.SenderAddress;
import org.leafward.reminders.core.Writing;
import org.leafward.reminders.store.AdvisoryTable;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.reminders.words.WordsFixture;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** One server of several against one database; a new one is a restart. */
record Node(Materialiser materialiser, Dispatcher dispatcher, AdvisoryTelling telling) {

	static final Duration CLAIM = Duration.ofMinutes(10);

	static Node start(DataSource source, Garden garden, Channel channel, Clock clock) {
		return start(source, garden, List.of(channel), clock);
	}

	static Node start(DataSource source, Garden garden, List<Channel> channels, Clock clock) {
		JdbcClient database = JdbcClient.create(source);
		TransactionTemplate transactions = new TransactionTemplate(new JdbcTransactionManager(source));
		MessageTable mails = new MessageTable(database);
		ClaimTable claims = new ClaimTable(database);
		WishesTable wishes = new WishesTable(database);
		Materialiser materialiser = new Materialiser(garden.people(), garden.calendar(), channels, wishes,
				new ReminderTable(database), mails, transactions, clock);
		Writing writing = WordsFixture::write;
		Ledger ledger = new Ledger(claims, mails, transactions, writing,
				SenderAddress.of("Leafward <reminders@example.org>"), () -> 0.5, clock);
		Drafts drafts = new Drafts(garden.people(), garden.calendar(), channels, wishes, garden.advisories);
		return new Node(materialiser,
				new Dispatcher(claims, drafts, materialiser, channels, ledger, 2, CLAIM, DispatchWatch.NONE, clock),
				new AdvisoryTelling(garden.advisories, garden.people(), channels, wishes, new ReminderTable(database),
						new AdvisoryTable(database), mails, transactions, clock));
	}

}
