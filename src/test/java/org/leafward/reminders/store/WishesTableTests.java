package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.accounts.PersonId;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

class WishesTableTests {

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static final PersonId CLEO = new PersonId(TaskFixture.id("cleo"));

	private static final Instant NOW = Instant.parse("2026-11-12T06:00:00Z");

	private static final Wishes OWN = new Wishes(new Speech(Language.SPANISH, Units.US), LocalTime.of(5, 45),
			DayOfWeek.FRIDAY, new QuietHours(LocalTime.of(21, 30), LocalTime.of(5, 15)), false,
			LocalDate.of(2027, 2, 28), Map.of("mail", Map.of(Topic.TO_DO, new Wish(Manner.SINGLE, 14)), "push",
					Map.of(Topic.LOOK_FOR, new Wish(Manner.MORNING, 0), Topic.TONIGHT, Wish.of(Manner.OFF))),
			Map.of());

	private static HikariDataSource source;

	private JdbcClient database;

	private WishesTable table;

	@BeforeAll
	static void aDatabase() {
		source = TestDatabase.fresh();
	}

	@BeforeEach
	void empty() {
		this.database = JdbcClient.create(source);
		this.database.sql("truncate reminders.wishes, reminders.wish, reminders.stopped").update();
		this.table = new WishesTable(this.database);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@Test
	void whoNeverChoseIsToldAsUsual() {
		assertThat(this.table.of(ADA)).isEqualTo(Wishes.USUAL);
		assertThat(this.table.of(List.of(ADA, BEN))).isEqualTo(Map.of(ADA, Wishes.USUAL, BEN, Wishes.USUAL));
		assertThat(this.table.of(List.of())).isEmpty();
	}

	@Test
	void givesBackAllThatWasChosen() {
		this.table.save(ADA, OWN);
		assertThat(this.table.of(ADA)).isEqualTo(OWN);
	}

	@Test
	void aLaterChoiceTakesThePlaceOfAnEarlierOne() {
		this.table.save(ADA, OWN);
		this.table.save(ADA, Wishes.USUAL);
		assertThat(this.table.of(ADA)).isEqualTo(Wishes.USUAL);
		assertThat(rows("wish")).isZero();
	}

	@Test
	void keepsPeopleApart() {
		this.table.save(ADA, OWN);
		this.table.stop(BEN, "mail", Series.OUTLOOK, NOW);
		Map<PersonId, Wishes> all = this.table.of(List.of(CLEO, BEN, ADA, ADA));
		assertThat(all.keySet()).containsExactly(CLEO, BEN, ADA);
		assertThat(all).containsEntry(ADA, OWN).containsEntry(CLEO, Wishes.USUAL);
		assertThat(all.get(BEN).stopped()).isEqualTo(Map.of("mail", Set.of(Series.OUTLOOK)));
		assertThat(all.get(BEN).morning()).isEqualTo(Wishes.USUAL.morning());
	}

	static Stream<Arguments> everyChoice() {
		return Stream.of("mail", "push", "webhook")
			.flatMap((channel) -> Arrays.stream(Topic.values())
				.flatMap((topic) -> topic.manners()
					.stream()
					.flatMap((manner) -> Stream.of(0, 1, 14)
						.map((days) -> Arguments.of(channel, topic, manner, days)))));
	}

	@ParameterizedTest
	@MethodSource("everyChoice")
	void keepsEachChoiceAndOnlyWhatDiffersFromTheUsual(String channel, Topic topic, Manner manner, int days) {
		Wish wish = new Wish(manner, days);
		this.table.save(ADA, choosing(Map.of(channel, Map.of(topic, wish))));
		assertThat(this.table.of(ADA).of(channel, topic)).isEqualTo(wish);
		assertThat(rows("wish")).isEqualTo(wish.equals(Wishes.usual(channel, topic)) ? 0 : 1);
	}

	private static Wishes choosing(Map<String, Map<Topic, Wish>> chosen) {
		return new Wishes(Wishes.USUAL.speech(), Wishes.USUAL.morning(), Wishes.USUAL.outlookDay(),
				Wishes.USUAL.quiet(), true, null, chosen, Map.of());
	}

	@ParameterizedTest
	@EnumSource(Series.class)
	void aSeriesIsLeftAndComesBack(Series series) {
		assertThat(this.table.stop(ADA, "mail", series, NOW)).isTrue();
		assertThat(this.table.stop(ADA, "mail", series, NOW.plusSeconds(60))).isFalse();
		Wishes left = this.table.of(ADA);
		for (Series one : Series.values()) {
			assertThat(left.stopped("mail", one)).isEqualTo(one == series);
			assertThat(left.stopped("push", one)).isFalse();
		}
		assertThat(this.database.sql("select since from reminders.stopped").query(Instant.class).single())
			.isEqualTo(NOW);
		assertThat(this.table.resume(ADA, "push", series)).isFalse();
		assertThat(this.table.resume(BEN, "mail", series)).isFalse();
		assertThat(this.table.resume(ADA, "mail", series)).isTrue();
		assertThat(this.table.resume(ADA, "mail", series)).isFalse();
		assertThat(this.table.of(ADA)).isEqualTo(Wishes.USUAL);
	}

	@Test
	void choosingBringsNoSeriesBack() {
		this.table.stop(ADA, "mail", Series.OUTLOOK, NOW);
		this.table.save(ADA, OWN);
		assertThat(this.table.of(ADA).stopped()).isEqualTo(Map.of("mail", Set.of(Series.OUTLOOK)));
	}

	@Test
	void aPauseEnds() {
		assertThat(this.table.endPause(ADA)).isFalse();
		this.table.save(ADA, OWN);
		this.table.save(BEN, OWN);
		assertThat(this.table.endPause(ADA)).isTrue();
		assertThat(this.table.endPause(ADA)).isFalse();
		assertThat(this.table.of(ADA).pausedUntil()).isNull();
		assertThat(this.table.of(ADA).chosen()).isEqualTo(OWN.chosen());
		assertThat(this.table.of(BEN)).isEqualTo(OWN);
	}

	@Test
	void ofTwoAtOnceOneIsKeptWhole() throws Exception {
		TransactionTemplate transactions = new TransactionTemplate(new DataSourceTransactionManager(source));
		Wishes other = choosing(Map.of("mail", Map.of(Topic.TO_DO, new Wish(Manner.WEEKLY, 3))));
		ExecutorService threads = Executors.newFixedThreadPool(4);
		try {
			List<Future<?>> all = new ArrayList<>();
			for (int i = 0; i < 40; i++) {
				Wishes one = (i % 2 == 0) ? OWN : other;
				all.add(threads.submit(() -> transactions.executeWithoutResult((status) -> this.table.save(ADA, one))));
			}
			for (Future<?> one : all) {
				one.get();
			}
		}
		finally {
			threads.shutdownNow();
		}
		assertThat(this.table.of(ADA)).isIn(OWN, other);
	}

	@Test
	void readsHundredsAtOnce() {
		Map<PersonId, Wishes> expected = new HashMap<>();
		for (int i = 0; i < 300; i++) {
			PersonId person = new PersonId(TaskFixture.id("person " + i));
			Wishes wishes = (i % 3 == 0) ? OWN : Wishes.USUAL;
			expected.put(person, wishes);
			if (i % 3 == 0) {
				this.table.save(person, wishes);
			}
		}
		assertThat(this.table.of(expected.keySet())).isEqualTo(expected);
	}

	private long rows(String table) {
		return this.database.sql("select count(*) from reminders." + table).query(Long.class).single();
	}

}
