package org.leafward.reminders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

import com.zaxxer.hikari.HikariDataSource;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.Person;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What people choose is what becomes of their reminders, at once. */
class ToldAsWishedTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-11T06:00:00Z"));

	private final Garden garden = new Garden();

	private HikariDataSource source;

	private HowToTell howToTell;

	private Reminders reminders;

	@BeforeEach
	void aTaskOfAda() {
		this.source = TestDatabase.fresh();
		JdbcClient database = JdbcClient.create(this.source);
		TransactionTemplate transactions = new TransactionTemplate(new JdbcTransactionManager(this.source));
		List<Channel> channels = List.of(new ChannelFixture("mail", "E-mail", Set.of(ADA)),
				new ChannelFixture("push", "Push messages", Set.of(ADA)));
		WishesTable wishes = new WishesTable(database);
		ReminderTable rows = new ReminderTable(database);
		Materialiser materialiser = new Materialiser(this.garden.people(), this.garden.calendar(), channels, wishes,
				rows, new MessageTable(database), transactions, this.clock);
		this.howToTell = new HowToTell(wishes, new SuppressionTable(database, this.clock), materialiser, transactions,
				this.clock);
		this.reminders = new Reminders(rows);
		this.garden.person("ada", ZoneId.of("Europe/Berlin"));
		this.garden.plan(TaskFixture.task("one", DAY));
		materialiser.person(ADA);
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	private static Wishes wishes(LocalTime morning, QuietHours quiet, LocalDate pausedUntil,
			Map<String, Map<Topic, Wish>> chosen) {
		return new Wishes(Wishes.USUAL.speech(), morning, DayOfWeek.MONDAY, quiet, true, pausedUntil, chosen, Map.of());
	}

	private static Wishes paused(LocalDate until) {
		return wishes(LocalTime.of(7, 0), QuietHours.USUAL, until, Map.of());
	}

	private static Wishes choosing(String channel, Topic topic, Wish wish) {
		return wishes(LocalTime.of(7, 0), QuietHours.USUAL, null, Map.of(channel, Map.of(topic, wish)));
	}

	/** When the task is told of through a channel. */
	private List<Instant> due(String channel) {
		return this.reminders.upcoming(ADA, 100)
			.stream()
			.filter((one) -> one.task() != null && one.channel().equals(channel))
			.map(Reminder::dueAt)
			.toList();
	}

	private List<LocalDate> outlooks(String channel) {
		return this.reminders.upcoming(ADA, 100)
			.stream()
			.filter((one) -> one.topic() == Topic.OUTLOOK && one.channel().equals(channel))
			.map(Reminder::firstDay)
			.toList();
	}

	/** Berlin is at UTC+1 in winter (Directive 2000/84/EC). */
	@Test
	void usuallyBothChannelsTellInTheMorningAndMailHasAnOutlook() {
		assertThat(due("mail")).containsExactly(Instant.parse("2026-11-12T06:00:00Z"));
		assertThat(due("push")).isEqualTo(due("mail"));
		assertThat(outlooks("mail")).containsExactly(LocalDate.parse("2026-11-16"), LocalDate.parse("2026-11-23"));
		assertThat(outlooks("push")).isEmpty();
	}

	@Test
	void aPauseHoldsBackUntilItsDayAndCanBeEnded() {
		this.howToTell.save(ADA, paused(DAY.plusDays(2)));
		assertThat(due("mail")).containsExactly(Instant.parse("2026-11-14T06:00:00Z"));
		this.howToTell.save(ADA, paused(DAY.plusDays(7)));
		assertThat(outlooks("mail")).containsExactly(LocalDate.parse("2026-11-23"));
		assertThat(this.reminders.upcoming(ADA, 100)).allMatch(
				(one) -> !one.dueAt().isBefore(Instant.parse("2026-11-19T06:00:00Z")),
				"waits for the end of the pause");
		this.howToTell.endPause(ADA);
		usuallyBothChannelsTellInTheMorningAndMailHasAnOutlook();
	}

	/** Quiet from, to, the morning, and when the mail goes on Ada's clock. */
	@ParameterizedTest
	@CsvSource({ "22:00, 06:00, 05:00, 06:00", "22:00, 06:00, 06:00, 06:00", "22:00, 04:00, 05:00, 05:00",
			"04:00, 09:30, 05:00, 09:30", "06:00, 06:00, 05:00, 05:00", "23:00, 00:00, 05:00, 05:00" })
	void quietHoursPutTheMorningOff(LocalTime from, LocalTime to, LocalTime morning, LocalTime goes) {
		this.howToTell.save(ADA, wishes(morning, new QuietHours(from, to), null, Map.of()));
		assertThat(due("mail")).containsExactly(DAY.atTime(goes).atZone(ZoneId.of("Europe/Berlin")).toInstant());
	}

	/** Chicago is at UTC-6 in winter (15 U.S.C. 260a, 263). */
	@Test
	void theMorningIsThatOfThePersonsZone() {
		this.garden.persons.put(ADA, new Person(ADA, "ada", "ada@example.org", CHICAGO));
		this.howToTell.save(ADA, wishes(LocalTime.of(6, 30), QuietHours.USUAL, null, Map.of()));
		assertThat(due("mail")).containsExactly(Instant.parse("2026-11-12T12:30:00Z"));
	}

	/** Clocks go from 02:00 to 03:00 on the second Sunday of March (15 U.S.C. 260a). */
	@Test
	void aMorningThatClocksSkipIsTheFirstMinuteAfterIt() {
		this.clock.set(Instant.parse("2027-03-10T12:00:00Z"));
		this.garden.persons.put(ADA, new Person(ADA, "ada", "ada@example.org", CHICAGO));
		this.garden.plan(TaskFixture.task("two", LocalDate.parse("2027-03-14")));
		QuietHours none = new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
		this.howToTell.save(ADA, wishes(LocalTime.of(2, 30), none, null, Map.of()));
		assertThat(due("mail")).containsExactly(Instant.parse("2027-03-14T08:00:00Z"));
	}

	@Test
	void daysAheadBringItForward() {
		this.garden.plan(TaskFixture.task("one", DAY.plusDays(8)));
		this.howToTell.save(ADA, choosing("mail", Topic.TO_DO, new Wish(Manner.MORNING, 3)));
		assertThat(due("mail")).containsExactly(Instant.parse("2026-11-17T06:00:00Z"));
		assertThat(due("push")).containsExactly(Instant.parse("2026-11-20T06:00:00Z"));
	}

	@Test
	void whatIsOffOrWeeklyHasNoReminderOfItsOwn() {
		this.howToTell.save(ADA, choosing("mail", Topic.TO_DO, Wish.of(Manner.OFF)));
		assertThat(due("mail")).isEmpty();
		assertThat(due("push")).hasSize(1);
		this.howToTell.save(ADA, choosing("mail", Topic.TO_DO, Wish.of(Manner.WEEKLY)));
		assertThat(due("mail")).isEmpty();
		assertThat(outlooks("mail")).hasSize(2);
		this.howToTell.save(ADA, choosing("mail", Topic.TO_DO, Wish.of(Manner.SINGLE)));
		assertThat(due("mail")).hasSize(1);
	}

	@Test
	void aSeriesThatWasLeftGoesOutNoMoreUntilItIsWantedAgain() {
		this.howToTell.stop(ADA, "mail", Series.MORNING);
		assertThat(due("mail")).isEmpty();
		assertThat(due("push")).hasSize(1);
		assertThat(outlooks("mail")).hasSize(2);
		this.howToTell.stop(ADA, "mail", Series.OUTLOOK);
		assertThat(outlooks("mail")).isEmpty();
		this.howToTell.resume(ADA, "mail", Series.MORNING);
		assertThat(due("mail")).hasSize(1);
		assertThat(outlooks("mail")).isEmpty();
	}

}
