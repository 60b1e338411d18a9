package org.leafward.reminders.core;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.Beginning;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.language.Speech;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.leafward.reminders.TaskFixture.ADA;

class DueTasksTests {

	/** A Thursday. */
	private static final LocalDate TODAY = LocalDate.parse("2026-11-12");

	private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

	/** 06:30 in Berlin. */
	private static final Instant NOW = Instant.parse("2026-11-12T05:30:00Z");

	private static Beginning task(String name, TaskKind kind, LocalDate from, TaskState state) {
		return new Beginning(new TaskId(TaskFixture.id(name)), ADA, kind, from, from.plusDays(9), false, false, false,
				state);
	}

	private static Beginning task(String name, LocalDate from) {
		return task(name, TaskKind.DO, from, TaskState.PLANNED);
	}

	private static Beginning ramp(String name, boolean first, boolean held) {
		return new Beginning(new TaskId(TaskFixture.id(name)), ADA, TaskKind.RAMP_DAY, TODAY, TODAY, first, held, false,
				TaskState.PLANNED);
	}

	private static Beginning night(LocalDate day) {
		return new Beginning(new TaskId(TaskFixture.id("night")), ADA, TaskKind.DO, day, day, false, false, true,
				TaskState.PLANNED);
	}

	private static Wishes wishes(Map<Topic, Wish> mail) {
		return new Wishes(Speech.USUAL, LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL, true, null,
				Map.of("mail", mail), Map.of());
	}

	private static Wishes noOutlook() {
		return wishes(Map.of(Topic.OUTLOOK, Wish.of(Manner.OFF)));
	}

	private static List<Wanted> wanted(Wishes wishes, Instant now, List<Known> known, Beginning... tasks) {
		return new DueTasks(ADA, ZONE, now, wishes).wanted("mail", Arrays.asList(tasks), known);
	}

	private static List<Wanted> wanted(Beginning... tasks) {
		return wanted(noOutlook(), NOW, List.of(), tasks);
	}

	private static Known told(String name, LocalDate day, ReminderState state) {
		UUID task = TaskFixture.id(name);
		return new Known(TaskFixture.id("row"), task, "mail:" + task + "@" + day, "morning:" + day, day,
				DueTimes.dueAt(day, ZONE), state);
	}

	@ParameterizedTest
	@CsvSource({ "DO,TO_DO", "HOLD_OFF,HOLD_OFF" })
	void isToldOnTheMorningOfTheFirstDay(TaskKind kind, Topic topic) {
		assertThat(wanted(task("one", kind, TODAY, TaskState.PLANNED)))
			.containsExactly(new Wanted("mail", topic, TaskFixture.id("one"), TODAY, "morning:2026-11-12",
					Instant.parse("2026-11-12T06:00:00Z"), Instant.parse("2026-11-15T23:00:00Z")));
	}

	@Test
	void whatToLookForIsInTheOutlookOnly() {
		Beginning watch = task("one", TaskKind.WATCH, TODAY, TaskState.PLANNED);
		assertThat(wanted(watch)).isEmpty();
		assertThat(wanted(wishes(Map.of(Topic.LOOK_FOR, Wish.of(Manner.MORNING), Topic.OUTLOOK, Wish.of(Manner.OFF))),
				NOW, List.of(), watch))
			.hasSize(1);
	}

	@Test
	void ofARampTheFirstDayIsToldAndDaysThatWait() {
		assertThat(wanted(ramp("first", true, false), ramp("second", false, false), ramp("held", false, true)))
			.extracting(Wanted::subject)
			.containsExactly(TaskFixture.id("first"), TaskFixture.id("held"));
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PLANNED")
	void whatNoLongerStandsIsNotTold(TaskState state) {
		assertThat(wanted(task("over", TaskKind.DO, TODAY, state))).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "-4,false", "-3,true", "0,true", "14,true", "15,false" })
	void onlyFirstDaysNearTodayCount(int days, boolean counts) {
		assertThat(wanted(task("one", TODAY.plusDays(days)))).hasSize(counts ? 1 : 0);
	}

	@ParameterizedTest
	@CsvSource({ "14,14,true", "15,14,true", "28,14,true", "29,14,false", "17,2,false" })
	void whoWantsToKnowBeforeIsToldBefore(int first, int lead, boolean counts) {
		Wishes before = wishes(Map.of(Topic.TO_DO, new Wish(Manner.MORNING, lead), Topic.OUTLOOK, Wish.of(Manner.OFF)));
		List<Wanted> wanted = wanted(before, NOW, List.of(), task("one", TODAY.plusDays(first)));
		assertThat(wanted).hasSize(counts ? 1 : 0);
		assertThat(wanted)
			.allSatisfy((one) -> assertThat(one.bundle()).isEqualTo("morning:" + TODAY.plusDays(first - lead)));
	}

	@Test
	void eachOnItsOwnHasABundleOfItsOwn() {
		Wishes single = wishes(Map.of(Topic.TO_DO, Wish.of(Manner.SINGLE), Topic.OUTLOOK, Wish.of(Manner.OFF)));
		assertThat(wanted(single, NOW, List.of(), task("one", TODAY), task("two", TODAY))).extracting(Wanted::bundle)
			.doesNotHaveDuplicates()
			.allMatch((bundle) -> bundle.startsWith("single:"));
	}

	/** What kills tonight is of no use tomorrow. */
	@Test
	void aNightIsToldApartUntilItIsOver() {
		assertThat(wanted(night(TODAY)))
			.containsExactly(new Wanted("mail", Topic.TONIGHT, TaskFixture.id("night"), TODAY, "tonight:2026-11-12",
					Instant.parse("2026-11-12T06:00:00Z"), Instant.parse("2026-11-12T23:00:00Z")));
	}

	@Test
	void aSeriesThatWasLeftIsNotMade() {
		Wishes left = new Wishes(Speech.USUAL, LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL, true, null,
				Map.of(), Map.of("mail", Set.of(Series.MORNING, Series.OUTLOOK)));
		assertThat(wanted(left, NOW, List.of(), task("one", TODAY), night(TODAY))).extracting(Wanted::topic)
			.containsExactly(Topic.TONIGHT);
	}

	@Test
	void outlooksFallOnTheirDayTogetherWithTheMorning() {
		assertThat(wanted(Wishes.USUAL, NOW, List.of(), task("one", LocalDate.parse("2026-11-16"))))
			.extracting(Wanted::topic, Wanted::firstDay, Wanted::bundle)
			.containsExactly(tuple(Topic.TO_DO, LocalDate.parse("2026-11-16"), "morning:2026-11-16"),
					tuple(Topic.OUTLOOK, LocalDate.parse("2026-11-16"), "morning:2026-11-16"),
					tuple(Topic.OUTLOOK, LocalDate.parse("2026-11-23"), "morning:2026-11-23"));
	}

	@Test
	void aPauseMovesWhatIsOfUseAfterItAndDropsTheRest() {
		Wishes away = new Wishes(Speech.USUAL, LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL, true,
				LocalDate.parse("2026-11-20"), Map.of(), Map.of());
		assertThat(wanted(away, NOW, List.of(), task("lost", TODAY), task("kept", LocalDate.parse("2026-11-18"))))
			.extracting(Wanted::subject, Wanted::dueAt)
			.containsExactly(tuple(TaskFixture.id("kept"), Instant.parse("2026-11-20T06:00:00Z")),
					tuple(ADA.value(), Instant.parse("2026-11-23T06:00:00Z")));
	}

	@Test
	void quietHoursMoveTheMorningButNotANight() {
		Wishes late = new Wishes(Speech.USUAL, LocalTime.of(7, 0), DayOfWeek.MONDAY,
				new QuietHours(LocalTime.of(21, 0), LocalTime.of(9, 30)), true, null,
				Map.of("mail", Map.of(Topic.OUTLOOK, Wish.of(Manner.OFF))), Map.of());
		assertThat(wanted(late, NOW, List.of(), task("one", TODAY), night(TODAY))).extracting(Wanted::dueAt)
			.containsExactly(Instant.parse("2026-11-12T08:30:00Z"), Instant.parse("2026-11-12T06:00:00Z"));
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void whatWasToldAndFellAwayIsToldOnce(ReminderState state) {
		boolean told = state == ReminderState.SENT || state == ReminderState.KEPT;
		LocalDate day = TODAY.minusDays(2);
		assertThat(wanted(noOutlook(), NOW, List.of(told("one", day, state)),
				task("one", TaskKind.DO, day, TaskState.WITHDRAWN)))
			.extracting(Wanted::topic, Wanted::firstDay, Wanted::dueAt)
			.isEqualTo(told ? List.of(tuple(Topic.CHANGE, day, Instant.parse("2026-11-12T06:00:00Z"))) : List.of());
	}

	@ParameterizedTest
	@CsvSource({ "3,false", "4,true", "20,true" })
	void whatWasToldAndMovedFarIsTold(int days, boolean counts) {
		LocalDate day = TODAY.minusDays(1);
		assertThat(
				wanted(noOutlook(), NOW, List.of(told("one", day, ReminderState.SENT)), task("one", day.plusDays(days)))
					.stream()
					.filter((one) -> one.topic() == Topic.CHANGE))
			.hasSize(counts ? 1 : 0);
	}

	@Test
	void whatFellAwayAfterItsDaysIsNotTold() {
		LocalDate day = TODAY.minusDays(11);
		assertThat(wanted(noOutlook(), NOW, List.of(told("one", day, ReminderState.SENT)),
				task("one", TaskKind.DO, day, TaskState.WITHDRAWN)))
			.isEmpty();
	}

	/** 08:00 in Berlin: this morning's message has left. */
	@Test
	void aChangeAfterTheMorningWaitsForTheNext() {
		assertThat(wanted(noOutlook(), Instant.parse("2026-11-12T07:00:00Z"),
				List.of(told("one", TODAY, ReminderState.SENT)), task("one", TaskKind.DO, TODAY, TaskState.WITHDRAWN)))
			.extracting(Wanted::dueAt, Wanted::bundle)
			.containsExactly(tuple(Instant.parse("2026-11-13T06:00:00Z"), "morning:2026-11-13"));
	}

	/** 14:00 in Berlin. */
	private static final Instant AFTERNOON = Instant.parse("2026-11-12T13:00:00Z");

	@Test
	void whatComesUpAfterTheMorningsMessageWaitsForTheNext() {
		assertThat(wanted(noOutlook(), AFTERNOON, List.of(told("one", TODAY, ReminderState.SENT)), task("new", TODAY)))
			.extracting(Wanted::dueAt, Wanted::bundle)
			.containsExactly(tuple(Instant.parse("2026-11-13T06:00:00Z"), "morning:2026-11-13"));
	}

	@Test
	void whoWasNotToldTodayNeedNotWait() {
		assertThat(wanted(noOutlook(), AFTERNOON, List.of(told("one", TODAY.minusDays(1), ReminderState.SENT)),
				task("new", TODAY.minusDays(2))))
			.extracting(Wanted::dueAt, Wanted::bundle)
			.containsExactly(tuple(AFTERNOON, "morning:2026-11-12"));
	}

	/** The mail server was away this morning. */
	@Test
	void whatIsDueAndHasNotLeftKeepsItsTurn() {
		LocalDate day = TODAY.minusDays(2);
		Known waits = told("one", day, ReminderState.PENDING);
		assertThat(wanted(noOutlook(), AFTERNOON, List.of(waits), task("one", day))).extracting(Wanted::dueAt)
			.containsExactly(waits.dueAt());
	}

	@Test
	void aNightDoesNotWaitForAMorning() {
		assertThat(wanted(noOutlook(), AFTERNOON, List.of(told("one", TODAY, ReminderState.SENT)), night(TODAY)))
			.extracting(Wanted::dueAt)
			.containsExactly(Instant.parse("2026-11-12T06:00:00Z"));
	}

	/** 16 November 2026 is a Monday; 14:00 in Berlin. */
	@Test
	void anOutlookIsMadeLateForThoseOnlyWhoWereNotToldThatDay() {
		Instant monday = Instant.parse("2026-11-16T13:00:00Z");
		LocalDate day = LocalDate.parse("2026-11-16");
		assertThat(wanted(Wishes.USUAL, monday, List.of())).extracting(Wanted::firstDay)
			.containsExactly(day, day.plusDays(7), day.plusDays(14));
		assertThat(wanted(Wishes.USUAL, monday, List.of(told("one", day, ReminderState.SENT))))
			.extracting(Wanted::firstDay)
			.containsExactly(day.plusDays(7), day.plusDays(14));
		assertThat(wanted(Wishes.USUAL, monday.plusSeconds(86_400), List.of())).extracting(Wanted::firstDay)
			.containsExactly(day.plusDays(7), day.plusDays(14));
	}

}
