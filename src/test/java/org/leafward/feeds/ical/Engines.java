package org.leafward.feeds.ical;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.feeds.ical.CalendarWriter.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

/**
 * Engines of real clients, run by Node and by Python, and what they see in feeds.
 * {@code .ci/run} installs them. Where they are missing the tests say so and are left
 * out, except on a build server (environment variable CI is true), where they fail.
 */
enum Engines {

	/** ical.js 2.2.1 and node-ical 0.27.2. */
	NODE("node", Path.of("src", "test", "js"), "check-feed.mjs", List.of("ical.js", "node-ical")),

	/** python-icalendar 4.0.3, khal 0.10.5 and libical 3.0.16, as Debian 12 has them. */
	PYTHON("/usr/bin/python3", Path.of("src", "test", "py"), "check-feed.py", List.of("icalendar", "khal", "libical"));

	/**
	 * Those that were found to give back every text; the defects of others stand below.
	 */
	static final List<String> EXACT = List.of("ical.js", "libical");

	/**
	 * node-ical 0.27.2 and python-icalendar 4.0.3, and khal with it, take an escaped
	 * backslash before an n for a line break: the one's ical-parser-utils.js and the
	 * other's parser.py undo the escapes one kind after the other. They are asked about
	 * text without backslashes.
	 */
	static final List<String> NO_BACKSLASH = List.of("node-ical", "icalendar", "khal");

	private static final int SECONDS = 120;

	private final String command;

	private final Path folder;

	private final String script;

	private final List<String> names;

	private String missing;

	Engines(String command, Path folder, String script, List<String> names) {
		this.command = command;
		this.folder = folder;
		this.script = script;
		this.names = names;
	}

	/**
	 * What a reader sees of an entry or a to-do.
	 *
	 * @param kind VEVENT or VTODO
	 * @param uid identifier
	 * @param summary title
	 * @param description text
	 * @param from first day; null for a to-do of one day
	 * @param to DTEND or DUE
	 * @param status STATUS
	 * @param alarms how many
	 */
	record Sight(String kind, String uid, String summary, String description, String from, String to, String status,
			int alarms) {

		static Sight of(FeedEntry entry, Component form, boolean alarm) {
			int alarms = (alarm && entry.kind() != null && entry.standing() == Standing.OPEN) ? 1 : 0;
			if (form == Component.EVENT) {
				var seen = FeedReading.Seen.of(entry);
				return new Sight("VEVENT", seen.uid(), seen.summary(), seen.description(), seen.from().toString(),
						seen.end().toString(), seen.status(), alarms);
			}
			var seen = FeedReading.SeenTodo.of(entry);
			return new Sight("VTODO", seen.uid(), seen.summary(), seen.description(),
					(seen.from() != null) ? seen.from().toString() : null, seen.due().toString(), seen.status(),
					alarms);
		}

		private static Sight of(JsonNode node) {
			return new Sight(text(node, "kind"), text(node, "uid"), text(node, "summary"), text(node, "description"),
					text(node, "from"), text(node, "to"), text(node, "status"), node.get("alarms").asInt());
		}

		private static String text(JsonNode node, String name) {
			JsonNode value = node.get(name);
			return (value == null || value.isNull()) ? null : value.asString();
		}

	}

	static List<String> names(Engines... some) {
		return Stream.of(some).flatMap((one) -> one.names.stream()).toList();
	}

	/** Whose engine it is. */
	static Engines running(String name) {
		return Stream.of(values()).filter((one) -> one.names.contains(name)).findFirst().orElseThrow();
	}

	/**
	 * Asks some engines about some documents.
	 * @param documents any number of them, all of one process
	 * @param engines names of those to ask
	 * @return for each of these engines, for each document what it sees
	 */
	List<List<List<Sight>>> see(List<byte[]> documents, List<String> engines) {
		try {
			JsonNode answer = run(documents, engines);
			List<List<List<Sight>>> all = new ArrayList<>();
			for (String engine : engines) {
				List<List<Sight>> seen = new ArrayList<>();
				for (JsonNode document : answer.get(engine)) {
					List<Sight> sights = new ArrayList<>();
					document.forEach((one) -> sights.add(Sight.of(one)));
					seen.add(sights);
				}
				all.add(seen);
			}
			return all;
		}
		catch (IOException | InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private JsonNode run(List<byte[]> documents, List<String> engines) throws IOException, InterruptedException {
		needed();
		ByteArrayOutputStream together = new ByteArrayOutputStream();
		for (byte[] document : documents) {
			if (together.size() > 0) {
				together.write(0);
			}
			together.writeBytes(document);
		}
		Path file = Files.createTempFile("feeds", ".ics");
		Path out = Files.createTempFile("seen", ".json");
		Path errors = Files.createTempFile("errors", ".txt");
		try {
			Files.write(file, together.toByteArray());
			List<String> words = new ArrayList<>(List.of(this.command, this.script, file.toString()));
			words.addAll(engines);
			ProcessBuilder builder = new ProcessBuilder(words).directory(this.folder.toFile())
				.redirectOutput(out.toFile())
				.redirectError(errors.toFile());
			// A zone far from UTC shows whether days stay days.
			builder.environment().put("TZ", "Pacific/Auckland");
			Process process = builder.start();
			boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
			process.destroyForcibly();
			assertThat(ended).as("%s ends within %d s", this, SECONDS).isTrue();
			assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
			return JsonMapper.shared().readTree(Files.readString(out, StandardCharsets.UTF_8));
		}
		finally {
			Files.delete(file);
			Files.delete(out);
			Files.delete(errors);
		}
	}

	/** Tells loudly and leaves the test out where something is missing. */
	void needed() {
		synchronized (this) {
			if (this.missing == null) {
				this.missing = missing();
			}
		}
		if (this.missing.isEmpty()) {
			return;
		}
		if ("true".equals(System.getenv("CI"))) {
			fail("missing: " + this.missing);
		}
		System.err.println("NOT CHECKED with " + this.names + ", missing: " + this.missing);
		abort("missing: " + this.missing);
	}

	private String missing() {
		if (this == NODE) {
			return (works("--version") && Files.isDirectory(this.folder.resolve("node_modules/ical.js"))
					&& Files.isDirectory(this.folder.resolve("node_modules/node-ical"))) ? ""
							: "Node.js or npm --prefix src/test/js ci";
		}
		return works("-c", "import icalendar, khal, ctypes; ctypes.CDLL('libical.so.3')") ? ""
				: "apt-get install khal python3-icalendar libical3";
	}

	private boolean works(String... arguments) {
		try {
			List<String> words = new ArrayList<>(List.of(this.command));
			words.addAll(List.of(arguments));
			Process process = new ProcessBuilder(words).redirectOutput(ProcessBuilder.Redirect.DISCARD)
				.redirectError(ProcessBuilder.Redirect.DISCARD)
				.start();
			return process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
		}
		catch (IOException ex) {
			return false;
		}
		catch (InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
