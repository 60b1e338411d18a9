package org.leafward.feeds.ical;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.care.TaskKind;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.PlainText;
import org.leafward.feeds.ical.FeedReading.Seen;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

/**
 * What real clients' engines see in a feed: ical.js 2.2.1 and node-ical 0.27.2, run by
 * Node. Install them with {@code npm install --no-audit --no-fund} in
 * {@code src/test/js}. Where they are missing the tests say so and are left out, except
 * on a build server (environment variable CI is true), where they fail.
 */
class OtherEnginesTests {

	private static final Path SCRIPTS = Path.of("src", "test", "js");

	@TempDir
	private Path folder;

	@Test
	void seeTheSameTasks() throws Exception {
		List<FeedEntry> entries = CalendarWriterTests.entries(aTask().numbered(1).build(),
				aTask().numbered(2).of(TaskKind.HOLD_OFF).titled("Pruning").on("2026-08-10", "2026-10-31").build(),
				aTask().numbered(3).on("2026-12-31", "2026-12-31").withdrawn("31 mm; of rain, fell.", CHANGED).build(),
				aTask().numbered(4)
					.titled("Schütt’ Wasser \uD83C\uDF31\uD83C\uDF31")
					.forPlant("\u05D2\u05D9\u05DF")
					.build());
		bothSee(entries);
	}

	@Test
	void seeTheNoticeOfAnEmptyCalendar() throws Exception {
		bothSee(List.of(ENTRIES.nothingPlanned(new UUID(1, 2), CHANGED)));
	}

	/**
	 * node-ical 0.27.2 takes an escaped backslash before an n for a line break (its
	 * ical-parser-utils.js undoes the escapes in the wrong order), so it is asked about
	 * text without backslashes.
	 */
	@Test
	void seeHostileTextAsCleaned() throws Exception {
		List<FeedEntry> hostile = new ArrayList<>();
		List<FeedEntry> withoutBackslash = new ArrayList<>();
		Random random = new Random(20260402);
		for (int i = 0; i < 300; i++) {
			String summary = PlainText.line("s" + HostileText.some(random, 40) + "e");
			String description = PlainText.clean("s" + HostileText.some(random, 300) + "e");
			hostile.add(saying(i, summary, description));
			withoutBackslash.add(saying(i, summary.replace('\\', '/'), description.replace('\\', '/')));
		}
		assertThat(read(run(CalendarWriterTests.write(hostile)).get("ical.js")))
			.isEqualTo(hostile.stream().map(Seen::of).toList());
		bothSee(withoutBackslash);
	}

	private static FeedEntry saying(int number, String summary, String description) {
		FeedEntry plain = ENTRIES.of(aTask().numbered(number).build());
		return new FeedEntry(plain.uid(), 0, plain.created(), plain.changed(), plain.window(), summary, description,
				plain.url(), plain.kind(), plain.categories(), plain.standing());
	}

	private void bothSee(List<FeedEntry> entries) throws Exception {
		JsonNode seen = run(CalendarWriterTests.write(entries));
		List<Seen> written = entries.stream().map(Seen::of).toList();
		assertThat(read(seen.get("ical.js"))).isEqualTo(written);
		assertThat(read(seen.get("node-ical"))).containsExactlyInAnyOrderElementsOf(written);
	}

	private static List<Seen> read(JsonNode events) {
		return StreamSupport.stream(events.spliterator(), false)
			.map((event) -> new Seen(event.get("uid").asString(), event.get("summary").asString(),
					event.get("description").asString(), LocalDate.parse(event.get("from").asString()),
					LocalDate.parse(event.get("end").asString()), event.get("status").asString()))
			.toList();
	}

	private JsonNode run(byte[] feed) throws Exception {
		needed(Files.isDirectory(SCRIPTS.resolve("node_modules/ical.js"))
				&& Files.isDirectory(SCRIPTS.resolve("node_modules/node-ical")), "npm modules in src/test/js");
		Path file = Files.write(this.folder.resolve("tasks.ics"), feed);
		Path out = this.folder.resolve("seen.json");
		Path errors = this.folder.resolve("errors.txt");
		ProcessBuilder node = new ProcessBuilder("node", "check-feed.mjs", file.toAbsolutePath().toString())
			.directory(SCRIPTS.toFile())
			.redirectOutput(out.toFile())
			.redirectError(errors.toFile());
		// A zone far from UTC shows whether days stay days.
		node.environment().put("TZ", "Pacific/Auckland");
		Process process = start(node);
		assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
		assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
		return JsonMapper.shared().readTree(Files.readString(out, StandardCharsets.UTF_8));
	}

	private static Process start(ProcessBuilder node) {
		try {
			return node.start();
		}
		catch (IOException ex) {
			needed(false, "node: " + ex.getMessage());
			throw new IllegalStateException(ex);
		}
	}

	private static void needed(boolean there, String what) {
		if (!there && "true".equals(System.getenv("CI"))) {
			fail("missing: " + what);
		}
		if (!there) {
			System.err.println("NOT CHECKED with ical.js and node-ical, missing: " + what);
			abort("missing: " + what);
		}
	}

}
