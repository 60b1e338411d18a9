package org.leafward.reminders.channel.mail;

import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.support.SettableClock;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Mail channels for tests, and mails to send. */
public final class MailChannels {

	static final Instant MADE = Instant.parse("2026-11-12T06:00:00Z");

	static final MailSettings PLAIN = MailSettings.of("Gardens <reminders@example.org>", "", "");

	private MailChannels() {
	}

	/** A channel to a mail server on this machine. */
	public static Channel to(int port, DataSource source, Clock clock) {
		return channel(new SmtpLines(SenderFixture.to(port), 4, clock), source, PLAIN, "https://plants.example.org");
	}

	/** A channel without a mail server. */
	public static Channel none(DataSource source) {
		return channel(new SmtpLines(SenderFixture.none(), 4, new SettableClock(MADE)), source, PLAIN,
				"https://plants.example.org");
	}

	static MailChannel channel(SmtpLines lines, DataSource source, MailSettings settings, String home) {
		return new MailChannel(lines, new SuppressionTable(JdbcClient.create(source), new SettableClock(MADE)),
				new FixedLinks(home), settings);
	}

	static Message mail(String name, String recipient) {
		return mail(name, recipient, "Ada", new MessageText("one", "text\n", "<p>text</p>", "", "/", "{}"),
				Series.SINGLE, null, 0);
	}

	static Message mail(String name, String recipient, String recipientName, MessageText words, Series series,
			@Nullable String thread, int uncertain) {
		return new Message(TaskFixture.id(name), TaskFixture.ADA, "mail", series,
				"Gärten am Ort <reminders@example.org>", recipient, recipientName, words, thread,
				"<%s@example.org>".formatted(name), MessageState.WAITING, MADE, null, null, uncertain);
	}

	/** Addresses that can be foretold. */
	record FixedLinks(String home) implements Links {

		@Override
		public String task(TaskId task) {
			return this.home + "/tasks/" + task.value();
		}

		@Override
		public String act(UUID reminder, Act act) {
			return this.home + "/r/" + reminder;
		}

		@Override
		public String stop(PersonId person, String channel, Series series) {
			return this.home + "/u/" + channel + "-" + series.code() + "-" + person.value();
		}

		@Override
		public String wishes() {
			return this.home + "/reminders";
		}

	}

}
