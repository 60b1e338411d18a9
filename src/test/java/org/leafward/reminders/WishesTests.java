package org.leafward.reminders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

class WishesTests {

	private static Wishes paused(LocalDate until) {
		return new Wishes(Wishes.USUAL.speech(), Wishes.USUAL.morning(), Wishes.USUAL.outlookDay(),
				Wishes.USUAL.quiet(), true, until, Map.of(), Map.of());
	}

	/** Quiet from, to, what wants to go out, and when it goes; wrapped or not. */
	@ParameterizedTest
	@CsvSource({ "22:00, 06:00, 2026-11-12T21:59, 2026-11-12T21:59", "22:00, 06:00, 2026-11-12T22:00, 2026-11-13T06:00",
			"22:00, 06:00, 2026-12-31T23:59, 2027-01-01T06:00", "22:00, 06:00, 2026-11-13T00:00, 2026-11-13T06:00",
			"22:00, 06:00, 2026-11-13T05:59, 2026-11-13T06:00", "22:00, 06:00, 2026-11-13T06:00, 2026-11-13T06:00",
			"12:00, 14:00, 2026-11-12T11:59, 2026-11-12T11:59", "12:00, 14:00, 2026-11-12T12:00, 2026-11-12T14:00",
			"12:00, 14:00, 2026-11-12T14:00, 2026-11-12T14:00", "22:00, 00:00, 2026-11-12T23:00, 2026-11-13T00:00",
			"00:00, 06:00, 2026-11-12T00:00, 2026-11-12T06:00", "07:00, 07:00, 2026-11-12T07:00, 2026-11-12T07:00" })
	void quietHoursLetThingsWait(LocalTime from, LocalTime to, LocalDateTime wanted, LocalDateTime goes) {
		QuietHours quiet = new QuietHours(from, to);
		assertThat(quiet.after(wanted)).isEqualTo(goes);
		assertThat(quiet.has(wanted.toLocalTime())).isEqualTo(!goes.equals(wanted));
	}

	@Test
	void nothingEverGoesOutInQuietHours() {
		QuietHours quiet = new QuietHours(LocalTime.of(20, 15), LocalTime.of(7, 45));
		LocalDateTime start = LocalDate.of(2026, 11, 12).atStartOfDay();
		for (int minute = 0; minute < 48 * 60; minute++) {
			LocalDateTime wanted = start.plusMinutes(minute);
			LocalDateTime goes = quiet.after(wanted);
			assertThat(goes).isAfterOrEqualTo(wanted).isBefore(wanted.plusDays(1));
			assertThat(quiet.has(goes.toLocalTime())).isFalse();
		}
	}

	@Test
	void aPauseEndsOnTheDayThatWasGiven() {
		LocalDate until = LocalDate.of(2026, 12, 1);
		assertThat(paused(until).pausedOn(until.minusDays(1))).isTrue();
		assertThat(paused(until).pausedOn(until)).isFalse();
		assertThat(Wishes.USUAL.pausedOn(until)).isFalse();
	}

	/** A warning of the night is never put off to a weekly outlook. */
	@ParameterizedTest
	@EnumSource(Topic.class)
	void theUsualIsAmongTheChoices(Topic topic) {
		for (String channel : new String[] { "mail", "push", "webhook" }) {
			assertThat(topic.manners()).contains(Wishes.usual(channel, topic).manner());
			assertThat(Wishes.usual(channel, topic).leadDays()).isZero();
		}
		assertThat(topic.manners()).startsWith(Manner.OFF).doesNotHaveDuplicates();
		assertThat(Topic.of(topic.code())).isEqualTo(topic);
	}

	@Test
	void aFrostyNightIsToldAtOnceOrInTheMorning() {
		assertThat(Topic.TONIGHT.manners()).doesNotContain(Manner.WEEKLY);
		assertThat(Wishes.USUAL.topics("mail", Manner.SINGLE)).isEqualTo(EnumSet.of(Topic.TONIGHT));
		assertThat(Wishes.USUAL.topics("push", Manner.SINGLE)).isEqualTo(EnumSet.of(Topic.TONIGHT));
		assertThat(Wishes.USUAL.topics("push", Manner.OFF)).isEqualTo(Set.of(Topic.LOOK_FOR, Topic.OUTLOOK));
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 15, Integer.MAX_VALUE, Integer.MIN_VALUE })
	void daysAheadAreBounded(int days) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new Wish(Manner.MORNING, days))
			.matches((ex) -> ex.where().equals("lead"), "names the field");
	}

}
