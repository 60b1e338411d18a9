package org.leafward.reminders;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.leafward.reminders.TaskFixture.ADA;

class OutboxTests {

	private HikariDataSource source;

	private JdbcClient database;

	@BeforeEach
	void freshDatabase() {
		this.source = TestDatabase.fresh();
		this.database = JdbcClient.create(this.source);
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	@Test
	void knowsWhetherThereIsAnotherPage() {
		MessageTable table = new MessageTable(this.database);
		Outbox outbox = new Outbox(table);
		for (int number = 0; number < 4; number++) {
			table.save(List
				.of(MessageFixture.at(MessageFixture.mail("m" + number, MessageFixture.words("s" + number, "t", "h")),
						MessageState.WAITING, Instant.ofEpochSecond(number))));
		}
		assertThat(outbox.all(0, 2)).extracting((page) -> page.mails().size(), MessagePage::more)
			.containsExactly(2, true);
		assertThat(outbox.ofPerson(ADA, 1, 2)).extracting((page) -> page.mails().get(0).subject(), MessagePage::more)
			.containsExactly("s1", false);
		assertThat(outbox.all(2, 2)).isEqualTo(new MessagePage(List.of(), 2, false));
		assertThat(outbox.find(TaskFixture.id("m1"))).isPresent();
	}

	@Test
	void isBounded() {
		Outbox outbox = new Outbox(new MessageTable(this.database));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> outbox.all(-1, 10));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> outbox.all(100_001, 10));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> outbox.ofPerson(ADA, 0, 0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> outbox.ofPerson(ADA, 0, 201));
	}

	@Test
	void upcomingRemindersAreBounded() {
		Reminders reminders = new Reminders(new ReminderTable(this.database));
		RowFixture.pending(this.database, ADA, "one", LocalDate.parse("2026-11-12"));
		assertThat(reminders.upcoming(ADA, 200)).hasSize(1);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> reminders.upcoming(ADA, 0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> reminders.upcoming(ADA, 201));
	}

}
