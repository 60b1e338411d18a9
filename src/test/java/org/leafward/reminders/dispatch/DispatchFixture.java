package org.leafward.reminders.dispatch;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import com.zaxxer.hikari.HikariDataSource;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.reminders.Garden;
import org.leafward.reminders.Manner;
import org.leafward.reminders.Message;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.mail.MailChannels;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A database, a mail server (GreenMail), a clock and a garden with Ada in it. */
final class DispatchFixture implements AutoCloseable {

	static final LocalDate DAY = LocalDate.parse("2026-11-12");

	/** 07:00 in Berlin. */
	static final Instant MORNING = Instant.parse("2026-11-12T06:00:00Z");

	/** Mornings are spread over some minutes; by then everybody's turn has come. */
	static final Instant DUE = MORNING.plus(Duration.ofMinutes(10));

	final HikariDataSource source = TestDatabase.fresh();

	final JdbcClient database = JdbcClient.create(this.source);

	final SettableClock clock = new SettableClock(DUE.minusSeconds(3600));

	final Garden garden = new Garden();

	final int port = freePort();

	private GreenMail server;

	DispatchFixture() {
		this.garden.person("ada", RowFixture.ZONE);
		withoutOutlook(TaskFixture.ADA);
		startMailServer();
	}

	/** Tests that go over days are about tasks, and not about Mondays and nights. */
	void withoutOutlook(PersonId person) {
		Wishes usual = Wishes.USUAL;
		new WishesTable(this.database).save(person,
				new Wishes(usual.speech(), usual.morning(), usual.outlookDay(),
						new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT), true, null,
						Map.of(Wishes.MAIL, Map.of(Topic.OUTLOOK, Wish.of(Manner.OFF))), Map.of()));
	}

	void startMailServer() {
		this.server = new GreenMail(new ServerSetup(this.port, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
		this.server.start();
	}

	void stopMailServer() {
		this.server.stop();
	}

	Channel smtp() {
		return MailChannels.to(this.port, this.source, this.clock);
	}

	Node node() {
		return node(smtp());
	}

	Node node(Channel channel) {
		return Node.start(this.source, this.garden, channel, this.clock);
	}

	/** A task of Ada's, with its reminder. */
	CareTask planned(String name) {
		CareTask task = this.garden.plan(TaskFixture.task(name, DAY));
		node().materialiser().person(TaskFixture.ADA);
		return task;
	}

	MimeMessage[] received() {
		return this.server.getReceivedMessages();
	}

	List<String> receivedIds() {
		return Arrays.stream(received()).map((message) -> {
			try {
				return message.getMessageID();
			}
			catch (MessagingException ex) {
				throw new IllegalStateException(ex);
			}
		}).toList();
	}

	ReminderState state(String task) {
		return state(task, DAY);
	}

	ReminderState state(String task, LocalDate day) {
		return RowFixture.state(this.database, RowFixture.row(this.database, task, day));
	}

	List<Message> mails() {
		return new MessageTable(this.database).newest(null, 0, 100);
	}

	Instant nextTry(String task) {
		UUID row = RowFixture.row(this.database, task, DAY);
		return this.database.sql("select next_try_at from reminders.reminder where id = ?")
			.param(row)
			.query(OffsetDateTime.class)
			.single()
			.toInstant();
	}

	@Override
	public void close() {
		this.server.stop();
		this.source.close();
	}

	private static int freePort() {
		try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			return socket.getLocalPort();
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
