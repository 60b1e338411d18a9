package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** A record laid over another one, against the same done plainly with maps. */
class RecordOverlayTests {

	private static final LocalDate BEGIN = LocalDate.of(1999, 12, 20);

	private static final int DAYS = 90;

	@RepeatedTest(40)
	void agreesWithMaps(RepetitionInfo repetition) {
		Random random = new Random(repetition.getCurrentRepetition());
		Map<LocalDate, Map<Element, Integer>> stored = some(random);
		Map<LocalDate, Map<Element, Integer>> given = some(random);
		RecordOverlay overlay = new RecordOverlay(record(stored), record(given));
		TreeSet<LocalDate> inserted = new TreeSet<>();
		TreeSet<LocalDate> different = new TreeSet<>();
		for (LocalDate day = BEGIN; day.isBefore(BEGIN.plusDays(DAYS)); day = day.plusDays(1)) {
			Map<Element, Integer> before = stored.getOrDefault(day, Map.of());
			Map<Element, Integer> after = new HashMap<>(before);
			after.putAll(given.getOrDefault(day, Map.of()));
			if (!after.equals(before)) {
				different.add(day);
				if (before.isEmpty()) {
					inserted.add(day);
				}
			}
			for (Element element : Element.values()) {
				assertThat((int) overlay.value(element, day.toEpochDay()))
					.isEqualTo(after.getOrDefault(element, (int) DailyRecord.MISSING));
			}
		}
		assertThat(overlay.inserted()).isEqualTo(inserted.size());
		assertThat(overlay.changed()).isEqualTo(different.size() - inserted.size());
		assertThat(overlay.months())
			.containsExactlyElementsOf(new TreeSet<>(different.stream().map(YearMonth::from).toList()));
		assertThat(overlay.firstDay().orElse(null)).isEqualTo(different.isEmpty() ? null : different.first());
		assertThat(overlay.lastDay().orElse(null)).isEqualTo(different.isEmpty() ? null : different.last());
	}

	@Test
	void nothingGivenChangesNothing() {
		DailyRecord stored = record(some(new Random(1)));
		DailyRecord none = DailyRecord.builder().build();
		for (DailyRecord given : new DailyRecord[] { none, stored }) {
			RecordOverlay overlay = new RecordOverlay(stored, given);
			assertThat(overlay.months()).isEmpty();
			assertThat(overlay.inserted() + overlay.changed()).isZero();
			assertThat(overlay.firstDay()).isEmpty();
		}
		assertThat(new RecordOverlay(none, stored).changed()).isZero();
	}

	/** Few values and few different ones, so that all the cases meet. */
	private static Map<LocalDate, Map<Element, Integer>> some(Random random) {
		Map<LocalDate, Map<Element, Integer>> days = new HashMap<>();
		int values = random.nextInt(120);
		for (int value = 0; value < values; value++) {
			days.computeIfAbsent(BEGIN.plusDays(random.nextInt(DAYS)), (day) -> new HashMap<>())
				.put(Element.values()[random.nextInt(Element.values().length)], random.nextInt(2));
		}
		return days;
	}

	private static DailyRecord record(Map<LocalDate, Map<Element, Integer>> days) {
		DailyRecord.Builder builder = DailyRecord.builder();
		days.forEach((day, values) -> values.forEach((element, value) -> builder.set(element, day, value)));
		return builder.build();
	}

}
