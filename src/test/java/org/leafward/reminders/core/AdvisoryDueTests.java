package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.language.Speech;
import org.leafward.reminders.AdvisoriesInMemory;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.AdvisoryDue.Turn;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * When advisories are told: issue 8 wants one mail a day at most unless a frost is near;
 * the rest is common practice without a source. Berlin is an hour ahead of UTC in
 * November; mornings are at 7, quiet is from 22 to 6.
 */
class AdvisoryDueTests {

	private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

	private static final UUID ID = new UUID(9, 9);

	/** Thu 12 Nov 2026. */
	private static Instant at(String time) {
		return LocalDate.parse("2026-11-12").atTime(LocalTime.parse(time)).atZone(BERLIN).toInstant();
	}

	private static Advisory wind(String now) {
		return AdvisoriesInMemory.moderate(ID, at(now), at(now).plusSeconds(3 * 86_400),
				at(now).plusSeconds(6 * 86_400));
	}

	private static Advisory severe(String now) {
		return AdvisoriesInMemory.with(wind(now), "hot-dry-wind", Severity.SEVERE, Urgency.FUTURE);
	}

	/** It begins in some hours. */
	private static Advisory frost(String now, int hours) {
		return AdvisoriesInMemory.with(
				AdvisoriesInMemory.moderate(ID, at(now), at(now).plusSeconds(hours * 3600L),
						at(now).plusSeconds(hours * 3600L + 30_000)),
				"late-freeze", Severity.MODERATE, Urgency.EXPECTED);
	}

	private static Wishes wishes(Manner manner) {
		return new Wishes(Speech.USUAL, LocalTime.of(7, 0), Wishes.USUAL.outlookDay(), QuietHours.USUAL, true, null,
				Map.of("mail", Map.of(Topic.ADVISORY, Wish.of(manner))), Map.of());
	}

	private static Turn turn(Wishes wishes, Advisory advisory, String now, Known... known) {
		return new AdvisoryDue(BERLIN, at(now), wishes).turn("mail", advisory, List.of(known)).orElseThrow();
	}

	private static Known sentThisMorning() {
		return new Known(new UUID(1, 1), new UUID(2, 2), "mail:x@2026-11-12", "morning:2026-11-12",
				LocalDate.parse("2026-11-12"), at("07:00"), ReminderState.SENT);
	}

	@Test
	void whatCanWaitWaitsForTheMorning() {
		assertThat(turn(Wishes.USUAL, wind("12:00"), "12:00")).isEqualTo(new Turn("morning:2026-11-13",
				LocalDate.parse("2026-11-13"), at("07:00").plusSeconds(86_400), wind("12:00").expires()));
		assertThat(turn(Wishes.USUAL, wind("05:00"), "05:00").dueAt()).isEqualTo(at("07:00"));
	}

	@Test
	void whatCantWaitIsTheMailOfTheDay() {
		assertThat(turn(Wishes.USUAL, severe("12:00"), "12:00")).isEqualTo(
				new Turn("morning:2026-11-12", LocalDate.parse("2026-11-12"), at("12:00"), severe("12:00").expires()));
		assertThat(turn(Wishes.USUAL, severe("06:30"), "06:30")).as("the morning's mail leaves in half an hour")
			.extracting(Turn::bundle, Turn::dueAt)
			.containsExactly("morning:2026-11-12", at("07:00"));
	}

	@Test
	void aDayHasOneMail() {
		assertThat(turn(Wishes.USUAL, severe("12:00"), "12:00", sentThisMorning()))
			.extracting(Turn::bundle, Turn::dueAt)
			.containsExactly("morning:2026-11-13", at("07:00").plusSeconds(86_400));
	}

	@Test
	void aFrostThatIsNearIsOneMore() {
		assertThat(turn(Wishes.USUAL, frost("16:00", 10), "16:00", sentThisMorning()))
			.extracting(Turn::bundle, Turn::dueAt)
			.containsExactly("advisory:%s@2026-11-12".formatted(frost("16:00", 10).message()), at("16:00"));
		assertThat(turn(Wishes.USUAL, frost("16:00", 40), "16:00", sentThisMorning()).bundle()).as("in two nights")
			.isEqualTo("morning:2026-11-13");
		Advisory off = AdvisoriesInMemory.next(
				AdvisoriesInMemory.with(frost("16:00", 10), "late-freeze", Severity.MODERATE, Urgency.PAST),
				AdvisoryState.CANCELLED, at("18:00"), "warmer");
		assertThat(turn(Wishes.USUAL, off, "18:00", sentThisMorning()).dueAt()).as("before anybody covers for nothing")
			.isEqualTo(at("18:00"));
		Advisory extreme = AdvisoriesInMemory.with(wind("16:00"), "hot-dry-wind", Severity.EXTREME, Urgency.FUTURE);
		assertThat(turn(Wishes.USUAL, extreme, "16:00", sentThisMorning()).dueAt()).isEqualTo(at("16:00"));
	}

	@Test
	void quietHoursAreKeptButForFrost() {
		assertThat(turn(Wishes.USUAL, severe("23:30"), "23:30").dueAt()).isEqualTo(at("07:00").plusSeconds(86_400));
		assertThat(turn(wishes(Manner.SINGLE), wind("23:30"), "23:30").dueAt())
			.isEqualTo(at("06:00").plusSeconds(86_400));
		assertThat(turn(Wishes.USUAL, frost("23:30", 5), "23:30").dueAt()).isEqualTo(at("23:30"));
		Wishes asleep = new Wishes(Speech.USUAL, LocalTime.of(7, 0), Wishes.USUAL.outlookDay(), QuietHours.USUAL, false,
				null, Map.of(), Map.of());
		assertThat(turn(asleep, frost("23:30", 8), "23:30").dueAt()).isEqualTo(at("06:00").plusSeconds(86_400));
		Advisory off = AdvisoriesInMemory.next(frost("23:00", 8), AdvisoryState.CANCELLED, at("23:30"), "warmer");
		assertThat(turn(Wishes.USUAL, off, "23:30").dueAt()).as("nobody is woken to hear that nothing comes")
			.isEqualTo(at("06:00").plusSeconds(86_400));
	}

	@Test
	void wishesAreKept() {
		AdvisoryDue due = new AdvisoryDue(BERLIN, at("12:00"), wishes(Manner.OFF));
		assertThat(due.turn("mail", frost("12:00", 10), List.of())).isEmpty();
		Wishes left = new Wishes(Speech.USUAL, LocalTime.of(7, 0), Wishes.USUAL.outlookDay(), QuietHours.USUAL, true,
				null, Map.of(), Map.of("mail", Set.of(Series.ADVISORY)));
		assertThat(new AdvisoryDue(BERLIN, at("12:00"), left).turn("mail", frost("12:00", 10), List.of())).isEmpty();
		assertThat(new AdvisoryDue(BERLIN, at("12:00"), left).turn("push", frost("12:00", 10), List.of())).isPresent();
		assertThat(turn(wishes(Manner.SINGLE), wind("12:00"), "12:00", sentThisMorning()).dueAt())
			.isEqualTo(at("12:00"));
	}

	@Test
	void whatWouldComeTooLateIsNotMade() {
		Advisory brief = AdvisoriesInMemory.with(AdvisoriesInMemory.moderate(ID, at("12:00"), at("13:00"), at("18:00")),
				"hot-dry-wind", Severity.MINOR, Urgency.EXPECTED);
		assertThat(new AdvisoryDue(BERLIN, at("12:00"), Wishes.USUAL).turn("mail", brief, List.of(sentThisMorning())))
			.isEmpty();
		assertThat(turn(Wishes.USUAL, brief, "12:00").dueAt()).as("it begins before the next morning")
			.isEqualTo(at("12:00"));
	}

	@Test
	void aPauseIsWaitedFor() {
		Wishes away = new Wishes(Speech.USUAL, LocalTime.of(7, 0), Wishes.USUAL.outlookDay(), QuietHours.USUAL, true,
				LocalDate.parse("2026-11-14"), Map.of(), Map.of());
		assertThat(turn(away, wind("12:00"), "12:00")).extracting(Turn::bundle, Turn::dueAt)
			.containsExactly("morning:2026-11-14", at("07:00").plusSeconds(2 * 86_400));
	}

}
