package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.DayOfWeek;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.language.Speech;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;

import static org.assertj.core.api.Assertions.assertThat;

class LaterTests {

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final QuietHours NEVER = new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);

	/** Ten days, from the day before. */
	private static CareTask task(LocalDate today) {
		return TaskFixture.task("one", today.minusDays(1));
	}

	private static Told told(CareTask task) {
		return new Told(UUID.randomUUID(), TaskFixture.ADA, task.id(), "mail", Topic.RAMP, task.window().from(),
				UUID.randomUUID(), Series.MORNING);
	}

	private static Wishes wishes(LocalTime morning, QuietHours quiet, @Nullable LocalDate pausedUntil) {
		return new Wishes(Speech.USUAL, morning, DayOfWeek.MONDAY, quiet, true, pausedUntil, Map.of(), Map.of());
	}

	private static Optional<Later> later(CareTask task, Wishes wishes, String now) {
		return Later.of(task, told(task), wishes, CHICAGO, Instant.parse(now));
	}

	/**
	 * In the United States clocks go forward at 2:00 on 8 March and back on 1 November
	 * 2026 (15 U.S.C. 260a); Chicago is at UTC-6 and UTC-5 (49 CFR 71).
	 */
	@ParameterizedTest
	@CsvSource({
			// today, morning, day, due
			"2026-03-03T13:00:00Z, 07:00, 2026-03-06, 2026-03-06T13:00:00Z",
			"2026-03-06T13:00:00Z, 07:00, 2026-03-09, 2026-03-09T12:00:00Z",
			"2026-03-05T23:59:59Z, 02:30, 2026-03-08, 2026-03-08T08:00:00Z",
			"2026-03-05T13:00:00Z, 01:59, 2026-03-08, 2026-03-08T07:59:00Z",
			"2026-03-05T13:00:00Z, 03:00, 2026-03-08, 2026-03-08T08:00:00Z",
			"2026-10-30T12:00:00Z, 07:00, 2026-11-02, 2026-11-02T13:00:00Z",
			"2026-10-29T12:00:00Z, 01:30, 2026-11-01, 2026-11-01T06:30:00Z",
			// Past midnight in Greenwich it is still the day before in Chicago.
			"2026-07-02T04:59:59Z, 07:00, 2026-07-04, 2026-07-04T12:00:00Z",
			"2026-07-02T05:00:00Z, 07:00, 2026-07-05, 2026-07-05T12:00:00Z" })
	void itIsDueOnTheMorningInThreeDays(String now, LocalTime morning, LocalDate day, Instant due) {
		CareTask task = task(day.minusDays(3));
		Later later = later(task, wishes(morning, NEVER, null), now).orElseThrow();
		assertThat(later.day()).isEqualTo(day);
		assertThat(later.dueAt()).isEqualTo(due);
		assertThat(later.topic()).as("as before").isEqualTo(Topic.RAMP);
		assertThat(later.dedupKey()).isEqualTo("mail:later:%s@%s".formatted(task.id(), day));
		assertThat(later.bundle()).isEqualTo("morning:" + day);
	}

	@Test
	void itIsOfUseForThreeDaysMoreOrUntilTheTaskEnds() {
		LocalDate today = LocalDate.parse("2026-05-20");
		CareTask ten = task(today);
		assertThat(later(ten, Wishes.USUAL, "2026-05-20T15:00:00Z").orElseThrow().expiresAt())
			.isEqualTo(Instant.parse("2026-05-27T05:00:00Z"));
		// It ends on 24 May.
		CareTask brief = TaskFixture.moved(ten, LocalDate.parse("2026-05-15"));
		assertThat(later(brief, Wishes.USUAL, "2026-05-20T15:00:00Z").orElseThrow().expiresAt())
			.isEqualTo(Instant.parse("2026-05-25T05:00:00Z"));
	}

	@Test
	void itIsNotToldOnceTheTaskIsOver() {
		CareTask ends = TaskFixture.moved(task(LocalDate.parse("2026-05-20")), LocalDate.parse("2026-05-14"));
		assertThat(ends.window().to()).isEqualTo("2026-05-23");
		assertThat(later(ends, Wishes.USUAL, "2026-05-20T15:00:00Z")).get()
			.extracting(Later::day)
			.isEqualTo(LocalDate.parse("2026-05-23"));
		assertThat(later(ends, Wishes.USUAL, "2026-05-21T15:00:00Z")).isEmpty();
	}

	@ParameterizedTest
	@EnumSource(value = TaskState.class, names = "PLANNED", mode = EnumSource.Mode.EXCLUDE)
	void onlyWhatIsPlannedIsToldAgain(TaskState state) {
		CareTask task = TaskFixture.in(state, task(LocalDate.parse("2026-05-20")));
		assertThat(later(task, Wishes.USUAL, "2026-05-20T15:00:00Z")).isEmpty();
	}

	@Test
	void aPauseAndQuietHoursAreKept() {
		CareTask task = task(LocalDate.parse("2026-05-20"));
		String now = "2026-05-20T15:00:00Z";
		LocalTime seven = LocalTime.of(7, 0);
		Later paused = later(task, wishes(seven, QuietHours.USUAL, LocalDate.parse("2026-05-26")), now).orElseThrow();
		assertThat(paused.day()).isEqualTo("2026-05-26");
		assertThat(paused.dueAt()).isEqualTo("2026-05-26T12:00:00Z");
		assertThat(later(task, wishes(seven, QuietHours.USUAL, LocalDate.parse("2026-05-23")), now)).get()
			.extracting(Later::day)
			.isEqualTo(LocalDate.parse("2026-05-23"));
		assertThat(later(task, wishes(seven, QuietHours.USUAL, LocalDate.parse("2026-06-30")), now)).isEmpty();
		QuietHours late = new QuietHours(LocalTime.of(20, 0), LocalTime.of(9, 30));
		assertThat(later(task, wishes(seven, late, null), now).orElseThrow().dueAt()).isEqualTo("2026-05-23T14:30:00Z");
	}

	@Test
	void linksEndSixtyDaysAfterTheFirstDay() {
		Told told = told(task(LocalDate.parse("2026-05-21")));
		assertThat(told.firstDay()).isEqualTo("2026-05-20");
		assertThat(told.endedOn(LocalDate.parse("2026-07-19"))).isFalse();
		assertThat(told.endedOn(LocalDate.parse("2026-07-20"))).isTrue();
	}

}
