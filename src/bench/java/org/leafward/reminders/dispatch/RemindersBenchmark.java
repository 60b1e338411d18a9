package org.leafward.reminders.dispatch;

import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.leafward.Application;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.care.TaskCalendar;
import org.leafward.reminders.Message;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.ClaimTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.support.SmtpSink;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/**
 * How fast reminders are made, claimed, written, handed on and recorded, on one
 * PostgreSQL on the same machine.
 * <ul>
 * <li>{@code make}: fourteen days for 50,000 people with 60 tasks a year each.
 * <li>{@code claim}: 1,000,000 due reminders of those people, a channel that does nothing.
 * <li>{@code mail}: 100,000 people with one due reminder each, to a mail server of its own
 * process.
 * </ul>
 */
public final class RemindersBenchmark {

	private RemindersBenchmark() {
	}

	/**
	 * Runs one of the three and prints what it took.
	 * @param args {@code make}, {@code claim} or {@code mail}; a share of the full size,
	 * 1 by default
	 */
	public static void main(String[] args) throws Exception {
		String what = args[0];
		double share = (args.length > 1) ? Double.parseDouble(args[1]) : 1;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-reminders")
			.toAbsolutePath();
		int port = freePort();
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(
				"--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
				"--spring.quartz.auto-startup=false", "--logging.level.root=error", "--spring.mail.host=127.0.0.1",
				"--spring.mail.port=" + port)) {
			JdbcClient database = context.getBean(JdbcClient.class);
			switch (what) {
				case "make" -> make(context, database, (int) (50_000 * share));
				case "claim" -> claim(context, database, (int) (50_000 * share));
				case "mail" -> mail(context, database, (int) (100_000 * share), port);
				default -> throw new IllegalArgumentException("make, claim or mail, not " + what);
			}
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	private static void make(ConfigurableApplicationContext context, JdbcClient database, int people) {
		people(database, people);
		tasks(database, people, 60, "current_date - 180 + 6 * k");
		database.sql("vacuum analyze").update();
		Materialiser materialiser = context.getBean(Materialiser.class);
		for (String round : List.of("first time", "again, with nothing to do")) {
			long begin = System.nanoTime();
			materialiser.everybody();
			double seconds = (System.nanoTime() - begin) / 1e9;
			System.out.printf("REMINDERS made for %,d people, %s: %.1f s, %.2f ms each; %,d rows%n", people, round,
					seconds, 1000 * seconds / people,
					database.sql("select count(*) from reminders.reminder").query(Long.class).single());
		}
	}

	private static void claim(ConfigurableApplicationContext context, JdbcClient database, int people) {
		people(database, people);
		tasks(database, people, 20, "current_date");
		due(database);
		long rows = database.sql("select count(*) from reminders.reminder").query(Long.class).single();
		List<Channel> nowhere = List.of(new Nowhere());
		try (Dispatcher dispatcher = new Dispatcher(context.getBean(ClaimTable.class),
				new Drafts(context.getBean(People.class), context.getBean(TaskCalendar.class), nowhere,
						context.getBean(WishesTable.class), context.getBean(Advisories.class)),
				context.getBean(Materialiser.class), nowhere, context.getBean(Ledger.class), 4, Duration.ofMinutes(10),
				DispatchWatch.NONE, context.getBean(Clock.class))) {
			run(dispatcher, database, rows, "claimed, written and recorded, to a channel that does nothing");
		}
	}

	private static void mail(ConfigurableApplicationContext context, JdbcClient database, int people, int port)
			throws Exception {
		people(database, people);
		tasks(database, people, 1, "current_date");
		due(database);
		Process sink = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx256m", "-cp",
				System.getProperty("java.class.path"), SmtpSink.class.getName(), String.valueOf(port))
			.redirectErrorStream(true)
			.redirectOutput(ProcessBuilder.Redirect.DISCARD)
			.start();
		try {
			TimeUnit.SECONDS.sleep(2);
			run(context.getBean(Dispatcher.class), database, people, "mailed to a server of its own process");
		}
		finally {
			sink.destroyForcibly();
		}
	}

	private static void run(Dispatcher dispatcher, JdbcClient database, long rows, String what) {
		long begin = System.nanoTime();
		long messages = 0;
		int some = dispatcher.run();
		while (some > 0) {
			messages += some;
			some = dispatcher.run();
		}
		double seconds = (System.nanoTime() - begin) / 1e9;
		long sent = database.sql("select count(*) from reminders.reminder where state = 'SENT'")
			.query(Long.class)
			.single();
		System.out.printf("REMINDERS %,d of %,d reminders in %,d messages %s: %.1f s, %,.0f reminders/s, %,.0f messages/s%n",
				sent, rows, messages, what, seconds, sent / seconds, messages / seconds);
	}

	private static void people(JdbcClient database, int people) {
		database.sql("""
				insert into accounts.person (id, name, email, zone, created_at, confirmed_at)
				select md5('p' || i)::uuid, 'P' || i, 'p' || i || '@example.org',
					(array['America/Chicago', 'America/New_York', 'Europe/Berlin'])[1 + i % 3], now(), now()
				from generate_series(1, ?) i
				""").param(people).update();
		// Nothing of the day is quiet, or the benchmark would depend on when it runs.
		database.sql("""
				insert into reminders.wishes (person_id, language, units, morning, outlook_day, quiet_from, quiet_to,
					urgent_anyway)
				select md5('p' || i)::uuid, case when i % 10 = 0 then 'es' else 'en' end, 'both', '07:00', 1, '00:00', '00:00',
					true
				from generate_series(1, ?) i
				""").param(people).update();
	}

	private static void tasks(JdbcClient database, int people, int each, String from) {
		database.sql("insert into care.explanation (id, content) values (md5('e')::uuid, '{}')").update();
		database.sql("""
				insert into care.wording (id, title, what, amount, why, caution)
				select md5('w' || k)::uuid, 'Water deeply, bed ' || k, 'Soak the root zone slowly until it is moist to the depth of a hand.',
					'40 L (11 gal)', 'Broadleaf evergreens lose water all winter.', 'Keep hoses off walks that may freeze.'
				from generate_series(1, ?) k
				""").param(each).update();
		database.sql("""
				insert into care.task (id, planting, plant, site, site_name, person, rule, season, occurrence, kind, from_day,
					to_day, wording, state, sequence, explanation, created_at, changed_at)
				select md5('t' || i || '-' || k)::uuid, md5('l' || i || '-' || k)::uuid, 'hedge ' || k, md5('s' || i)::uuid,
					'Garden ' || i, md5('p' || i)::uuid, 'evergreens/rule-' || k, extract(year from now())::int, 0, 'DO', %1$s,
					%1$s + 9, md5('w' || k)::uuid, 'PLANNED', 0, md5('e')::uuid, now(), now()
				from generate_series(1, ?) i, generate_series(1, ?) k
				""".formatted(from)).params(people, each).update();
	}

	private static void due(JdbcClient database) {
		database.sql("""
				insert into reminders.reminder (id, person_id, channel, topic, bundle, task_id, first_day, dedup_key, due_at,
					expires_at, next_try_at, state)
				select gen_random_uuid(), person, 'mail', 'to-do', 'morning:' || from_day, id, from_day,
					'mail:' || id || '@' || from_day, now(), now() + interval '3 days',
					now() - random() * interval '10 minutes', 'PENDING'
				from care.task
				""").update();
		database.sql("vacuum analyze").update();
	}

	private static int freePort() throws Exception {
		try (ServerSocket socket = new ServerSocket(0)) {
			return socket.getLocalPort();
		}
	}

	/** Takes everything and does nothing. */
	private static final class Nowhere implements Channel {

		@Override
		public String code() {
			return Wishes.MAIL;
		}

		@Override
		public String words() {
			return "Nowhere";
		}

		@Override
		public Map<PersonId, String> addresses(Collection<Person> people) {
			Map<PersonId, String> addresses = new HashMap<>();
			people.forEach((person) -> person.mailbox().ifPresent((address) -> addresses.put(person.id(), address)));
			return addresses;
		}

		@Override
		public Delivery deliver(Message message) {
			return Delivery.of(Outcome.TAKEN);
		}

	}

}
