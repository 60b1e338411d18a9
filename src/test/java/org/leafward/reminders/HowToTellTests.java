package org.leafward.reminders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.Person;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.store.SuppressionTable;
import org.leafward.reminders.store.WishesTable;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

class HowToTellTests {

	private static final Instant NOW = Instant.parse("2026-11-12T06:00:00Z");

	private final Materialiser materialiser = mock();

	private HikariDataSource source;

	private SuppressionTable suppressions;

	private HowToTell howToTell;

	@BeforeEach
	void freshDatabase() {
		this.source = TestDatabase.fresh();
		JdbcClient database = JdbcClient.create(this.source);
		Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
		this.suppressions = new SuppressionTable(database, clock);
		this.howToTell = new HowToTell(new WishesTable(database), this.suppressions, this.materialiser,
				new TransactionTemplate(new DataSourceTransactionManager(this.source)), clock);
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	private static Wishes away(Map<String, Set<Series>> stopped) {
		return new Wishes(Wishes.USUAL.speech(), Wishes.USUAL.morning(), Wishes.USUAL.outlookDay(),
				Wishes.USUAL.quiet(), true, LocalDate.of(2026, 12, 1), Map.of(), stopped);
	}

	/** Whoever makes the reminders sees the wishes as they are now. */
	@Test
	void remindersAreMadeAnewFromTheNewWishes() {
		List<Wishes> seen = new ArrayList<>();
		doAnswer((call) -> seen.add(this.howToTell.of(ADA))).when(this.materialiser).person(ADA);
		this.howToTell.save(ADA, away(Map.of()));
		this.howToTell.endPause(ADA);
		this.howToTell.stop(ADA, "mail", Series.MORNING);
		this.howToTell.resume(ADA, "mail", Series.MORNING);
		assertThat(seen).extracting(Wishes::pausedUntil).containsExactly(LocalDate.of(2026, 12, 1), null, null, null);
		assertThat(seen).extracting((one) -> one.stopped("mail", Series.MORNING))
			.containsExactly(false, false, true, false);
		verify(this.materialiser, times(4)).person(ADA);
	}

	@Test
	void whenRemindersCantBeMadeNothingHasChanged() {
		doThrow(new IllegalStateException("no plan")).when(this.materialiser).person(any());
		assertThatIllegalStateException().isThrownBy(() -> this.howToTell.save(ADA, away(Map.of())));
		assertThatIllegalStateException().isThrownBy(() -> this.howToTell.stop(ADA, "mail", Series.OUTLOOK));
		assertThat(this.howToTell.of(ADA)).isEqualTo(Wishes.USUAL);
	}

	@Test
	void savingBringsNoSeriesBackAndSavingAllDoes() {
		this.howToTell.stop(ADA, "mail", Series.OUTLOOK);
		this.howToTell.stop(ADA, "push", Series.SINGLE);
		this.howToTell.save(ADA, away(Map.of()));
		assertThat(this.howToTell.of(ADA).stopped())
			.isEqualTo(Map.of("mail", Set.of(Series.OUTLOOK), "push", Set.of(Series.SINGLE)));
		Wishes all = away(Map.of("mail", Set.of(Series.OUTLOOK, Series.TONIGHT), "webhook", Set.of(Series.MORNING)));
		this.howToTell.saveAll(ADA, all);
		assertThat(this.howToTell.of(ADA)).isEqualTo(all);
	}

	@Test
	void anAddressAtWhichNobodyWasIsTriedAgainWhenItsOwnerSaysSo() {
		Person ada = new Person(ADA, "Ada", "Ada@Example.org", ZoneOffset.UTC);
		assertThat(this.howToTell.silence(ada)).isEmpty();
		this.suppressions.suppress("ada@example.org", "550 5.1.1 no such mailbox");
		assertThat(this.howToTell.silence(ada))
			.contains(new Suppressed("ada@example.org", "550 5.1.1 no such mailbox", NOW));
		assertThat(this.howToTell.silence(new Person(ADA, "Ada", "ada@example.com", ZoneOffset.UTC))).isEmpty();
		assertThat(this.howToTell.silence(new Person(ADA, "Ada", null, ZoneOffset.UTC, false))).isEmpty();
		this.howToTell.mailAgain(ada);
		assertThat(this.howToTell.silence(ada)).isEmpty();
		verify(this.materialiser).person(ADA);
	}

}
