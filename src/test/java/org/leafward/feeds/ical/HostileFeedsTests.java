package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.feeds.core.CareTaskFixture;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.Engines.Sight;
import org.leafward.feeds.ical.FeedReading.Seen;
import org.leafward.feeds.ical.FeedReading.SeenTodo;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

/**
 * Ten thousand registers whose people write whatever breaks calendars, made into
 * calendars the whole way, and what readers get back. Every register is made from its
 * number, so that a failure can be made again.
 */
class HostileFeedsTests {

	private static final int REGISTERS = 10_000;

	/** Documents for one process. */
	private static final int BATCH = 500;

	private static final LocalDate DAY = LocalDate.of(2026, 3, 10);

	private static final Instant NOW = Instant.parse("2026-03-10T12:00:00Z");

	private static final Phrasebooks BOOKS = SpokenPacks.books(ConfiguredPacks.read());

	private static List<Made> all;

	@BeforeAll
	static void make() {
		all = IntStream.range(0, REGISTERS).parallel().mapToObj(Made::of).toList();
	}

	@AfterAll
	static void forget() {
		all = null;
	}

	/**
	 * The calendar of a register.
	 *
	 * @param number its number
	 * @param form as entries or to-dos
	 * @param alarm whether with alarms
	 * @param entries what was put in
	 * @param octets what came out
	 */
	private record Made(int number, Component form, boolean alarm, List<FeedEntry> entries, byte[] octets) {

		/** Half of them have no backslash, for readers that stumble over it. */
		static Made of(int number) {
			Random random = new Random(number);
			boolean backslash = number % 2 == 0;
			Component form = (number % 4 < 2) ? Component.EVENT : Component.TODO;
			boolean alarm = random.nextInt(4) == 0;
			Units units = Units.values()[random.nextInt(3)];
			List<CareTask> tasks = IntStream.rangeClosed(0, random.nextInt(3))
				.mapToObj((i) -> task(i, random, backslash))
				.toList();
			List<FeedEntry> entries = new TaskEntries(BOOKS.of((number % 3 == 0) ? Language.SPANISH : Language.ENGLISH),
					units, CareTaskFixture.BASE)
				.of(tasks, new FeedWindow(DAY, 180, 400));
			Head head = new Head(hostile(random, 20, backslash), hostile(random, 60, backslash), "en");
			return new Made(number, form, alarm, entries,
					new CalendarWriter()
						.write(head, entries, form, alarm ? LocalTime.of(7, 0) : null, Before.nothing(NOW))
						.octets());
		}

		private static CareTask task(int number, Random random, boolean backslash) {
			int long_ = (random.nextInt(50) == 0) ? 10_000 : 80;
			TaskText text = new TaskText(hostile(random, 1 + random.nextInt(90), backslash),
					hostile(random, random.nextInt(long_), backslash),
					random.nextBoolean() ? hostile(random, 20, backslash) : null,
					hostile(random, random.nextInt(long_), backslash), null,
					random.nextBoolean() ? hostile(random, 40, backslash) : null);
			TaskState state = TaskState.values()[random.nextInt(TaskState.values().length)];
			LocalDate from = DAY.plusDays(random.nextInt(300) - 100);
			return aTask().numbered(number)
				.of(TaskKind.values()[random.nextInt(TaskKind.values().length)])
				.saying(text)
				.forPlant(hostile(random, random.nextInt(60), backslash)
						+ (random.nextBoolean() ? " (common boxwood)" : ""))
				.at(hostile(random, random.nextInt(long_), backslash))
				.on(from.toString(), from.plusDays(random.nextInt(3) * random.nextInt(40)).toString())
				.withdrawn(hostile(random, random.nextInt(90), backslash), NOW.minusSeconds(random.nextInt(1_000_000)))
				.in(state,
						(state == TaskState.PLANNED || random.nextBoolean()) ? null
								: hostile(random, random.nextInt(90), backslash))
				.build();
		}

		private static String hostile(Random random, int least, boolean backslash) {
			String text = HostileText.some(random, least);
			return backslash ? text : text.replace('\\', '/');
		}

		List<Sight> sights() {
			return this.entries.stream()
				.map((entry) -> Sight.of(entry, this.form, this.alarm))
				.sorted(Comparator.comparing(Sight::uid))
				.toList();
		}

	}

	@Test
	void biweeklyReadsBackWhatWasPutIn() {
		all.parallelStream().forEach((made) -> {
			assertThat(IcsLinter.problems(made.octets())).as("register %d", made.number()).isEmpty();
			for (FeedEntry entry : made.entries()) {
				// Nothing is left to clean, so that what was put in is what is compared.
				assertThat(PlainText.line(entry.summary())).as("register %d", made.number()).isEqualTo(entry.summary());
				assertThat(PlainText.clean(entry.description())).as("register %d", made.number())
					.isEqualTo(entry.description());
			}
			if (made.form() == Component.EVENT) {
				assertThat(FeedReading.read(made.octets())).as("register %d", made.number())
					.isEqualTo(made.entries().stream().map(Seen::of).toList());
			}
			else {
				assertThat(FeedReading.readTodos(made.octets())).as("register %d", made.number())
					.isEqualTo(made.entries().stream().map(SeenTodo::of).toList());
			}
		});
	}

	/** Otherwise the other tests would say little. */
	@Test
	void registersAreAsHostileAsTheyShouldBe() {
		List<Made> some = all.subList(0, 500);
		String together = some.stream()
			.map((made) -> new String(made.octets(), StandardCharsets.UTF_8))
			.collect(Collectors.joining())
			.replace("\r\n ", "");
		assertThat(together).contains("\\\\n", "\\\\\\,", "\uD83D\uDC68\u200D\uD83C\uDF3E", "\u202Eevil", "\uFFFF",
				"Por qué esta fecha", "Why this date", "STATUS:COMPLETED", "STATUS:NEEDS-ACTION", "STATUS:CANCELLED",
				"BEGIN:VALARM", "END:VEVENT\\n");
		assertThat(some).anyMatch((made) -> made.octets().length > 4_000);
	}

	@ParameterizedTest
	@EnumSource
	void enginesReadBackWhatWasPutIn(Engines engines) {
		engines.needed();
		List<String> exact = Engines.names(engines).stream().filter(Engines.EXACT::contains).toList();
		IntStream.range(0, REGISTERS / BATCH).parallel().forEach((batch) -> {
			List<Made> made = all.subList(batch * BATCH, (batch + 1) * BATCH);
			read(engines, exact, made.stream().filter((one) -> one.number() % 2 == 0).toList());
			read(engines, Engines.names(engines), made.stream().filter((one) -> one.number() % 2 == 1).toList());
		});
	}

	private static void read(Engines engines, List<String> names, List<Made> made) {
		List<List<List<Sight>>> seen = engines.see(made.stream().map(Made::octets).toList(), names);
		for (int engine = 0; engine < names.size(); engine++) {
			for (int i = 0; i < made.size(); i++) {
				Made one = made.get(i);
				boolean none = names.get(engine).equals("khal") && one.form() == Component.TODO;
				assertThat(seen.get(engine).get(i).stream().sorted(Comparator.comparing(Sight::uid)).toList())
					.as("%s, register %d", names.get(engine), one.number())
					.isEqualTo(none ? List.of() : one.sights());
			}
		}
	}

}
