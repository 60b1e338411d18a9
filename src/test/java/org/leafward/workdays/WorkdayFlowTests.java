package org.leafward.workdays;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.OtherMails;
import org.leafward.accounts.OtherMails.Letter;
import org.leafward.accounts.OtherMails.Standing;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Post;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Wishes;
import org.leafward.support.TestDatabase;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.store.DayMailTable.MessageRow;
import org.leafward.workdays.store.DayMailTable;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/**
 * From a group to its thanks: places, waiting, invitations and answers on real tables.
 */
@SpringBootTest
@ContextConfiguration(initializers = TestDatabase.class)
class WorkdayFlowTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private People people;

	@Autowired
	private GroupDesk desk;

	@Autowired
	private Groups groups;

	@Autowired
	private GroupLinks links;

	@Autowired
	private WorkdayDesk days;

	@Autowired
	private Workdays workdays;

	@Autowired
	private SignUps signUps;

	@Autowired
	private Answers answers;

	@Autowired
	private OnTheDay day;

	@Autowired
	private HoursReport hours;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private DayMailTable outbox;

	@Autowired
	private OtherMails letters;

	@Autowired
	private JdbcClient database;

	@Autowired
	private TransactionTemplate transaction;

	@Autowired
	private HowToTell wishes;

	@Autowired
	private Scheduler quartz;

	private GroupId group;

	private PersonId lead;

	private LocalDate saturday;

	/** The job that sends mails would empty those that these tests read. */
	@BeforeEach
	void quiet() throws SchedulerException {
		this.quartz.standby();
	}

	@AfterEach
	void goOn() throws SchedulerException {
		this.quartz.start();
	}

	@BeforeEach
	void group() {
		this.database.sql("delete from workdays.message").update();
		this.saturday = LocalDate.now(ZONE).plusDays(20);
		this.lead = person();
		this.group = this.desk.make(TestCrew.told(ZONE, 2), this.lead);
	}

	private PersonId person() {
		PersonId id = this.people.join("Somebody", UUID.randomUUID() + "@example.org", ZONE).id();
		this.people.confirm(id);
		return id;
	}

	private PersonId member() {
		PersonId id = person();
		this.desk.join(this.group, id);
		return id;
	}

	private WorkdayId fixed(int capacity) {
		WorkdayId id = this.days.add(this.groups.find(this.group).orElseThrow(),
				TestCrew.at(this.saturday, capacity, null));
		this.days.fix(id);
		return id;
	}

	private SignUpState state(WorkdayId workday, PersonId person) {
		return this.workdays.signUps(workday)
			.stream()
			.filter((one) -> one.person().equals(person))
			.map(SignUp::state)
			.findFirst()
			.orElse(null);
	}

	private List<MessageRow> mails(WorkdayId workday, PersonId to) {
		List<MessageRow> all = new ArrayList<>(
				this.outbox.of(workday).stream().filter((one) -> one.person().equals(to)).toList());
		Collections.reverse(all);
		return all;
	}

	private static VEvent event(MessageRow mail) {
		return Biweekly.parse(mail.calendar()).first().getEvents().get(0);
	}

	@Test
	void whoeverWaitsMovesUpByThemselvesAndIsTold() {
		PersonId first = member();
		PersonId second = member();
		PersonId third = member();
		WorkdayId workday = fixed(2);
		this.signUps.come(workday, first, 1, true);
		this.signUps.come(workday, second, 0, false);
		this.signUps.come(workday, third, 0, false);
		assertThat(state(workday, second)).isEqualTo(SignUpState.WAITING);
		assertThat(this.workdays.find(workday).orElseThrow().places()).isEqualTo(2);
		this.signUps.stayAway(workday, first);
		assertThat(state(workday, second)).isEqualTo(SignUpState.IN);
		assertThat(state(workday, third)).isEqualTo(SignUpState.IN);
		assertThat(mails(workday, second)).extracting(MessageRow::kind).containsExactly("invited", "place");
		this.desk.leave(this.group, second);
		assertThat(state(workday, second)).isEqualTo(SignUpState.OUT);
		assertThat(mails(workday, second)).extracting(MessageRow::method)
			.containsExactly("REQUEST", "REQUEST", "CANCEL");
		assertThatThrownBy(() -> this.signUps.come(workday, first, 2, false)).isInstanceOf(BadInput.class)
			.hasMessageContaining("guardian");
	}

	@Test
	void invitationsRiseInSequenceWhenDayTimeOrPlaceChangeAndEndWithACancel() {
		PersonId member = member();
		WorkdayId workday = fixed(5);
		this.days.move(workday, TestCrew.at(this.saturday, 9, null));
		assertThat(mails(workday, member)).as("another number of places asks nobody anew").hasSize(1);
		LocalDate next = this.saturday.plusDays(7);
		this.days.move(workday, new Frame(next, LocalTime.of(10, 0), LocalTime.of(12, 0), "the gate", 9, null));
		this.days.callOff(workday, "Thunderstorms are forecast.");
		List<MessageRow> mails = mails(workday, member);
		assertThat(mails).extracting(MessageRow::method).containsExactly("REQUEST", "REQUEST", "CANCEL");
		assertThat(mails).extracting((one) -> event(one).getSequence().getValue()).containsExactly(0, 1, 2);
		assertThat(mails).extracting((one) -> event(one).getUid().getValue())
			.containsOnly("workday-%s@leafward".formatted(workday));
		assertThat(mails).extracting((one) -> event(one).getOrganizer().getEmail())
			.as("one organizer for all")
			.hasSize(3)
			.containsOnly(event(mails.get(0)).getOrganizer().getEmail());
		assertThat(event(mails.get(1)).getDateStart().getValue().toInstant())
			.isEqualTo(next.atTime(10, 0).atZone(ZONE).toInstant());
		assertThat(event(mails.get(2)).getStatus().getValue()).isEqualTo("CANCELLED");
		assertThat(mails.get(2).body()).contains("Thunderstorms are forecast.");
		assertThatThrownBy(() -> this.signUps.come(workday, member, 0, false)).isInstanceOf(BadInput.class);
		assertThat(this.workdays.ofPerson(member, new DayWindow(this.saturday, next.plusDays(1)))).singleElement()
			.matches((one) -> one.invited() && one.workday().state() == WorkdayState.CALLED_OFF);
	}

	@Test
	void whoSaidThatTheyCanNotComeOnSuchADayIsNotAsked() {
		PersonId free = member();
		PersonId busy = member();
		this.desk.tell(this.group, busy, Set.of(Skill.SAW), Set.of(this.saturday.plusDays(1).getDayOfWeek()), Set.of(),
				"");
		PersonId unconfirmed = this.people.join("New", UUID.randomUUID() + "@example.org", ZONE).id();
		this.desk.join(this.group, unconfirmed);
		WorkdayId workday = fixed(5);
		assertThat(mails(workday, free)).hasSize(1);
		assertThat(mails(workday, busy)).isEmpty();
		assertThat(mails(workday, unconfirmed)).as("no mail before the address is confirmed").isEmpty();
	}

	@Test
	void answersOfCalendarProgramsCountForWhoWasAskedAndForTheLatestInvitationOnly() {
		PersonId member = member();
		WorkdayId workday = fixed(5);
		String token = mails(workday, member).get(0).body().replaceAll("(?s).*/w/([0-9a-f]{32}).*", "$1");
		String yes = reply(workday, 0, "ACCEPTED");
		assertThat(this.answers.take(token, yes)).isTrue();
		assertThat(state(workday, member)).isEqualTo(SignUpState.IN);
		assertThat(this.answers.take(token, reply(workday, 0, "DECLINED"))).isTrue();
		assertThat(state(workday, member)).isEqualTo(SignUpState.OUT);
		assertThat(this.answers.take(token.replace(token.charAt(0), (token.charAt(0) == 'a') ? 'b' : 'a'), yes))
			.isFalse();
		assertThat(this.answers.take(token, yes.replace("METHOD:REPLY", "METHOD:COUNTER"))).isFalse();
		assertThat(this.answers.take(token, reply(new WorkdayId(UUID.randomUUID()), 0, "ACCEPTED"))).isFalse();
		this.days.move(workday, TestCrew.at(this.saturday.plusDays(1), 5, null));
		assertThat(this.answers.take(token, yes)).as("it answers the day before the move").isFalse();
		assertThat(this.answers.take(token, reply(workday, 1, "ACCEPTED"))).isTrue();
		this.desk.leave(this.group, member);
		assertThat(this.answers.find(token)).as("who left answers no more").isEmpty();
	}

	private static String reply(WorkdayId workday, int sequence, String answer) {
		return "BEGIN:VCALENDAR\r\nMETHOD:REPLY\r\nBEGIN:VEVENT\r\nUID:workday-%s@leafward\r\nSEQUENCE:%d\r\nATTENDEE;PARTSTAT=%s:mailto:x@example.org\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
			.formatted(workday, sequence, answer);
	}

	/** A later mail about the same workday never overtakes one that waits. */
	@Test
	void mailsToOnePersonAboutOneWorkdayLeaveInOrder() {
		PersonId member = member();
		WorkdayId workday = fixed(5);
		this.days.callOff(workday, "Rain.");
		Instant now = Instant.now().plusSeconds(60);
		List<MessageRow> first = this.outbox.claim(50, now, Duration.ofMinutes(5));
		assertThat(first).extracting(MessageRow::method).containsOnly("REQUEST").hasSize(2);
		assertThat(this.outbox.claim(50, now, Duration.ofMinutes(5))).as("claimed by somebody else").isEmpty();
		MessageRow theirs = first.stream().filter((one) -> one.person().equals(member)).findFirst().orElseThrow();
		this.outbox.finish(theirs.id(), "WAITING", "451 later", now, now.plusSeconds(3600));
		assertThat(this.outbox.claim(50, now, Duration.ofMinutes(5))).isEmpty();
		List<MessageRow> again = this.outbox.claim(50, now.plusSeconds(3700), Duration.ofMinutes(5));
		assertThat(again).filteredOn((one) -> one.person().equals(member))
			.extracting(MessageRow::method)
			.containsExactly("REQUEST");
		this.outbox.finish(theirs.id(), "SENT", null, now, now);
		assertThat(this.outbox.claim(50, now.plusSeconds(3700), Duration.ofMinutes(5)))
			.filteredOn((one) -> one.person().equals(member))
			.extracting(MessageRow::method)
			.containsExactly("CANCEL");
		assertThat(mails(workday, member).get(0).body()).as("what was sent loses its link").isEmpty();
	}

	@Test
	void withoutAMailServerMailsAreKeptAndTheRoundEnds() {
		fixed(5);
		assertThat(this.database.sql("select count(*) from workdays.message where state = 'WAITING'")
			.query(Long.class)
			.single()).isEqualTo(1);
		PostRound round = new PostRound(this.outbox,
				new StaticListableBeanFactory(Map.of("post", new Refusing())).getBeanProvider(Post.class),
				Clock.systemUTC());
		assertThat(round.send(Duration.ofSeconds(5))).isEqualTo(1);
		assertThat(this.database.sql("select state from workdays.message").query(String.class).single())
			.isEqualTo("KEPT");
		// Whom it is to reads it in the outbox, and nobody else.
		PersonId to = new PersonId(
				this.database.sql("select person_id from workdays.message").query(UUID.class).single());
		Letter kept = this.letters.newest(to, 25).get(0);
		assertThat(kept.standing()).isEqualTo(Standing.KEPT);
		assertThat(kept.text()).contains("/w/");
		assertThat(this.letters.find(kept.id())).contains(kept);
		assertThat(this.letters.newest(new PersonId(UUID.randomUUID()), 25)).isEmpty();
	}

	private static final class Refusing implements Post {

		@Override
		public String sender() {
			return "crew@example.org";
		}

		@Override
		public Handed hand(Mail mail) {
			return new Handed(Outcome.KEPT, "no mail server is set up");
		}

	}

	@Test
	void linksJoinUntilTheyAreWithdrawn() {
		String secret = this.links.make(this.group, this.lead);
		assertThat(this.links.find(secret)).contains(this.group);
		assertThat(this.links.find(secret + "x")).isEmpty();
		this.links.withdraw(this.group, this.links.of(this.group).get(0).id());
		assertThat(this.links.find(secret)).isEmpty();
		assertThat(this.database.sql("select count(*) from workdays.invitation where group_id = ?")
			.param(this.group.value())
			.query(Long.class)
			.single()).isZero();
	}

	@Test
	void nobodyLeavesAGroupWithoutSomebodyWhoLeads() {
		PersonId member = member();
		assertThatThrownBy(() -> this.desk.leave(this.group, this.lead)).isInstanceOf(BadInput.class);
		this.desk.lead(this.group, member, true);
		this.desk.leave(this.group, this.lead);
		this.desk.leave(this.group, member);
		assertThat(this.groups.find(this.group)).isEmpty();
	}

	@Test
	void hoursAreSummedForTheYearAndThanksGoOutOnce() {
		PersonId member = member();
		this.saturday = LocalDate.now(ZONE);
		WorkdayId workday = fixed(5);
		this.day.hours(workday, Map.of(member, 150, this.lead, 0));
		this.day.thank(workday);
		assertThat(mails(workday, member)).last()
			.matches((one) -> one.kind().equals("thanks") && one.body().contains("2 h 30 min"));
		assertThat(mails(workday, this.lead)).noneMatch((one) -> one.kind().equals("thanks"));
		assertThatThrownBy(() -> this.day.thank(workday)).isInstanceOf(BadInput.class);
		assertThat(this.hours.of(this.group, this.saturday.getYear())).singleElement()
			.isEqualTo(new HoursReport.Line("Somebody", 1, 150));
		assertThatThrownBy(() -> this.signUps.worked(workday, member, 1441)).isInstanceOf(BadInput.class);
	}

	/** Deleting an account takes the person, not the work that the group did. */
	@Test
	void hoursOfSomebodyWhoIsDeletedStayInTheSumOfNobody() {
		PersonId member = member();
		this.saturday = LocalDate.now(ZONE);
		WorkdayId workday = fixed(5);
		this.day.hours(workday, Map.of(member, 150, this.lead, 60));
		this.records.leave(member);
		assertThat(this.hours.of(this.group, this.saturday.getYear())).containsExactly(new HoursReport.Line("", 1, 150),
				new HoursReport.Line("Somebody", 1, 60));
		assertThat(this.workdays.signUps(workday)).extracting(SignUp::person).containsExactly(this.lead);
	}

	@Test
	void hoursOfTwoAccountsOfOnePersonCountOnce() {
		PersonId member = member();
		PersonId same = member();
		this.saturday = LocalDate.now(ZONE);
		WorkdayId workday = fixed(5);
		this.day.hours(workday, Map.of(member, 150, same, 120));
		this.records.merge(same, member);
		assertThat(this.hours.of(this.group, this.saturday.getYear()))
			.containsExactly(new HoursReport.Line("Somebody", 1, 150));
	}

	@Test
	void aPlaceOfADeletedAccountGoesToWhoeverWaits() {
		PersonId first = member();
		PersonId second = member();
		WorkdayId workday = fixed(1);
		this.signUps.come(workday, first, 0, false);
		this.signUps.come(workday, second, 0, false);
		this.records.leave(first);
		assertThat(state(workday, second)).isEqualTo(SignUpState.IN);
		assertThat(mails(workday, second)).extracting(MessageRow::kind).containsExactly("invited", "place");
		assertThat(this.outbox.of(workday)).noneMatch((one) -> one.person().equals(first));
	}

	@Test
	void whoeverLeavesWhileWaitingIsPassedBy() {
		PersonId first = member();
		PersonId second = member();
		PersonId third = member();
		WorkdayId workday = fixed(1);
		List.of(first, second, third).forEach((one) -> this.signUps.come(workday, one, 0, false));
		this.desk.leave(this.group, second);
		this.signUps.stayAway(workday, first);
		assertThat(state(workday, third)).isEqualTo(SignUpState.IN);
		assertThat(state(workday, second)).isEqualTo(SignUpState.OUT);
	}

	/** Everybody is written to as they chose for their reminders. */
	@Test
	void mailsAreInTheLanguageOfEachMember() {
		PersonId spanish = member();
		PersonId english = member();
		this.wishes.save(spanish, new Wishes(new Speech(Language.SPANISH, Units.METRIC), Wishes.USUAL.morning(),
				Wishes.USUAL.outlookDay(), Wishes.USUAL.quiet(), true, null, Map.of(), Map.of()));
		this.desk.lead(this.group, spanish, true);
		WorkdayId workday = fixed(1);
		this.signUps.come(workday, english, 0, false);
		this.signUps.come(workday, spanish, 0, false);
		this.signUps.stayAway(workday, english);
		this.days.move(workday,
				new Frame(this.saturday.plusDays(1), LocalTime.of(9, 0), LocalTime.of(12, 0), "the gate", 1, null));
		this.days.callOff(workday, "The weather doesn’t allow it.");
		List<MessageRow> theirs = mails(workday, spanish);
		assertThat(theirs).extracting(MessageRow::kind).containsExactly("invited", "place", "changed", "called-off");
		assertThat(theirs).extracting((one) -> one.subject().split(":")[0])
			.satisfiesExactly((one) -> assertThat(one).startsWith("Jornada del"),
					(one) -> assertThat(one).isEqualTo("Tiene un lugar"), (one) -> assertThat(one).isEqualTo("Cambio"),
					(one) -> assertThat(one).isEqualTo("Cancelada"));
		assertThat(theirs).extracting(MessageRow::language).containsOnly("es");
		assertThat(theirs).extracting((one) -> event(one).getSummary().getValue()).containsOnly("Jornada: Crew");
		assertThat(event(theirs.get(0)).getDescription().getValue()).contains("Punto de encuentro: the shed");
		assertThat(theirs.get(3).body()).contains("El tiempo no lo permite.", "por favor, no venga");
		assertThat(mails(workday, english)).extracting(MessageRow::language).containsOnly("en");
		assertThat(mails(workday, english).get(0).subject()).startsWith("Workday on");
	}

	/** Eight people press at once; each round has one place. */
	@Test
	void theLastPlaceIsGivenOnce() throws Exception {
		List<PersonId> all = Stream.generate(this::member).limit(8).toList();
		WorkdayId workday = fixed(1);
		CountDownLatch go = new CountDownLatch(1);
		try (Threads threads = new Threads(all.size())) {
			List<Future<SignUp>> answers = all.stream().map((one) -> threads.submit(() -> {
				go.await();
				return this.signUps.come(workday, one, 0, false);
			})).toList();
			go.countDown();
			for (Future<SignUp> one : answers) {
				one.get(60, TimeUnit.SECONDS);
			}
		}
		assertThat(this.workdays.signUps(workday)).extracting(SignUp::state)
			.hasSize(8)
			.containsOnlyOnce(SignUpState.IN)
			.doesNotContain(SignUpState.OUT);
		assertThat(this.workdays.find(workday).orElseThrow()).matches((one) -> one.places() == 1 && one.waiting() == 7);
	}

	/**
	 * Somebody is taken out of the group at the moment in which they press "I come": they
	 * wait for it, and have no place afterwards.
	 */
	@Test
	void whoIsTakenOutOfTheGroupMeanwhileDoesNotSignUp() throws Exception {
		PersonId member = member();
		WorkdayId workday = fixed(5);
		CountDownLatch out = new CountDownLatch(1);
		CountDownLatch end = new CountDownLatch(1);
		try (Threads threads = new Threads(2)) {
			Future<?> leaving = threads.submit(() -> {
				this.transaction.executeWithoutResult((status) -> {
					this.desk.leave(this.group, member);
					out.countDown();
					await(end);
				});
				return true;
			});
			await(out);
			Future<SignUp> coming = threads.submit(() -> this.signUps.come(workday, member, 0, false));
			untilSomebodyWaitsForARow();
			end.countDown();
			leaving.get(30, TimeUnit.SECONDS);
			assertThatThrownBy(() -> coming.get(30, TimeUnit.SECONDS)).hasCauseInstanceOf(BadInput.class)
				.hasMessageContaining("only members sign up");
		}
		assertThat(this.workdays.signUps(workday)).noneMatch((one) -> one.person().equals(member));
		assertThatThrownBy(() -> this.signUps.stayAway(workday, member)).isInstanceOf(BadInput.class);
	}

	private static void await(CountDownLatch latch) {
		try {
			assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
		}
		catch (InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private void untilSomebodyWaitsForARow() throws InterruptedException {
		for (int tries = 0; tries < 300; tries++) {
			long waiting = this.database.sql("""
					select count(*) from pg_stat_activity
					where datname = current_database() and wait_event_type = 'Lock' and query like '%key share%'
					""").query(Long.class).single();
			if (waiting > 0) {
				return;
			}
			Thread.sleep(20);
		}
		throw new AssertionError("nobody waits");
	}

	private static final class Threads implements AutoCloseable {

		private final ExecutorService pool;

		private Threads(int number) {
			this.pool = Executors.newFixedThreadPool(number);
		}

		private <T> Future<T> submit(Callable<T> work) {
			return this.pool.submit(work);
		}

		@Override
		public void close() {
			this.pool.shutdownNow();
		}

	}

	/**
	 * The day on which clocks go forward in the United States, the second Sunday of March
	 * (15 U.S.C. 260a): a workday from 1 to 4 is two hours long.
	 */
	@Test
	void onTheDayOfTheClockChangeTimesAreThoseOfTheClock() {
		LocalDate march = LocalDate.of(LocalDate.now(ZONE).getYear() + 1, 3, 1);
		this.saturday = march.with(TemporalAdjusters.dayOfWeekInMonth(2, DayOfWeek.SUNDAY));
		PersonId member = member();
		WorkdayId workday = this.days.add(this.groups.find(this.group).orElseThrow(),
				new Frame(this.saturday, LocalTime.of(1, 0), LocalTime.of(4, 0), "the shed", 3, null));
		this.days.fix(workday);
		Workday kept = this.workdays.find(workday).orElseThrow();
		assertThat(Duration.between(kept.start(), kept.end())).isEqualTo(Duration.ofHours(2));
		// Biweekly reads all of this day by the offset of the night before it.
		String day = this.saturday.format(DateTimeFormatter.BASIC_ISO_DATE);
		assertThat(mails(workday, member).get(0).calendar().lines())
			.contains("DTSTART;TZID=%s:%sT010000".formatted(ZONE, day), "DTEND;TZID=%s:%sT040000".formatted(ZONE, day));
	}

	@Test
	void aWorkdayThatIsOverTakesNobodyAndNoDayIsPlannedInThePast() {
		PersonId member = member();
		WorkdayId workday = fixed(5);
		this.database.sql("update workdays.workday set day = ? where id = ?")
			.params(LocalDate.now(ZONE).minusDays(1), workday.value())
			.update();
		assertThatThrownBy(() -> this.signUps.come(workday, member, 0, false)).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> this.signUps.stayAway(workday, member)).isInstanceOf(BadInput.class);
		this.saturday = LocalDate.now(ZONE).minusDays(1);
		assertThatThrownBy(() -> fixed(5)).isInstanceOf(BadInput.class);
		this.saturday = LocalDate.now(ZONE).plusDays(20);
		assertThatThrownBy(() -> fixed(0)).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> fixed(501)).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> this.days.callOff(fixed(5), "x".repeat(301))).isInstanceOf(BadInput.class);
	}

}
