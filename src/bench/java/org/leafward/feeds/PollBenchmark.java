package org.leafward.feeds;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.leafward.Application;
import org.leafward.care.TaskKind;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.measure.DayWindow;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.util.FileSystemUtils;
import org.springframework.web.bind.annotation.GetMapping;

import static org.awaitility.Awaitility.await;

/**
 * A million stored feeds and wrk on the same machine: how many polls a second, compared
 * with the same server answering the same thing from a constant, and with a calendar
 * server for everybody. Needs wrk and, for the last, radicale (both of Debian); without
 * them that part is left out and said so.
 */
public final class PollBenchmark {

	private static final int DOCUMENTS = 200;

	private static final int EVENTS = 100;

	private static final int CONNECTIONS = 64;

	/** Feeds that are read again and again. */
	private static final int OFTEN = 1_000;

	private static final Pattern RESULT = Pattern.compile("RESULT (\\S+) (\\S+) (\\S+) (\\S+) (\\S+) (\\S+)");

	private static final List<byte[]> BODIES = new ArrayList<>();

	private final int feeds;

	private final int port;

	private final Path folder;

	private PollBenchmark(int feeds, int port, Path folder) {
		this.feeds = feeds;
		this.port = port;
		this.folder = folder;
	}

	/** What the same server answers without looking anything up. */
	@Controller
	static class Constants {

		@GetMapping("/f/constant/304")
		void notModified(HttpServletResponse response) {
			headers(response);
			response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
		}

		@GetMapping("/f/constant/200")
		void body(HttpServletResponse response) throws IOException {
			headers(response);
			response.setContentType("text/calendar; charset=utf-8");
			response.setContentLength(BODIES.get(0).length);
			response.getOutputStream().write(BODIES.get(0));
		}

		private static void headers(HttpServletResponse response) {
			response.setHeader("X-Robots-Tag", "noindex, nofollow");
			response.setHeader("Referrer-Policy", "no-referrer");
			response.setHeader("ETag", "\"0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef\"");
			response.setHeader("Last-Modified", "Thu, 26 Nov 2026 10:00:00 GMT");
			response.setHeader("Cache-Control", "private, max-age=900");
			response.setHeader("Vary", "Accept-Encoding");
			response.setHeader("Content-Disposition", "inline; filename=\"tasks.ics\"");
		}

	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args number of feeds, 1000000 by default; seconds of a run, 15 by default
	 */
	public static void main(String[] args) throws Exception {
		int feeds = (args.length > 0) ? Integer.parseInt(args[0]) : 1_000_000;
		int seconds = (args.length > 1) ? Integer.parseInt(args[1]) : 15;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-poll")
			.toAbsolutePath();
		IntStream.range(0, DOCUMENTS).forEach((number) -> BODIES.add(document(number)));
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class, Constants.class)
			.run("--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
					"--spring.quartz.auto-startup=false", "--logging.level.root=warn")) {
			int port = context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
			PollBenchmark benchmark = new PollBenchmark(feeds, port, folder);
			benchmark.store(context.getBean(JdbcClient.class), context.getBean(PollBoard.class));
			benchmark.run(seconds);
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	/** A calendar of a hundred entries with some 40 kB. */
	private static byte[] document(int number) {
		Random random = new Random(number);
		String[] words = ("water the root area slowly until the soil is moist and check with a finger first because "
				+ "needles and leaves lose water all winter while roots in frozen soil cannot replace it so keep to local "
				+ "limits cover before sunset down to the ground and take it off in the morning")
			.split(" ");
		List<FeedEntry> entries = new ArrayList<>();
		Instant at = Instant.parse("2026-11-01T00:00:00Z");
		for (int i = 0; i < EVENTS; i++) {
			LocalDate from = LocalDate.of(2026, 6, 1).plusDays(random.nextInt(500));
			String text = random.ints(8, 0, words.length).mapToObj((w) -> words[w]).collect(Collectors.joining(" "));
			entries.add(new FeedEntry(new UUID(number, i) + "@leafward", random.nextInt(9), at, at,
					new DayWindow(from, from.plusDays(random.nextInt(20))), text.substring(0, Math.min(40, text.length())),
					text + ".\nWhy: " + text, "https://leafward.example/tasks/" + new UUID(number, i),
					TaskKind.DO, List.of("Plant care", "To do"), Standing.OPEN));
		}
		return new CalendarWriter().write(new Head("Plant care: garden " + number, "What to do and when.", "en"),
				entries, Component.EVENT, null, Before.nothing(at))
			.octets();
	}

	private void store(JdbcClient database, PollBoard board) {
		long begin = System.nanoTime();
		database.sql("create table public.body (n int primary key, packed bytea, etag text)").update();
		for (int i = 0; i < DOCUMENTS; i++) {
			database.sql("insert into public.body values (?, ?, ?)")
				.params(i, Packing.pack(BODIES.get(i)), etag(i))
				.update();
		}
		database.sql("alter table feeds.feed_document disable trigger user").update();
		for (int from = 0; from < this.feeds; from += 50_000) {
			int to = Math.min(this.feeds, from + 50_000);
			database.sql("""
					insert into feeds.feed (id, kind, what, owner, token_hash, created_at, last_fetched_at)
					select md5('feed' || i)::uuid, 'SITE', md5('site' || i)::uuid, md5('who' || i)::uuid,
					sha256(convert_to('benchbenchbenchbenchbenc' || lpad(i::text, 8, '0'), 'UTF8')),
					now() - interval '90 days', now() - random() * interval '1 day'
					from generate_series(?, ? - 1) i
					""").params(from, to).update();
			database.sql("""
					insert into feeds.feed_document (feed_id, form, packed, etag, last_modified, stale, built_for, built_at)
					select md5('feed' || i)::uuid, 'EVENTS', b.packed, b.etag, timestamptz '2026-11-20 10:00Z', false,
					current_date + 1, now()
					from generate_series(?, ? - 1) i join public.body b on b.n = i % ?
					""").params(from, to, DOCUMENTS).update();
		}
		database.sql("alter table feeds.feed_document enable trigger user").update();
		database.sql("vacuum analyze feeds.feed").update();
		database.sql("vacuum analyze feeds.feed_document").update();
		database.sql("checkpoint").update();
		System.out.printf("POLL %,d feeds stored in %d s, database %,d MB, a document %,d octets, %,d packed%n", this.feeds,
				TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begin),
				database.sql("select pg_database_size(current_database()) / 1000000").query(Long.class).single(),
				BODIES.get(0).length, Packing.pack(BODIES.get(0)).length);
		// It was started with nothing in the database: as if the node had come up now.
		begin = System.nanoTime();
		board.reload();
		await().atMost(Duration.ofMinutes(5)).until(() -> board.size() == this.feeds);
		System.out.printf("POLL read into memory in %d ms%n",
				TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin));
	}

	private static String etag(int number) {
		return HexFormat.of().formatHex(FeedDocuments.sha256(BODIES.get(number)));
	}

	private void run(int seconds) throws Exception {
		check();
		Path all = script("all", this.feeds, true, 0);
		Path allWhole = script("all-whole", this.feeds, false, 0);
		Path some = script("some", OFTEN, false, 0);
		// Each connection waits a little less than its share, as an answer takes its time.
		Path steady = script("steady", this.feeds, true, CONNECTIONS - 4);
		Path constant304 = constant("304");
		Path constant200 = constant("200");
		wrk("warm up", constant304, 8);
		wrk("warm up", all, 8);
		wrk("warm up", some, 8);
		compare("304 on a random feed", all, "a constant 304", constant304, seconds);
		compare("200 of 40 kB, feeds that are asked often", some, "a constant 200 of 40 kB", constant200, seconds);
		compare("200 of 40 kB, random feed", allWhole, "a constant 200 of 40 kB", constant200, seconds);
		wrk("304 on a random feed at 1,000 a second for 60 s", steady, 60);
		radicale(some, seconds);
		System.gc();
		Runtime now = Runtime.getRuntime();
		System.out.printf("POLL heap in use after a collection %,d MB, bound %,d MB%n",
				(now.totalMemory() - now.freeMemory()) >> 20, now.maxMemory() >> 20);
	}

	/** That what is measured is what is meant. */
	private void check() throws Exception {
		HttpClient client = HttpClient.newHttpClient();
		Random random = new Random(7);
		for (int n = 0; n < 20; n++) {
			int i = random.nextInt(this.feeds);
			URI address = URI.create("http://127.0.0.1:%d%s".formatted(this.port, path(i)));
			HttpResponse<byte[]> whole = client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofByteArray());
			HttpResponse<byte[]> known = client.send(
					HttpRequest.newBuilder(address).header("If-None-Match", '"' + etag(i % DOCUMENTS) + '"').build(),
					BodyHandlers.ofByteArray());
			if (whole.statusCode() != 200 || !Arrays.equals(whole.body(), BODIES.get(i % DOCUMENTS))
					|| known.statusCode() != 304 || known.body().length > 0) {
				throw new IllegalStateException("feed %d answers %s and %s".formatted(i, whole, known));
			}
		}
	}

	private static String path(int feed) {
		return "/f/benchbenchbenchbenchbenc%08d/tasks.ics".formatted(feed);
	}

	private Path script(String name, int among, boolean conditional, int delay) throws IOException {
		String tags = IntStream.range(0, DOCUMENTS)
			.mapToObj((i) -> "'\"" + etag(i) + "\"'")
			.collect(Collectors.joining(",\n"));
		return Files.writeString(this.folder.resolve(name + ".lua"), """
				local tags = {%s}
				local heads = {}
				for i, tag in ipairs(tags) do heads[i] = %s end
				function setup(thread) thread:set("seed", os.time()) end
				function init() math.randomseed(seed) end
				function request()
					local i = math.random(0, %d)
					return wrk.format("GET", string.format("/f/benchbenchbenchbenchbenc%%08d/tasks.ics", i),
						heads[i %% %d + 1])
				end
				%s
				""".formatted(tags, conditional ? "{['If-None-Match'] = tag}" : "{}", among - 1, DOCUMENTS,
				(delay > 0) ? "function delay() return " + delay + " end" : "") + DONE);
	}

	private Path constant(String what) throws IOException {
		return Files.writeString(this.folder.resolve("constant-" + what + ".lua"), """
				function request() return wrk.format("GET", "/f/constant/%s") end
				""".formatted(what) + DONE);
	}

	private static final String DONE = """
			function done(summary, latency)
				io.write(string.format("RESULT %.0f %.3f %.3f %.3f %d %.0f\\n",
					summary.requests / summary.duration * 1e6, latency:percentile(50) / 1000,
					latency:percentile(99) / 1000, latency.max / 1000,
					summary.errors.status + summary.errors.read + summary.errors.write + summary.errors.timeout
					+ summary.errors.connect, summary.bytes / summary.requests))
			end
			""";

	private void compare(String what, Path script, String with, Path other, int seconds) throws Exception {
		List<Double> ours = new ArrayList<>();
		List<Double> theirs = new ArrayList<>();
		for (int i = 0; i < 3; i++) {
			theirs.add(wrk(with, other, seconds));
			ours.add(wrk(what, script, seconds));
		}
		System.out.printf("POLL %s: %.0f %% of %s (medians of three)%n", what, 100 * median(ours) / median(theirs), with);
	}

	private static double median(List<Double> values) {
		return values.stream().sorted().toList().get(values.size() / 2);
	}

	private double wrk(String what, Path script, int seconds) throws Exception {
		return wrk(what, script, seconds, this.port);
	}

	private double wrk(String what, Path script, int seconds, int at) throws Exception {
		String out = output(List.of("wrk", "-t1", "-c" + CONNECTIONS, "-d" + seconds + "s", "--timeout", "10s", "-s",
				script.toString(), "http://127.0.0.1:" + at));
		Matcher result = RESULT.matcher(out);
		if (!result.find()) {
			throw new IllegalStateException("wrk said: " + out);
		}
		if (!what.equals("warm up")) {
			System.out.printf("POLL   %s: %s/s, median %s ms, p99 %s ms, most %s ms, %s errors, %s octets each%n", what,
					result.group(1), result.group(2), result.group(3), result.group(4), result.group(5), result.group(6));
		}
		return Double.parseDouble(result.group(1));
	}

	/** The same hundred entries from a calendar server for everybody. */
	private void radicale(Path ours, int seconds) throws Exception {
		Path storage = this.folder.resolve("radicale");
		Path collection = Files.createDirectories(storage.resolve("collection-root/bench/garden"));
		Files.writeString(collection.resolve(".Radicale.props"), "{\"tag\": \"VCALENDAR\"}");
		String whole = new String(BODIES.get(0), StandardCharsets.UTF_8);
		String head = whole.substring(0, whole.indexOf("BEGIN:VEVENT"));
		Matcher events = Pattern.compile("BEGIN:VEVENT.*?END:VEVENT\r\n", Pattern.DOTALL).matcher(whole);
		for (int i = 0; events.find(); i++) {
			Files.writeString(collection.resolve("entry-" + i + ".ics"), head + events.group() + "END:VCALENDAR\r\n");
		}
		int at = 15232;
		Process server;
		try {
			server = new ProcessBuilder("radicale", "--storage-filesystem-folder", storage.toString(), "--server-hosts",
					"127.0.0.1:" + at, "--auth-type", "none", "--rights-type", "authenticated", "--logging-level",
					"error")
				.redirectErrorStream(true)
				.redirectOutput(this.folder.resolve("radicale.log").toFile())
				.start();
		}
		catch (IOException ex) {
			System.out.println("POLL not compared with radicale, which isn't here: " + ex.getMessage());
			return;
		}
		try {
			Path script = Files.writeString(this.folder.resolve("radicale.lua"), """
					local head = {['Authorization'] = 'Basic YmVuY2g6YmVuY2g='}
					function request() return wrk.format("GET", "/bench/garden/", head) end
					""" + DONE);
			HttpClient client = HttpClient.newHttpClient();
			HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + at + "/bench/garden/"))
				.header("Authorization", "Basic YmVuY2g6YmVuY2g=")
				.build();
			await().atMost(Duration.ofSeconds(20)).ignoreExceptions().until(() -> {
				HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
				return answer.statusCode() == 200 && answer.body().split("BEGIN:VEVENT").length == EVENTS + 1;
			});
			double theirs = wrk("radicale, the same 100 entries", script, seconds, at);
			double own = wrk("200 of 40 kB, feeds that are asked often", ours, seconds);
			System.out.printf("POLL %.0f times as many as radicale%n", own / theirs);
		}
		finally {
			server.destroy();
			server.waitFor(10, TimeUnit.SECONDS);
		}
	}

	private static String output(List<String> command) throws Exception {
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		process.waitFor();
		return out;
	}

}
