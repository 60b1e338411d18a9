package org.leafward.care.garden;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Rules against calendars that were published for a named place
 * ({@code shared/calendars/published.csv}). Dates are computed from the record of a
 * station there, or from published freeze dates alone
 * ({@code shared/calendars/freeze-dates.csv}). What is missed by more than ten days is
 * listed in {@code shared/calendars/misses.csv}, exactly.
 */
class PublishedCalendarTests {

	private static final int NEAR = 10;

	private static final String UNDATED = "no date";

	private final Map<String, PlaceMarkers> places = new HashMap<>();

	private PlaceMarkers place(String name) {
		return this.places.computeIfAbsent(name, (place) -> switch (place) {
			case "New York" -> GardenClimate.real(RecordFixture.CENTRAL_PARK, new GeoPoint(40.7789, -73.9692, 39.6));
			case "Toronto" -> GardenClimate.real(RecordFixture.TORONTO, new GeoPoint(43.6667, -79.4, 112.5));
			default -> FreezeDates.of(place);
		});
	}

	/**
	 * How far the end of a rule's days lies outside those published, or why it has none.
	 */
	private String miss(String[] row) {
		Garden garden = new Garden("published", place(row[1]), Hemisphere.NORTH, Garden.in(""),
				LocalDate.of(Garden.SEASON, 1, 1), Map.of(), Map.of(), "%s | it | 1 | %s".formatted(row[2], row[3]));
		return GardenPlanner.plan(garden)
			.tasks()
			.stream()
			.filter((task) -> task.rule().equals(row[0]))
			.collect(Collectors.groupingBy(PlannedTask::season))
			.values()
			.stream()
			.map((turns) -> days(turns, row))
			.min(Comparator.comparingLong(Math::abs))
			.map(Object::toString)
			.orElse(UNDATED);
	}

	private static long days(List<PlannedTask> turns, String[] row) {
		LocalDate from = turns.stream()
			.map((task) -> task.window().from())
			.min(Comparator.naturalOrder())
			.orElseThrow();
		LocalDate to = turns.stream().map((task) -> task.window().to()).max(Comparator.naturalOrder()).orElseThrow();
		return switch (row[4]) {
			case "from" -> outside(from, from, row);
			case "to" -> outside(to, to, row);
			default -> outside(from, to, row);
		};
	}

	/**
	 * Days after the published ones at which some days begin, or before them, negative.
	 */
	private static long outside(LocalDate from, LocalDate to, String[] row) {
		return IntStream.rangeClosed(from.getYear() - 1, from.getYear() + 1).mapToObj((year) -> {
			LocalDate first = LocalDate.parse(year + "-" + row[5]);
			LocalDate last = LocalDate.parse(year + "-" + row[6]);
			return to.isBefore(first) ? ChronoUnit.DAYS.between(first, to)
					: from.isAfter(last) ? ChronoUnit.DAYS.between(last, from) : 0;
		}).min(Comparator.comparingLong(Math::abs)).orElseThrow();
	}

	private static String key(String[] row) {
		return String.join(" ", row[0], row[1], row[2], row[4]);
	}

	@Test
	void thirtyRulesAndMoreMeetAPublishedCalendarAndTheMissesAreListed() {
		List<String[]> rows = SharedData.table("calendars/published.csv");
		List<String> missed = new ArrayList<>();
		Set<String> met = new HashSet<>();
		Set<String> metNotByMonth = new HashSet<>();
		for (String[] row : rows) {
			assertThat(row).as(key(row)).hasSize(11);
			String miss = miss(row);
			if (miss.equals(UNDATED) || Math.abs(Integer.parseInt(miss)) > NEAR) {
				missed.add(key(row) + " " + miss);
				continue;
			}
			met.add(row[0]);
			if (!row[7].equals("month")) {
				metNotByMonth.add(row[0]);
			}
		}
		assertThat(missed).as("exactly those of misses.csv")
			.containsExactlyInAnyOrderElementsOf(SharedData.table("calendars/misses.csv")
				.stream()
				.map((row) -> "%s %s".formatted(String.join(" ", row[0], row[1], row[2], row[3]), row[4]))
				.toList());
		assertThat(met).hasSizeGreaterThanOrEqualTo(30);
		assertThat(metNotByMonth).hasSizeGreaterThanOrEqualTo(9);
	}

	@Test
	void everyRowNamesItsSource() {
		assertThat(SharedData.table("calendars/published.csv")).allSatisfy((row) -> {
			assertThat(row[4]).isIn("from", "to", "on");
			assertThat(row[7]).isIn("day", "third of a month", "month");
			assertThat(row[8]).isNotBlank();
			assertThat(row[9]).startsWith("http");
			assertThat(row[10]).isIn("read", "at second hand");
		});
		assertThat(SharedData.table("calendars/misses.csv"))
			.allSatisfy((row) -> assertThat(row[5]).as(row[0]).hasSizeGreaterThan(20));
	}

}
