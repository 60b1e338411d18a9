package org.leafward.reminders.dispatch;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.Person;
import org.leafward.care.CareTask;
import org.leafward.reminders.Reminder;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.store.ReminderTable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.leafward.reminders.dispatch.DispatchFixture.DAY;
import static org.leafward.reminders.dispatch.DispatchFixture.DUE;
import static org.leafward.reminders.dispatch.DispatchFixture.MORNING;

class MaterialiserTests {

	private DispatchFixture house;

	@BeforeEach
	void open() {
		this.house = new DispatchFixture();
	}

	@AfterEach
	void close() {
		this.house.close();
	}

	private List<Reminder> upcoming() {
		return new ReminderTable(this.house.database).upcoming(ADA, 10);
	}

	private void replan(CareTask task) {
		this.house.garden.plan(task);
		this.house.node().materialiser().person(ADA);
	}

	private void send() {
		this.house.clock.set(DUE);
		assertThat(this.house.node().dispatcher().run()).isOne();
	}

	@Test
	void aMovedTaskMovesItsReminder() {
		CareTask task = this.house.planned("one");
		replan(TaskFixture.moved(task, DAY.plusDays(5)));
		assertThat(upcoming()).singleElement()
			.extracting(Reminder::task, Reminder::firstDay, Reminder::dueAt)
			.containsExactly(task.id(), DAY.plusDays(5), MORNING.plus(Duration.ofDays(5)));
	}

	@Test
	void aWithdrawnTaskWithdrawsItsReminderAndMayComeBack() {
		CareTask task = this.house.planned("one");
		replan(TaskFixture.withdrawn(task));
		assertThat(upcoming()).isEmpty();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.WITHDRAWN);
		replan(task);
		assertThat(upcoming()).hasSize(1);
		send();
	}

	@Test
	void aTaskThatMovesUpToThreeDaysIsNotSentAgain() {
		CareTask task = this.house.planned("one");
		send();
		replan(TaskFixture.moved(task, DAY.plusDays(3)));
		assertThat(upcoming()).isEmpty();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.SENT);
	}

	@Test
	void aTaskThatMovesFurtherIsSentAgain() {
		CareTask task = this.house.planned("one");
		send();
		replan(TaskFixture.moved(task, DAY.plusDays(4)));
		assertThat(upcoming()).extracting(Reminder::topic, Reminder::firstDay, Reminder::dueAt)
			.containsExactly(tuple(Topic.CHANGE, DAY.plusDays(4), MORNING.plus(Duration.ofDays(1))),
					tuple(Topic.TO_DO, DAY.plusDays(4), MORNING.plus(Duration.ofDays(4))));
		this.house.clock.set(DUE.plus(Duration.ofDays(1)));
		assertThat(this.house.node().dispatcher().run()).isOne();
		this.house.clock.set(DUE.plus(Duration.ofDays(4)));
		assertThat(this.house.node().dispatcher().run()).isOne();
		assertThat(this.house.received()).hasSize(3);
	}

	@Test
	void aTaskBeyondTwoWeeksComesWhenItIsNearer() {
		replan(TaskFixture.task("one", DAY.plusDays(15)));
		assertThat(upcoming()).isEmpty();
		this.house.clock.advance(Duration.ofDays(1));
		this.house.node().materialiser().everybody();
		assertThat(upcoming()).hasSize(1);
	}

	@Test
	void anotherZoneMovesTheHour() {
		this.house.planned("one");
		this.house.garden.persons.put(ADA, new Person(ADA, "ada", "ada@example.org", ZoneId.of("America/Chicago")));
		this.house.node().materialiser().person(ADA);
		// UTC-6 in winter (15 U.S.C. 260a and 49 CFR 71).
		assertThat(upcoming()).singleElement().extracting(Reminder::dueAt).isEqualTo(MORNING.plus(Duration.ofHours(7)));
	}

	@Test
	void nobodyGetsMailBeforeTheyHaveSaidSo() {
		this.house.planned("one");
		this.house.garden.persons.put(ADA,
				new Person(ADA, "ada", "ada@example.org", ZoneId.of("America/Chicago"), false));
		this.house.node().materialiser().person(ADA);
		assertThat(upcoming()).isEmpty();
		this.house.garden.persons.put(ADA, new Person(ADA, "ada", null, ZoneId.of("America/Chicago"), false));
		this.house.node().materialiser().person(ADA);
		assertThat(upcoming()).isEmpty();
		this.house.garden.persons.put(ADA,
				new Person(ADA, "ada", "ada@example.org", ZoneId.of("America/Chicago"), true));
		this.house.node().materialiser().person(ADA);
		assertThat(upcoming()).hasSize(1);
	}

	@Test
	void aReminderInBackOffKeepsItsTurn() {
		this.house.planned("one");
		this.house.stopMailServer();
		this.house.clock.set(DUE);
		this.house.node().dispatcher().run();
		this.house.node().materialiser().everybody();
		assertThat(this.house.nextTry("one")).isEqualTo(DUE.plus(Duration.ofMinutes(5)));
	}

	@Test
	void everybodyIsServedEvenIfOneIsTrouble() {
		for (int number = 0; number < 203; number++) {
			this.house.garden
				.plan(TaskFixture.task("of " + number, this.house.garden.person("p" + number, RowFixture.ZONE), DAY));
		}
		this.house.garden.plan(TaskFixture.task("ada's", DAY));
		// Without a zone nobody can say when her reminder is due.
		this.house.garden.persons.put(ADA, new Person(ADA, "ada", "ada@example.org", null));
		this.house.node().materialiser().everybody();
		assertThat(this.house.database.sql("select count(distinct person_id) from reminders.reminder")
			.query(Integer.class)
			.single()).isEqualTo(203);
		assertThat(upcoming()).isEmpty();
	}

	@Test
	void aPersonWhoLeftHasNoneLeft() {
		this.house.planned("one");
		this.house.garden.persons.clear();
		this.house.node().materialiser().person(ADA);
		assertThat(upcoming()).isEmpty();
	}

}
