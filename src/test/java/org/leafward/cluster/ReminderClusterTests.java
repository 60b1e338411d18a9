package org.leafward.cluster;

import com.zaxxer.hikari.HikariDataSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.Application;
import org.leafward.support.SmtpSink;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/**
 * Two server processes on one PostgreSQL: the one that sends is killed hard in the
 * middle, again and again, PostgreSQL goes away for a while, and one node's clock runs 20
 * seconds ahead. Every reminder arrives; a mail arrives twice only when its node was
 * killed between the mail server's word and the record of it, and each of these is
 * counted.
 * <p>
 * The short form runs with all tests; {@code -Dleafward.cluster=long} kills ten times and
 * stops PostgreSQL for 20 seconds.
 */
@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
		disabledReason = "other processes have the machine’s clock")
class ReminderClusterTests {

	private static final boolean LONG = "long".equals(System.getProperty("leafward.cluster"));

	private static final int KILLS = LONG ? 10 : 1;

	private static final int PEOPLE = LONG ? 12_000 : 600;

	private static final Duration OUTAGE = Duration.ofSeconds(LONG ? 20 : 4);

	/** Far above the difference of the clocks. */
	private static final Duration CLAIM = Duration.ofSeconds(LONG ? 60 : 28);

	/** Messages that a node may have handed on without a record of it, see Dispatcher. */
	private static final int IN_FLIGHT = 2 * 32 + 4;

	private final Random random = new Random(20_261_126);

	private final Map<String, Process> nodes = new TreeMap<>();

	@TempDir
	private Path folder;

	private JdbcClient database;

	private String url;

	@Test
	void everyReminderArrivesAndRepeatsAreCounted() throws Exception {
		int port = freePort();
		EmbeddedPostgres postgres = postgres(port);
		this.url = postgres.getJdbcUrl("postgres", "postgres");
		Flyway.configure().dataSource(this.url, "postgres", "").load().migrate();
		try (SmtpSink sink = new SmtpSink(0, 4); HikariDataSource source = new HikariDataSource()) {
			source.setJdbcUrl(this.url);
			source.setUsername("postgres");
			source.setMaximumPoolSize(2);
			this.database = JdbcClient.create(source);
			fill();
			start("a", sink.port());
			start("b", sink.port());
			List<Long> kills = new ArrayList<>();
			for (int kill = 0; kill < KILLS; kill++) {
				kills.add(killTheSender(sink));
				if (kill == KILLS / 2) {
					postgres.close();
					Thread.sleep(OUTAGE.toMillis());
					postgres = postgres(port);
				}
			}
			await().atMost(Duration.ofMinutes(LONG ? 15 : 4)).pollInterval(Duration.ofMillis(500)).until(() -> {
				restart(sink);
				return open() == 0;
			});
			Map<String, Integer> received = sink.received();
			long repeats = sink.messages() - received.size();
			long unsure = this.database.sql("select sum(uncertain) from reminders.message").query(Long.class).single();
			System.out.printf(
					"CLUSTER %,d reminders, %d kills after %s mails, PostgreSQL away for %d s, clocks 20 s apart:"
							+ " %,d mails arrived, %d of them twice or more, %d known as uncertain%n",
					PEOPLE, KILLS, kills, OUTAGE.toSeconds(), received.size(), repeats, unsure);
			assertThat(state("SENT")).isEqualTo(PEOPLE);
			assertThat(received.keySet()).containsExactlyInAnyOrderElementsOf(
					this.database.sql("select message_id from reminders.message").query(String.class).list());
			assertThat(repeats).isLessThanOrEqualTo(unsure).isLessThanOrEqualTo((long) KILLS * IN_FLIGHT);
		}
		finally {
			this.nodes.values().forEach(Process::destroyForcibly);
			postgres.close();
		}
	}

	/** Kills the node that is sending, somewhere in the middle, and starts it again. */
	private long killTheSender(SmtpSink sink) throws Exception {
		long before = sink.messages();
		int more = 20 + this.random.nextInt(60);
		await().atMost(Duration.ofMinutes(3)).pollInterval(Duration.ofMillis(5)).until(() -> {
			restart(sink);
			return sink.messages() >= before + more;
		});
		String name = this.database.sql("""
				select instance_name from quartz.qrtz_fired_triggers where job_name = 'reminders-dispatch'
				order by fired_time desc limit 1
				""").query(String.class).optional().orElse("a");
		Process victim = this.nodes.get(name);
		victim.destroyForcibly();
		assertThat(victim.waitFor(20, TimeUnit.SECONDS)).isTrue();
		long sent = sink.messages();
		start(name, sink.port());
		return sent;
	}

	/**
	 * What a service manager does: a node that was on its way up while the database was
	 * away has ended by itself.
	 */
	private void restart(SmtpSink sink) throws IOException {
		for (Map.Entry<String, Process> node : List.copyOf(this.nodes.entrySet())) {
			if (!node.getValue().isAlive()) {
				start(node.getKey(), sink.port());
			}
		}
	}

	private long open() {
		return state("PENDING");
	}

	private long state(String state) {
		return this.database.sql("select count(*) from reminders.reminder where state = ?")
			.param(state)
			.query(Long.class)
			.single();
	}

	private void start(String name, int smtp) throws IOException {
		ProcessBuilder builder = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx256m",
				"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
				Node.class.getName(), name.equals("b") ? "20" : "0", "--spring.datasource.url=" + this.url,
				"--spring.datasource.username=postgres", "--spring.datasource.password=",
				"--spring.datasource.hikari.maximum-pool-size=8", "--spring.datasource.hikari.connection-timeout=3000",
				"--spring.quartz.properties.org.quartz.scheduler.instanceId=" + name,
				"--spring.quartz.properties.org.quartz.jobStore.clusterCheckinInterval=2000",
				"--spring.mail.host=127.0.0.1", "--spring.mail.port=" + smtp, "--leafward.reminders.dispatch-every=2s",
				"--leafward.reminders.reap-every=3s", "--leafward.reminders.claim=" + CLAIM.toSeconds() + "s",
				"--leafward.data-directory=" + this.folder.resolve(name), "--server.port=0",
				"--server.address=127.0.0.1", "--logging.level.root=warn");
		this.nodes.put(name,
				builder.redirectErrorStream(true)
					.redirectOutput(ProcessBuilder.Redirect.appendTo(this.folder.resolve(name + ".log").toFile()))
					.start());
	}

	private EmbeddedPostgres postgres(int port) throws IOException {
		return EmbeddedPostgres.builder()
			.setPort(port)
			.setDataDirectory(Files.createDirectories(this.folder.resolve("postgres")))
			.setCleanDataDirectory(false)
			.setRegisterShutdownHook(false)
			.setLocaleConfig("locale", "C.UTF-8")
			.setServerConfig("fsync", "on")
			.setServerConfig("max_connections", "60")
			.start();
	}

	private static int freePort() throws IOException {
		try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			return socket.getLocalPort();
		}
	}

	/**
	 * Straight into the tables: people with one task each that begins today, and is due.
	 */
	private void fill() {
		this.database.sql("""
				insert into accounts.person (id, name, email, zone, created_at, confirmed_at)
				select md5('p' || i)::uuid, 'P' || i, 'p' || i || '@example.org', 'UTC', now(), now()
				from generate_series(1, ?) i
				""").param(PEOPLE).update();
		this.database.sql("insert into care.explanation (id, content) values (md5('e')::uuid, '{}')").update();
		this.database
			.sql("""
					insert into care.wording (id, title, what, why)
					values (md5('w')::uuid, 'Water deeply', 'Soak the root zone slowly.', 'Evergreens lose water all winter.')
					""")
			.update();
		this.database
			.sql("""
					insert into care.task (id, planting, plant, site, site_name, person, rule, season, occurrence, kind, from_day,
						to_day, wording, state, sequence, explanation, created_at, changed_at)
					select md5('t' || i)::uuid, md5('l' || i)::uuid, 'hedge ' || i, md5('s' || i)::uuid, 'Garden ' || i,
						md5('p' || i)::uuid, 'evergreens/water', extract(year from now())::int, 0, 'DO', current_date,
						current_date + 9, md5('w')::uuid, 'PLANNED', 0, md5('e')::uuid, now(), now()
					from generate_series(1, ?) i
					""")
			.param(PEOPLE)
			.update();
		this.database
			.sql("""
					insert into reminders.reminder (id, person_id, channel, topic, bundle, task_id, first_day, dedup_key, due_at,
						expires_at, next_try_at, state)
					select md5('r' || i)::uuid, md5('p' || i)::uuid, 'mail', 'to-do', 'morning:' || current_date,
						md5('t' || i)::uuid, current_date, 'mail:' || md5('t' || i)::uuid || '@' || current_date,
						now() - interval '1 minute', now() + interval '3 days', now() - interval '1 minute', 'PENDING'
					from generate_series(1, ?) i
					""")
			.param(PEOPLE)
			.update();
		this.database
			.sql("""
					insert into reminders.wishes (person_id, language, units, morning, outlook_day, quiet_from, quiet_to,
						urgent_anyway)
					select md5('p' || i)::uuid, 'en', 'both', '07:00', 1, '00:00', '00:00', true from generate_series(1, ?) i
					""")
			.param(PEOPLE)
			.update();
	}

	/** A server process whose clock runs ahead. */
	static final class Node {

		private Node() {
		}

		public static void main(String[] arguments) {
			Duration ahead = Duration.ofSeconds(Long.parseLong(arguments[0]));
			String[] settings = Arrays.copyOfRange(arguments, 1, arguments.length);
			new SpringApplicationBuilder(Application.class)
				.initializers((context) -> ((GenericApplicationContext) context).registerBean(Clock.class,
						() -> Clock.offset(Clock.systemUTC(), ahead)))
				.run(settings);
		}

	}

}
