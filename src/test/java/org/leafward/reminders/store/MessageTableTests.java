package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

class MessageTableTests {

	private static final Instant MADE = Instant.parse("2026-11-12T06:00:00Z");

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static HikariDataSource source;

	private JdbcClient database;

	private MessageTable table;

	static UUID save(JdbcClient database, PersonId person, String name, Instant made) {
		new MessageTable(database).save(List.of(mail(person, name, made, "words")));
		return TaskFixture.id(name);
	}

	private static Message mail(PersonId person, String name, Instant made, String text) {
		return message(person, name, "ada@example.org", words("subject", text), "<%s@b>".formatted(name), made);
	}

	private static Message message(PersonId person, String name, String recipient, MessageText words, String messageId,
			Instant made) {
		return new Message(TaskFixture.id(name), person, "mail", Series.SINGLE, "Leafward <a@b>", recipient, "Ada",
				words, "<task@b>", messageId, MessageState.WAITING, made, null, null, 0);
	}

	private static MessageText words(String subject, String text) {
		return new MessageText(subject, text, "<p>words</p>", "few words", "https://b/tasks/1", "{}");
	}

	@BeforeAll
	static void aDatabase() {
		source = TestDatabase.fresh();
	}

	@BeforeEach
	void empty() {
		this.database = JdbcClient.create(source);
		this.database.sql("truncate reminders.reminder, reminders.message").update();
		this.table = new MessageTable(this.database);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@Test
	void givesBackWhatWasSaved() {
		Message mail = mail(ADA, "one", MADE, "words");
		this.table.save(List.of(mail));
		assertThat(this.table.find(mail.id())).contains(mail);
		assertThat(this.table.find(UUID.randomUUID())).isEmpty();
	}

	@Test
	void keepsMessageIdAndTimeWhenSavedAgain() {
		save(this.database, ADA, "one", MADE);
		Message again = message(ADA, "one", "new@example.org", words("new", "new"), "<new@b>", MADE.plusSeconds(60));
		this.table.save(List.of(again));
		assertThat(this.table.find(again.id())).get()
			.extracting(Message::messageId, Message::createdAt, Message::text, Message::recipient)
			.containsExactly("<one@b>", MADE, "new", "new@example.org");
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "WAITING")
	void leavesAMailThatNoLongerWaits(MessageState state) {
		UUID id = save(this.database, ADA, "one", MADE);
		record(id, state, MADE, "reply");
		this.table.save(List.of(mail(ADA, "one", MADE, "other words")));
		record(id, MessageState.WAITING, null, null);
		this.table.dropUnwanted(List.of(ADA));
		assertThat(this.table.find(id)).get()
			.extracting(Message::state, Message::text, Message::sentAt, Message::serverReply)
			.containsExactly(state, "words", MADE, "reply");
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void dropsAMailThatNoRowWaitsFor(ReminderState state) {
		UUID id = save(this.database, ADA, "one", MADE);
		UUID row = RowFixture.pending(this.database, ADA, "task", LocalDate.parse("2026-11-12"));
		this.database.sql("update reminders.reminder set message_id = ?").param(id).update();
		RowFixture.put(this.database, row, state, MADE);
		this.table.dropUnwanted(List.of(BEN));
		assertThat(this.table.find(id).orElseThrow().state()).isEqualTo(MessageState.WAITING);
		this.table.dropUnwanted(List.of(ADA));
		boolean awaited = Set.of(ReminderState.PENDING, ReminderState.CLAIMED).contains(state);
		assertThat(this.table.find(id).orElseThrow().state())
			.isEqualTo(awaited ? MessageState.WAITING : MessageState.DROPPED);
	}

	@Test
	void listsNewestFirstPageByPage() {
		UUID first = save(this.database, ADA, "1", MADE);
		UUID second = save(this.database, BEN, "2", MADE.plusSeconds(1));
		UUID third = save(this.database, ADA, "3", MADE.plusSeconds(2));
		assertThat(ids(this.table.newest(null, 0, 2))).containsExactly(third, second);
		assertThat(ids(this.table.newest(null, 2, 2))).containsExactly(first);
		assertThat(ids(this.table.newest(ADA, 0, 10))).containsExactly(third, first);
		assertThat(ids(this.table.newest(ADA, 1, 10))).containsExactly(first);
	}

	private void record(UUID id, MessageState state, Instant sentAt, String reply) {
		this.table.record(List.of(new MessageTable.Record(id, state, sentAt, reply, false)));
	}

	private static List<UUID> ids(List<Message> mails) {
		return mails.stream().map(Message::id).toList();
	}

}
