package org.leafward.reminders.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;

class WishesFieldsTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 12);

	private static final List<String> CHANNELS = List.of("mail", "push");

	private static final Wishes OWN = new Wishes(new Speech(Language.SPANISH, Units.METRIC), LocalTime.of(5, 45),
			DayOfWeek.SUNDAY, new QuietHours(LocalTime.of(21, 30), LocalTime.of(5, 15)), false, TODAY.plusDays(1),
			Map.of("mail", Map.of(Topic.TO_DO, new Wish(Manner.SINGLE, 14)), "push",
					Map.of(Topic.OUTLOOK, Wish.of(Manner.WEEKLY), Topic.CHANGE, Wish.of(Manner.OFF))),
			Map.of());

	private static Wishes read(Map<String, String> fields) {
		return WishesFields.read(fields, CHANNELS, TODAY);
	}

	private static Map<String, String> with(String name, String value) {
		Map<String, String> fields = new HashMap<>(WishesFields.of(Wishes.USUAL, CHANNELS, TODAY));
		fields.put(name, value);
		return fields;
	}

	private static Map<String, String> refused(Map<String, String> fields) {
		BadInput ex = catchThrowableOfType(BadInput.class, () -> read(fields));
		assertThat(ex).isNotNull();
		return ex.byField();
	}

	@Test
	void whatIsLeftOutIsAsUsual() {
		assertThat(read(Map.of())).isEqualTo(Wishes.USUAL);
	}

	@Test
	void whatWasWrittenIsReadBack() {
		assertThat(read(WishesFields.of(Wishes.USUAL, CHANNELS, TODAY))).isEqualTo(Wishes.USUAL);
		assertThat(read(WishesFields.of(OWN, CHANNELS, TODAY))).isEqualTo(OWN);
	}

	@Test
	void onlyChannelsThatWereAskedForAreRead() {
		Map<String, String> fields = WishesFields.of(OWN, CHANNELS, TODAY);
		assertThat(WishesFields.read(fields, List.of("push"), TODAY).chosen()).containsOnlyKeys("push");
	}

	@ParameterizedTest
	@CsvSource({ "language, xx", "language, ''", "units, stones", "units, ''", "morning, ''", "morning, 7",
			"morning, 24:00", "morning, 07:60", "morning, seven", "outlookDay, ''", "outlookDay, someday",
			"quietFrom, 25:00", "quietFrom, ''", "quietTo, x", "quietTo, ''", "urgentAnyway, perhaps",
			"pausedUntil, tomorrow", "pausedUntil, 2026-02-30", "mail-to-do, ''", "mail-to-do, always",
			"mail-tonight, weekly", "mail-outlook, morning", "push-change, x", "mail-to-do-ahead, -1",
			"mail-to-do-ahead, 15", "mail-hold-off-ahead, 1.5", "push-ramp-ahead, soon",
			"push-look-for-ahead, 2147483648" })
	void aWrongFieldIsNamedWithWhatToDo(String field, String value) {
		Map<String, String> refused = refused(with(field, value));
		assertThat(refused).containsOnlyKeys(field);
		assertThat(refused.get(field)).contains(": ").endsWith(".").doesNotContain("null", "Exception");
	}

	@Test
	void allWrongFieldsAreToldAtOnce() {
		Map<String, String> fields = with("morning", "7");
		fields.putAll(Map.of("language", "x", "units", "x", "outlookDay", "x", "quietFrom", "x", "quietTo", "x",
				"urgentAnyway", "x", "pausedUntil", "x", "mail-to-do", "x", "push-ramp-ahead", "x"));
		assertThat(refused(fields)).containsOnlyKeys("morning", "language", "units", "outlookDay", "quietFrom",
				"quietTo", "urgentAnyway", "pausedUntil", "mail-to-do", "push-ramp-ahead");
	}

	/** HTML gives seconds where a step asks for them (valid time string). */
	@ParameterizedTest
	@CsvSource({ "00:00, 00:00", "23:59, 23:59", "07:30:00, 07:30", "' 07:30 ', 07:30" })
	void timesAreReadToTheMinute(String text, LocalTime time) {
		assertThat(read(with("morning", text)).morning()).isEqualTo(time);
	}

	@Test
	void bothEndsEmptyMeanNoQuietHours() {
		Map<String, String> fields = with("quietFrom", "");
		fields.put("quietTo", " ");
		QuietHours none = read(fields).quiet();
		for (int hour = 0; hour < 24; hour++) {
			assertThat(none.has(LocalTime.of(hour, 0))).isFalse();
		}
		Wishes without = read(fields);
		assertThat(WishesFields.of(without, CHANNELS, TODAY)).containsEntry("quietFrom", "")
			.containsEntry("quietTo", "");
	}

	@Test
	void quietHoursMayWrapMidnight() {
		Map<String, String> fields = with("quietFrom", "23:15");
		fields.put("quietTo", "05:00");
		QuietHours quiet = read(fields).quiet();
		assertThat(quiet.has(LocalTime.of(23, 15))).isTrue();
		assertThat(quiet.has(LocalTime.of(4, 59))).isTrue();
		assertThat(quiet.has(LocalTime.of(5, 0))).isFalse();
	}

	@ParameterizedTest
	@CsvSource({ "-1, false", "0, false", "1, true", "366, true", "367, false" })
	void aPauseEndsAfterTodayAndWithinAYear(int days, boolean taken) {
		Map<String, String> fields = with("pausedUntil", TODAY.plusDays(days).toString());
		if (taken) {
			assertThat(read(fields).pausedUntil()).isEqualTo(TODAY.plusDays(days));
		}
		else {
			assertThat(refused(fields)).containsOnlyKeys("pausedUntil");
		}
	}

	@Test
	void aPauseThatIsOverIsNotShown() {
		assertThat(WishesFields.of(OWN, CHANNELS, TODAY.plusDays(1))).containsEntry("pausedUntil", "");
		assertThat(WishesFields.of(OWN, CHANNELS, TODAY)).containsEntry("pausedUntil", "2026-11-13");
	}

	@ParameterizedTest
	@EnumSource(names = { "TO_DO", "HOLD_OFF", "RAMP", "LOOK_FOR", "CHANGE" })
	void whatWouldStandInAnOutlookThatIsOffIsRefused(Topic topic) {
		Map<String, String> fields = with("mail-outlook", "off");
		fields.put("mail-look-for", "off");
		fields.put("mail-" + topic.code(), "weekly");
		assertThat(refused(fields)).containsOnlyKeys("mail-" + topic.code());
		fields.put("mail-outlook", "weekly");
		assertThat(read(fields).of("mail", topic).manner()).isEqualTo(Manner.WEEKLY);
	}

	@Test
	void withoutAnOutlookTheRestStillCounts() {
		Map<String, String> fields = with("mail-outlook", "off");
		fields.put("mail-look-for", "morning");
		assertThat(read(fields).of("mail", Topic.OUTLOOK).manner()).isEqualTo(Manner.OFF);
	}

	@ParameterizedTest
	@ValueSource(strings = { "tonight", "change", "outlook" })
	void daysAheadOfWhatHasNoneAreNotLookedAt(String topic) {
		assertThat(read(with("mail-" + topic + "-ahead", "9"))).isEqualTo(Wishes.USUAL);
	}

	@Test
	void daysAheadMayStayEmpty() {
		assertThat(read(with("mail-to-do-ahead", "")).of("mail", Topic.TO_DO).leadDays()).isZero();
		assertThat(read(with("mail-to-do-ahead", "3")).of("mail", Topic.TO_DO)).isEqualTo(new Wish(Manner.MORNING, 3));
	}

}
