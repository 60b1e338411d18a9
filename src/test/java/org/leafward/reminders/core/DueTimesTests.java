package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class DueTimesTests {

	/**
	 * European Union: clocks change at 01:00 GMT on the last Sundays of March and October
	 * (Directive 2000/84/EC, articles 2 and 3). United States: at 02:00 local time on the
	 * second Sunday of March and the first of November (15 U.S.C. 260a). New Zealand:
	 * last Sunday of September, first of April (Time Act 1974, New Zealand Daylight Time
	 * Order 2007). India has one offset, +05:30.
	 */
	@ParameterizedTest
	@CsvSource({ "Europe/Berlin,2027-03-27,2027-03-27T06:00:00Z", "Europe/Berlin,2027-03-28,2027-03-28T05:00:00Z",
			"Europe/Berlin,2027-10-30,2027-10-30T05:00:00Z", "Europe/Berlin,2027-10-31,2027-10-31T06:00:00Z",
			"America/Chicago,2027-03-13,2027-03-13T13:00:00Z", "America/Chicago,2027-03-14,2027-03-14T12:00:00Z",
			"America/Chicago,2027-11-06,2027-11-06T12:00:00Z", "America/Chicago,2027-11-07,2027-11-07T13:00:00Z",
			"Pacific/Auckland,2027-09-25,2027-09-24T19:00:00Z", "Pacific/Auckland,2027-09-26,2027-09-25T18:00:00Z",
			"Asia/Kolkata,2026-11-12,2026-11-12T01:30:00Z" })
	void areSevenInTheMorningWhereThePersonIs(ZoneId zone, LocalDate day, Instant due) {
		assertThat(DueTimes.dueAt(day, zone)).isEqualTo(due);
	}

	/** Directive 2000/84/EC: from 02:00 to 03:00 there is no time on 28 March 2027. */
	@Test
	void inAGapAreTheFirstInstantAfterIt() {
		Instant end = Instant.parse("2027-03-28T01:00:00Z");
		ZoneId zone = ZoneId.of("Europe/Berlin");
		assertThat(DueTimes.at(LocalDateTime.parse("2027-03-28T02:30"), zone)).isEqualTo(end);
		assertThat(DueTimes.at(LocalDateTime.parse("2027-03-28T02:00"), zone)).isEqualTo(end);
		assertThat(DueTimes.at(LocalDateTime.parse("2027-03-28T03:00"), zone)).isEqualTo(end);
		assertThat(DueTimes.at(LocalDateTime.parse("2027-03-28T01:59"), zone)).isEqualTo(end.minusSeconds(60));
	}

	/** Directive 2000/84/EC: 02:00 to 03:00 comes twice on 31 October 2027. */
	@Test
	void inAnOverlapAreTheEarlierOfTwo() {
		assertThat(DueTimes.at(LocalDateTime.parse("2027-10-31T02:30"), ZoneId.of("Europe/Berlin")))
			.isEqualTo("2027-10-31T00:30:00Z");
	}

	/**
	 * Samoa left out the whole of 30 December 2011 (tz database, file australasia): after
	 * 29 December 23:59:59 at -10 came 31 December 00:00 at +14.
	 */
	@Test
	void onADayThatWasLeftOutAreTheStartOfTheNext() {
		assertThat(DueTimes.dueAt(LocalDate.parse("2011-12-30"), ZoneId.of("Pacific/Apia")))
			.isEqualTo("2011-12-30T10:00:00Z");
	}

	/**
	 * Cuba's clocks go from 24:00 to 01:00 (tz database, file northamerica, rule Cuba).
	 */
	@Test
	void areOfUseForThreeDaysAfterTheFirst() {
		assertThat(DueTimes.expiresAt(LocalDate.parse("2026-11-12"), ZoneId.of("Europe/Berlin")))
			.isEqualTo("2026-11-15T23:00:00Z");
		assertThat(DueTimes.expiresAt(LocalDate.parse("2025-03-05"), ZoneId.of("America/Havana")))
			.isEqualTo("2025-03-09T05:00:00Z");
	}

}
