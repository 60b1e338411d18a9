package org.leafward.feeds.ical;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.Engines.Sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

/** What real clients' engines see in a feed, which is what was written. */
class OtherEnginesTests {

	private static final Path GOLDEN = Path.of("src/test/resources/golden/feeds");

	static Stream<String> engines() {
		return Engines.names(Engines.values()).stream();
	}

	@ParameterizedTest
	@MethodSource("engines")
	void seeTheSameTasks(String engine) {
		sees(engine, CalendarWriterTests.entries(aTask().numbered(1).build(),
				aTask().numbered(2).of(TaskKind.HOLD_OFF).titled("Pruning").on("2026-08-10", "2026-10-31").build(),
				aTask().numbered(3).on("2026-12-31", "2026-12-31").withdrawn("31 mm; of rain, fell.", CHANGED).build(),
				aTask().numbered(4)
					.titled("Schütt’ Wasser \uD83C\uDF31\uD83C\uDF31")
					.forPlant("\u05D2\u05D9\u05DF")
					.build(),
				aTask().numbered(5).in(TaskState.DONE, null).build(),
				aTask().numbered(6).in(TaskState.SKIPPED, "The hose, it broke.").on("2026-09-27", "2026-09-28").build(),
				aTask().numbered(7).on("2026-04-05", "2026-04-05").build()));
	}

	@ParameterizedTest
	@MethodSource("engines")
	void seeTheNoticeOfAnEmptyCalendar(String engine) {
		sees(engine, List.of(ENTRIES.nothingPlanned(new UUID(1, 2), CHANGED)));
	}

	/** They see in the goldens what biweekly sees. */
	@ParameterizedTest
	@MethodSource("engines")
	void seeTheGoldenCalendars(String engine) throws IOException {
		List<Path> files;
		try (Stream<Path> all = Files.list(GOLDEN)) {
			files = all.filter((one) -> !one.toString().endsWith(".csv")).sorted().toList();
		}
		List<byte[]> documents = new ArrayList<>();
		for (Path file : files) {
			documents.add(Files.readAllBytes(file));
		}
		assertThat(documents).hasSizeGreaterThan(3);
		List<List<Sight>> seen = see(engine, documents);
		for (int i = 0; i < files.size(); i++) {
			byte[] octets = documents.get(i);
			List<String> read = Stream
				.concat(FeedReading.read(octets)
					.stream()
					.map((one) -> one.uid() + one.summary() + one.description() + one.from() + one.end()),
						FeedReading.readTodos(octets)
							.stream()
							.map((one) -> one.uid() + one.summary() + one.description() + one.from() + one.due()))
				.sorted()
				.toList();
			assertThat(seen.get(i)
				.stream()
				.map((one) -> one.uid() + one.summary() + one.description() + one.from() + one.to())
				.toList()).as("%s", files.get(i)).isEqualTo(shown(engine, isTodo(files.get(i)), read));
		}
	}

	/** khal shows no to-dos. */
	private static <T> List<T> shown(String engine, boolean todo, List<T> written) {
		return (engine.equals("khal") && todo) ? List.of() : written;
	}

	private static boolean isTodo(Path file) {
		return file.toString().endsWith(".todo");
	}

	private static void sees(String engine, List<FeedEntry> entries) {
		List<byte[]> documents = new ArrayList<>();
		List<List<Sight>> written = new ArrayList<>();
		for (Component form : Component.values()) {
			for (LocalTime alarm : new LocalTime[] { null, LocalTime.of(8, 0) }) {
				byte[] octets = new CalendarWriter()
					.write(CalendarWriterTests.HEAD, entries, form, alarm,
							Before.nothing(Instant.parse("2026-03-10T12:00:00Z")))
					.octets();
				assertThat(IcsLinter.problems(octets)).isEmpty();
				documents.add(octets);
				written.add(shown(engine, form == Component.TODO,
						entries.stream()
							.map((entry) -> Sight.of(entry, form, alarm != null))
							.sorted(Comparator.comparing(Sight::uid))
							.toList()));
			}
		}
		assertThat(see(engine, documents)).isEqualTo(written);
	}

	/** In the order of identifiers, since some keep none. */
	private static List<List<Sight>> see(String engine, List<byte[]> documents) {
		return Engines.running(engine)
			.see(documents, List.of(engine))
			.get(0)
			.stream()
			.map((document) -> document.stream().sorted(Comparator.comparing(Sight::uid)).toList())
			.toList();
	}

}
