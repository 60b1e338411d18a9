package org.leafward.reminders.dispatch;

import jakarta.mail.internet.MimeMultipart;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.ClaimTable.Bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.leafward.reminders.dispatch.DispatchFixture.DAY;
import static org.leafward.reminders.dispatch.DispatchFixture.DUE;
import static org.leafward.reminders.dispatch.DispatchFixture.MORNING;

/** A due task sends one mail, once; also over days, zones and changes of the plan. */
class DispatcherTests {

	private DispatchFixture house;

	@BeforeEach
	void open() {
		this.house = new DispatchFixture();
	}

	@AfterEach
	void close() {
		this.house.close();
	}

	private int runAt(Instant now) {
		this.house.clock.set(now);
		return this.house.node().dispatcher().run();
	}

	@Test
	void aDueTaskSendsOneMail() throws Exception {
		CareTask task = this.house.planned("one");
		assertThat(runAt(MORNING.minusMillis(1))).isZero();
		assertThat(runAt(DUE)).isOne();
		assertThat(this.house.received()).singleElement().satisfies((message) -> {
			assertThat(message.getAllRecipients()).singleElement().hasToString("ada <ada@example.org>");
			assertThat(message.getSubject()).startsWith("Thu 12 Nov 2026: Water deeply");
			String text = (String) ((MimeMultipart) message.getContent()).getBodyPart(0).getContent();
			assertThat(text).contains("https://plants.example.org/tasks/" + task.id());
		});
		assertThat(this.house.state("one")).isEqualTo(ReminderState.SENT);
		assertThat(this.house.mails()).singleElement()
			.extracting(Message::state, Message::sentAt, Message::person)
			.containsExactly(MessageState.SENT, DUE, ADA);
	}

	@Test
	void butNeverASecondOne() {
		this.house.planned("one");
		assertThat(runAt(DUE)).isOne();
		for (int hours = 0; hours <= 14 * 24; hours += 12) {
			this.house.clock.set(DUE.plus(Duration.ofHours(hours)));
			Node node = this.house.node();
			node.materialiser().everybody();
			node.dispatcher().reap();
			assertThat(node.dispatcher().run()).isZero();
		}
		assertThat(this.house.received()).hasSize(1);
	}

	@Test
	void allTasksOfAMorningShareOneMail() {
		for (int task = 0; task < 10; task++) {
			this.house.planned("task " + task);
		}
		assertThat(runAt(DUE)).isOne();
		assertThat(this.house.received()).hasSize(1);
		assertThat(this.house.mails().get(0).text()).startsWith("To do: Thu 12 Nov 2026 to ")
			.contains(": 10 plantings");
	}

	@Test
	void moreTasksThanAMailHoldsMakeTwo() {
		for (int task = 0; task <= Dispatcher.MOST_TASKS; task++) {
			this.house.garden.plan(TaskFixture.task("task " + task, DAY));
		}
		this.house.node().materialiser().everybody();
		assertThat(runAt(DUE)).isEqualTo(2);
		assertThat(runAt(DUE)).isZero();
		assertThat(this.house.mails()).extracting((mail) -> mail.text().contains(": 50 plantings"))
			.containsExactlyInAnyOrder(true, false);
	}

	@Test
	void aRampIsAnnouncedOnceWithItsLength() {
		for (int day = 1; day <= 14; day++) {
			this.house.garden.plan(TaskFixture.task("ramp " + day, TaskKind.RAMP_DAY, day, DAY.plusDays(day - 1)));
		}
		this.house.node().materialiser().everybody();
		for (int day = 0; day < 14; day++) {
			runAt(DUE.plus(Duration.ofDays(day)));
		}
		assertThat(this.house.mails()).singleElement()
			.extracting(Message::text)
			.asString()
			.contains("Ramp: day 1 of 14");
	}

	/** Directive 2000/84/EC: the clocks change at 01:00 GMT on these days. */
	@ParameterizedTest
	@CsvSource({ "2027-03-28,2027-03-28T05:00:00Z", "2027-10-31,2027-10-31T06:00:00Z" })
	void isSevenOClockOnTheDaysTheClocksChange(LocalDate day, Instant due) {
		this.house.garden.plan(TaskFixture.task("one", day));
		this.house.clock.set(due.minus(Duration.ofDays(10)));
		this.house.node().materialiser().everybody();
		assertThat(runAt(due.minusSeconds(1))).isZero();
		assertThat(runAt(due.plus(Duration.ofMinutes(10)))).isOne();
	}

	@Test
	void aServerThatWasOffForAWeekendStillSends() {
		this.house.planned("one");
		assertThat(runAt(DUE.plus(Duration.ofDays(3)))).isOne();
	}

	@Test
	void aServerThatWasOffForLongerDoesNot() {
		this.house.planned("one");
		assertThat(runAt(Instant.parse("2026-11-15T23:00:00Z"))).isZero();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.EXPIRED);
		assertThat(this.house.mails()).isEmpty();
	}

	@Test
	void aTaskWithdrawnMeanwhileIsNotSent() {
		CareTask task = this.house.planned("one");
		this.house.garden.plan(TaskFixture.withdrawn(task));
		assertThat(runAt(DUE)).isZero();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.WITHDRAWN);
	}

	@Test
	void aTaskMovedMeanwhileIsSentOnItsNewDay() {
		CareTask task = this.house.planned("one");
		this.house.garden.plan(TaskFixture.moved(task, DAY.plusDays(2)));
		assertThat(runAt(DUE)).isZero();
		assertThat(this.house.state("one", DAY.plusDays(2))).isEqualTo(ReminderState.PENDING);
		assertThat(runAt(DUE.plus(Duration.ofDays(2)))).isOne();
		assertThat(this.house.received()).hasSize(1);
	}

	@Test
	void aTaskMovedToAnEarlierDayIsSentAtOnce() {
		CareTask task = this.house.planned("one");
		this.house.garden.plan(TaskFixture.moved(task, DAY.minusDays(1)));
		assertThat(runAt(DUE)).isOne();
		assertThat(this.house.mails().get(0).text()).startsWith("To do: Wed 11 Nov 2026 to ");
	}

	@Test
	void aPersonWhoLeftGetsNone() {
		this.house.planned("one");
		this.house.garden.persons.clear();
		assertThat(runAt(DUE)).isZero();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.WITHDRAWN);
	}

	@Test
	void troubleWithOnePersonDoesNotHoldUpOthers() {
		this.house.planned("one");
		this.house.garden
			.plan(TaskFixture.task("ben's", this.house.garden.person("ben", this.house.clock.getZone()), DAY));
		this.house.node().materialiser().everybody();
		this.house.clock.set(DUE.plus(Duration.ofHours(2)));
		MailLike broken = (mail) -> {
			if (mail.person().equals(ADA)) {
				throw new IllegalStateException("broken");
			}
			return this.house.smtp().deliver(mail);
		};
		assertThat(this.house.node(broken).dispatcher().run()).isOne();
		assertThat(this.house.state("ben's")).isEqualTo(ReminderState.SENT);
		assertThat(this.house.state("one")).isEqualTo(ReminderState.PENDING);
		assertThat(this.house.nextTry("one")).isEqualTo(this.house.clock.instant().plus(Duration.ofMinutes(5)));
	}

	@Test
	void aClaimThatEndedBeforeTheMailLeftSendsNothing() {
		this.house.planned("one");
		this.house.clock.set(DUE);
		ClaimTable claims = new ClaimTable(this.house.database);
		assertThat(claims.claim(DUE, DUE.plusSeconds(60), UUID.randomUUID(), new Bounds(1, 50), "mail")).hasSize(1);
		assertThat(runAt(DUE)).isZero();
		assertThat(this.house.received()).isEmpty();
	}

	private PersonId ben() {
		return this.house.garden.person("ben", RowFixture.ZONE);
	}

	private void makeAt(Instant now) {
		this.house.clock.set(now);
		this.house.node().materialiser().everybody();
	}

	/** 16 November 2026 is a Monday. */
	@Test
	void anOutlookHoldsItsMorningToo() {
		PersonId ben = ben();
		this.house.garden.plan(TaskFixture.task("today", ben, LocalDate.parse("2026-11-16")));
		this.house.garden.plan(TaskFixture.task("ahead", ben, LocalDate.parse("2026-11-20")));
		makeAt(DUE);
		assertThat(runAt(DUE.plus(Duration.ofDays(4)))).isOne();
		assertThat(this.house.mails()).singleElement().satisfies((mail) -> {
			assertThat(mail.series()).isEqualTo(Series.OUTLOOK);
			assertThat(mail.text()).contains("16 Nov", "20 Nov");
		});
		assertThat(runAt(DUE.plus(Duration.ofDays(8)))).isOne();
	}

	@Test
	void anOutlookWithNothingInItIsNotSent() {
		ben();
		makeAt(DUE);
		assertThat(runAt(DUE.plus(Duration.ofDays(4)))).isZero();
		assertThat(this.house.mails()).isEmpty();
	}

	@Test
	void whatWasToldAndFellAwayIsToldTheNextMorning() {
		CareTask task = this.house.planned("one");
		assertThat(runAt(DUE)).isOne();
		this.house.garden.plan(TaskFixture.withdrawn(task));
		makeAt(DUE.plus(Duration.ofHours(3)));
		assertThat(this.house.node().dispatcher().run()).isZero();
		assertThat(runAt(DUE.plus(Duration.ofDays(1)))).isOne();
		assertThat(this.house.mails().get(0).text()).contains("enough rain fell");
		makeAt(DUE.plus(Duration.ofDays(1)));
		assertThat(runAt(DUE.plus(Duration.ofDays(2)))).isZero();
	}

	@Test
	void noMorningHasTwoMails() {
		this.house.planned("one");
		assertThat(runAt(DUE)).isOne();
		this.house.garden.plan(TaskFixture.task("planted this afternoon", DAY));
		makeAt(DUE.plus(Duration.ofHours(7)));
		assertThat(this.house.node().dispatcher().run()).isZero();
		makeAt(DUE.plus(Duration.ofHours(8)));
		assertThat(runAt(DUE.plus(Duration.ofDays(1)))).isOne();
		assertThat(this.house.received()).hasSize(2);
	}

	/** 22:30 in Berlin; the usual quiet hours end at six. */
	@Test
	void whatIsDueInQuietHoursWaitsForTheirEnd() {
		this.house.garden.plan(TaskFixture.task("one", ben(), DAY));
		this.house.node().materialiser().everybody();
		assertThat(runAt(Instant.parse("2026-11-12T21:30:00Z"))).isZero();
		assertThat(this.house.state("one")).isEqualTo(ReminderState.PENDING);
		assertThat(this.house.nextTry("one")).isEqualTo(Instant.parse("2026-11-13T05:00:00Z"));
		assertThat(runAt(Instant.parse("2026-11-13T05:00:00Z"))).isOne();
	}

	/** Two doors of one house: the one that hangs is not the other's trouble. */
	@Test
	void aChannelThatHangsHoldsUpNoOther() throws Exception {
		this.house.planned("one");
		CountDownLatch mailed = new CountDownLatch(1);
		MailLike mail = (message) -> {
			mailed.countDown();
			return Delivery.of(Outcome.TAKEN);
		};
		CountDownLatch letGo = new CountDownLatch(1);
		Channel hangs = new OtherChannel("webhook", (message) -> {
			await(letGo);
			return Delivery.of(Outcome.TAKEN);
		});
		Node node = Node.start(this.house.source, this.house.garden, List.of(mail, hangs), this.house.clock);
		node.materialiser().everybody();
		this.house.clock.set(DUE);
		Thread run = new Thread(() -> node.dispatcher().run());
		run.start();
		assertThat(mailed.await(20, TimeUnit.SECONDS)).isTrue();
		letGo.countDown();
		run.join();
		assertThat(this.house.mails()).extracting(Message::channel, Message::state)
			.containsExactlyInAnyOrder(tuple("mail", MessageState.SENT), tuple("webhook", MessageState.SENT));
	}

	private static void await(CountDownLatch latch) {
		try {
			latch.await(20, TimeUnit.SECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	/** Reaches whom mail reaches. */
	private record OtherChannel(String code, MailLike delivery) implements Channel {

		@Override
		public String words() {
			return this.code;
		}

		@Override
		public Map<PersonId, String> addresses(Collection<Person> people) {
			return this.delivery.addresses(people);
		}

		@Override
		public Delivery deliver(Message message) {
			return this.delivery.deliver(message);
		}

	}

}
