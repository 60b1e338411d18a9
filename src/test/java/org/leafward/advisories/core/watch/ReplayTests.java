package org.leafward.advisories.core.watch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.advisories.conditions.ConfiguredConditions;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Ten past seasons of real stations: New York Central Park 2008 to 2017, and Toronto 1993
 * to 2002, after which its record has no minima. The lists are written to
 * {@code target/advisories-replay}, to be read as a specialist would.
 */
class ReplayTests {

	private static final Map<String, Past> PASTS = new ConcurrentHashMap<>();

	private record Past(DailyRecord record, List<Replay.Proposed> proposed, int from) {

		List<LocalDate> of(String condition) {
			return this.proposed.stream()
				.filter((one) -> one.condition().code().equals(condition))
				.map(Replay.Proposed::day)
				.toList();
		}

		double celsius(Element element, LocalDate day) {
			return this.record.value(element, day) / 10.0;
		}

	}

	private static Past past(String name) {
		return PASTS.computeIfAbsent(name, (key) -> {
			boolean park = name.equals("central-park");
			StationId id = park ? RecordFixture.CENTRAL_PARK : RecordFixture.TORONTO;
			GeoPoint point = park ? new GeoPoint(40.7789, -73.9692, 39.6) : new GeoPoint(43.67, -79.40, 112);
			int from = park ? 2008 : 1993;
			DailyRecord record = RecordFixture.real(id);
			Past past = new Past(record, new Replay(new Station(id, name, point, false), record, from, from + 9)
				.run(ConfiguredConditions.all()), from);
			write(name, past.proposed());
			return past;
		});
	}

	/** How many come in ten years, and in which part of the year; bounds as judged. */
	@ParameterizedTest
	@CsvSource({ "central-park, late-freeze, 1, 6, 03-15, 05-20",
			"central-park, first-fall-freeze, 10, 20, 10-10, 12-20",
			"central-park, dry-before-freeze, 1, 4, 11-10, 12-31", "central-park, cold-dry-wind, 1, 6, 01-01, 02-28",
			"central-park, hot-dry-wind, 4, 15, 06-10, 09-15", "central-park, sudden-sun, 4, 15, 03-24, 06-01",
			"central-park, weed-barrier, 9, 10, 03-08, 04-20", "central-park, salt-leaching, 7, 10, 02-15, 04-15",
			"central-park, leaf-scorch-scouting, 10, 10, 07-01, 07-20",
			"toronto, first-fall-freeze, 10, 20, 09-20, 12-01", "toronto, dry-before-freeze, 1, 5, 10-10, 12-20",
			"toronto, hot-dry-wind, 1, 10, 06-10, 09-15", "toronto, sudden-sun, 4, 15, 04-14, 06-20",
			"toronto, weed-barrier, 9, 10, 03-25, 05-05", "toronto, salt-leaching, 8, 10, 03-10, 05-01",
			"toronto, leaf-scorch-scouting, 10, 10, 07-15, 08-20" })
	void comesAsOftenAndWhenASpecialistWouldSayIt(String station, String condition, int least, int most, String from,
			String to) {
		List<LocalDate> days = past(station).of(condition);
		assertThat(days).hasSizeBetween(least, most);
		assertThat(days).allSatisfy((day) -> assertThat(day.toString().substring(5)).isBetween(from, to));
	}

	/** Two or three alerts a month in season are what people read; here all year's. */
	@ParameterizedTest
	@ValueSource(strings = { "central-park", "toronto" })
	void noYearHasTooMany(String station) {
		Past past = past(station);
		Map<Integer, Long> years = past.proposed()
			.stream()
			.collect(Collectors.groupingBy((one) -> one.day().getYear(), Collectors.counting()));
		assertThat(years).hasSize(10).allSatisfy((year, count) -> assertThat(count).isBetween(4L, 14L));
		Map<String, Long> months = past.proposed()
			.stream()
			.collect(Collectors.groupingBy((one) -> one.day().toString().substring(0, 7), Collectors.counting()));
		assertThat(months.values()).allSatisfy((count) -> assertThat(count).isLessThanOrEqualTo(4));
	}

	/** Every fall's first night of 36 °F or less is told the day before, or two days. */
	@ParameterizedTest
	@ValueSource(strings = { "central-park", "toronto" })
	void noFirstFrostOfFallIsMissed(String station) {
		Past past = past(station);
		for (int year = past.from(); year < past.from() + 10; year++) {
			LocalDate first = LocalDate.of(year, 8, 15);
			while (past.celsius(Element.TMIN, first) > 2.2) {
				first = first.plusDays(1);
			}
			LocalDate frost = first;
			assertThat(past.of("first-fall-freeze")).as("%s", frost)
				.anyMatch((day) -> !day.isBefore(frost.minusDays(2)) && day.isBefore(frost));
		}
	}

	/**
	 * Calhoun, Michigan State University, 2004: 250 to 500 degree-days above 32 °F from
	 * mid-February, worked out here by itself.
	 */
	@ParameterizedTest
	@ValueSource(strings = { "central-park", "toronto" })
	void weedBarriersComeWithinThePublishedSums(String station) {
		Past past = past(station);
		for (LocalDate day : past.of("weed-barrier")) {
			double sum = 0;
			for (LocalDate one = LocalDate.of(day.getYear(), 2, 15); one.isBefore(day); one = one.plusDays(1)) {
				double mean = 32 + 0.9 * (past.celsius(Element.TMIN, one) + past.celsius(Element.TMAX, one));
				sum += Math.max(0, mean - 32);
			}
			assertThat(sum).as("%s", day).isBetween(249.0, 501.0);
		}
	}

	/**
	 * The early springs of 2012 and 2016 with their frosts of 26 March and 4 and 5 April,
	 * which were news then (from memory).
	 */
	@Test
	void knownLateFreezesAreThere() {
		assertThat(past("central-park").of("late-freeze")).anyMatch((day) -> day.toString().startsWith("2012-03-2"))
			.anyMatch((day) -> day.toString().startsWith("2016-04-0"));
	}

	/**
	 * The dry fall of 2013 in New York; that of 1998 in southern Ontario (from memory).
	 */
	@Test
	void knownDryFallsAreThere() {
		assertThat(past("central-park").of("dry-before-freeze")).anyMatch((day) -> day.getYear() == 2013);
		assertThat(past("toronto").of("dry-before-freeze")).anyMatch((day) -> day.getYear() == 1998);
	}

	/** Toronto's record has no wind, so nothing is known of it. */
	@Test
	void withoutWindThereIsNoHitOfWind() {
		assertThat(past("toronto").of("cold-dry-wind")).isEmpty();
	}

	private static void write(String name, List<Replay.Proposed> all) {
		StringBuilder list = new StringBuilder();
		all.forEach((one) -> list.append("%s %s | %s | %s%n".formatted(one.day(), one.condition().code(),
				Watch.days(one.hit()), String.join(" ", one.hit().reasons()))));
		StringBuilder table = new StringBuilder();
		new TreeMap<>(all.stream().collect(Collectors.groupingBy((one) -> one.condition().code())))
			.forEach((code, of) -> table.append("%-24s %3d  %s%n".formatted(code, of.size(),
					of.stream().map((one) -> one.day().toString()).collect(Collectors.joining(" ")))));
		try {
			Path folder = Files.createDirectories(Path.of("target", "advisories-replay"));
			Files.writeString(folder.resolve(name + ".txt"), list);
			Files.writeString(folder.resolve(name + "-summary.txt"), table);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
