package org.leafward.feeds;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.leafward.Application;
import org.leafward.care.PackVersion;
import org.leafward.care.ReplanBenchmark;
import org.leafward.care.Replanning;
import org.leafward.care.workshop.Author;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.Workshop;
import org.leafward.feeds.poll.PollBoard;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

import static org.awaitility.Awaitility.await;

/**
 * Rules of a pack are changed that are in a hundred thousand of a million calendars, while
 * programs go on asking for any of them, a thousand times a second or as often as is said: for what
 * changed since they last asked. How long until all are built anew, and the longest that
 * a poll has waited. Needs wrk (of Debian).
 */
public final class RebuildBenchmark {

	private static final Duration LIMIT = Duration.ofHours(1);

	private static final int CONNECTIONS = 64;

	private RebuildBenchmark() {
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args number of sites, each with 12 plantings, 1000 by default; calendars of
	 * each, 100 by default; other calendars, which the change leaves as they are, nine for
	 * each of these by default; polls a second, 1,000 by default
	 */
	public static void main(String[] args) throws Exception {
		int sites = (args.length > 0) ? Integer.parseInt(args[0]) : 1_000;
		int each = (args.length > 1) ? Integer.parseInt(args[1]) : 100;
		int others = (args.length > 2) ? Integer.parseInt(args[2]) : 9 * sites * each;
		int polls = (args.length > 3) ? Integer.parseInt(args[3]) : 1_000;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-rebuild")
			.toAbsolutePath();
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(
				"--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
				"--spring.quartz.auto-startup=false", "--logging.level.root=warn")) {
			run(context, sites, each, others, polls, folder);
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	private static void run(ConfigurableApplicationContext context, int sites, int each, int others, int rate,
			Path folder)
			throws Exception {
		JdbcClient database = context.getBean(JdbcClient.class);
		Replanning replanning = context.getBean(Replanning.class);
		ReplanBenchmark.fill(context, sites, 12 * sites, 20);
		replanning.askAll();
		await().atMost(LIMIT).pollInterval(Duration.ofMillis(200)).until(() -> {
			replanning.drain(LIMIT);
			return quiet(database);
		});
		System.out.printf("REBUILD %,d sites planned, %,d tasks%n", sites,
				database.sql("select count(*) from care.task").query(Long.class).single());
		subscribe(database, sites, each);
		subscribeOthers(database, sites * each, others);
		context.getBean(PollBoard.class).reload();
		RebuildWorker worker = context.getBean(RebuildWorker.class);
		FeedDocuments documents = context.getBean(FeedDocuments.class);
		time("all built for the first time, by the worker and one more", sites * each, () -> {
			worker.soon();
			documents.rebuildStale(Duration.ofSeconds(2));
			return stale(database) == 0;
		});
		System.out.printf("REBUILD a document: %s octets packed on average%n",
				database.sql("select avg(octet_length(packed))::int from feeds.feed_document where octet_length(packed) > 1000")
					.query(Integer.class)
					.single());
		database.sql("vacuum analyze").update();
		int port = context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
		// The first requests of all load classes, which is no matter of rebuilding.
		Process first = polls(folder, sites * each + others, rate, port);
		Thread.sleep(15_000);
		interrupt(first);
		first.waitFor();
		Process polls = polls(folder, sites * each + others, rate, port);
		Thread.sleep(1_000);
		Instant asked = Instant.now();
		publish(context);
		AtomicInteger still = new AtomicInteger();
		time("after a changed rule, with %,d polls a second".formatted(rate), sites * each,
				() -> (quiet(database) && stale(database) == 0) ? still.incrementAndGet() > 10 : still.getAndSet(0) < 0);
		long rebuilt = database.sql("select count(*) from feeds.feed_document where last_modified >= ?")
			.param(OffsetDateTime.ofInstant(asked, ZoneOffset.UTC))
			.query(Long.class)
			.single();
		System.out.printf("REBUILD %,d documents are new since%n", rebuilt);
		interrupt(polls);
		String out = new String(polls.getInputStream().readAllBytes());
		System.out.println("REBUILD polls meanwhile: " + out.lines().filter((line) -> line.startsWith("RESULT")).findFirst().orElse(out));
		Runtime now = Runtime.getRuntime();
		System.gc();
		System.out.printf("REBUILD heap in use after a collection %,d MB, bound %,d MB%n",
				(now.totalMemory() - now.freeMemory()) >> 20, now.maxMemory() >> 20);
	}

	/** What ends wrk with its figures. */
	private static void interrupt(Process wrk) throws Exception {
		new ProcessBuilder("kill", "-INT", String.valueOf(wrk.pid())).start().waitFor();
	}

	private static boolean quiet(JdbcClient database) {
		return database.sql("select count(*) from care.replan").query(Long.class).single() == 0
				&& database.sql("select count(*) from events.event_publication").query(Long.class).single() == 0;
	}

	private static long stale(JdbcClient database) {
		return database.sql("select count(*) from feeds.feed_document where stale").query(Long.class).single();
	}

	private static void subscribe(JdbcClient database, int sites, int each) {
		byte[] nothing = Packing.pack(new byte[0]);
		database.sql("""
				insert into feeds.feed (id, kind, what, owner, token_hash, created_at, last_fetched_at, language, units)
				select md5('feed' || i)::uuid, 'SITE', md5('site' || 1 + i %% %d)::uuid, md5('owner' || 1 + i %% %d)::uuid,
				sha256(convert_to('benchbenchbenchbenchbenc' || lpad(i::text, 8, '0'), 'UTF8')),
				now() - interval '90 days', now() - random() * interval '1 day',
				case when i %% 10 = 0 then 'es' else 'en' end, case when i %% 3 = 0 then 'us' else 'both' end
				from generate_series(0, ? - 1) i
				""".formatted(sites, sites)).param(sites * each).update();
		database.sql("""
				insert into feeds.feed_document (feed_id, form, packed, etag, last_modified, stale, built_for, built_at,
				next_poll)
				select id, 'EVENTS', ?, repeat('0', 64), timestamptz '2026-01-01 00:00Z', true, current_date + 1, now(),
				now() + random() * interval '1 day' from feeds.feed
				""").param(nothing).update();
		database.sql("vacuum analyze").update();
	}

	/** Of sites that nobody has, with next to nothing in them. */
	private static void subscribeOthers(JdbcClient database, int first, int others) {
		byte[] little = Packing.pack("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n".getBytes(StandardCharsets.US_ASCII));
		database.sql("alter table feeds.feed_document disable trigger user").update();
		for (int from = 0; from < others; from += 50_000) {
			int to = Math.min(others, from + 50_000);
			database.sql("""
					insert into feeds.feed (id, kind, what, owner, token_hash, created_at, last_fetched_at)
					select md5('feed' || i)::uuid, 'SITE', md5('other' || i)::uuid, md5('who' || i)::uuid,
					sha256(convert_to('benchbenchbenchbenchbenc' || lpad(i::text, 8, '0'), 'UTF8')),
					now() - interval '90 days', now() - random() * interval '1 day'
					from generate_series(?, ? - 1) i
					""").params(first + from, first + to).update();
			database.sql("""
					insert into feeds.feed_document (feed_id, form, packed, etag, last_modified, stale, built_for, built_at,
					next_poll)
					select md5('feed' || i)::uuid, 'EVENTS', ?, repeat('1', 64), timestamptz '2026-01-01 00:00Z', false,
					current_date + 1, now(), now() + random() * interval '1 day' from generate_series(?, ? - 1) i
					""").params(little, first + from, first + to).update();
		}
		database.sql("alter table feeds.feed_document enable trigger user").update();
		database.sql("vacuum analyze").update();
		database.sql("checkpoint").update();
	}

	private static void publish(ConfigurableApplicationContext context) {
		Workshop workshop = context.getBean(Workshop.class);
		PackVersion now = context.getBean(PackHistory.class).newest("watering").orElseThrow();
		String content = now.content().replaceAll("(?m)^(      what: .*)$", "$1 Tell the others.");
		if (content.equals(now.content())) {
			throw new IllegalStateException("nothing to change");
		}
		workshop.publish("watering", now.version(), content, "bench", new Author("bench", null));
	}

	private static Process polls(Path folder, int feeds, int rate, int port) throws Exception {
		Path script = Files.writeString(folder.resolve("polls.lua"), """
				function setup(thread) thread:set("seed", os.time()) end
				function init() math.randomseed(seed) end
				function request()
					return wrk.format("GET", string.format("/f/benchbenchbenchbenchbenc%%08d/tasks.ics", math.random(0, %d)),
						{['If-Modified-Since'] = '%s', ['Accept-Encoding'] = 'gzip'})
				end
				function delay() return %d end
				function done(summary, latency)
					io.write(string.format("RESULT %%.0f/s, median %%.2f ms, p99 %%.2f ms, most %%.2f ms, %%d errors\\n",
						summary.requests / summary.duration * 1e6, latency:percentile(50) / 1000,
						latency:percentile(99) / 1000, latency.max / 1000, summary.errors.status + summary.errors.timeout))
				end
				""".formatted(feeds - 1,
				DateTimeFormatter.RFC_1123_DATE_TIME.format(OffsetDateTime.now(ZoneOffset.UTC).plusSeconds(1)),
				CONNECTIONS * 1_000 / rate));
		return new ProcessBuilder("wrk", "-t1", "-c" + CONNECTIONS, "-d3600s", "--timeout", "10s", "-s", script.toString(),
				"http://127.0.0.1:" + port)
			.redirectErrorStream(true)
			.start();
	}

	private static void time(String what, int documents, BooleanSupplier done) {
		long begin = System.nanoTime();
		await().atMost(LIMIT).pollInterval(Duration.ofMillis(500)).until(done::getAsBoolean);
		long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin);
		System.out.printf("REBUILD %s: %,d documents in %.1f s, %.2f ms each%n", what, documents, millis / 1000.0,
				millis / (double) documents);
	}

}
