package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.reminders.Suppressed;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

class SuppressionTableTests {

	private static final Instant NOW = Instant.parse("2026-11-12T06:00:00Z");

	private final SettableClock clock = new SettableClock(NOW);

	private HikariDataSource source;

	private SuppressionTable table;

	@BeforeEach
	void open() {
		this.source = TestDatabase.fresh();
		this.table = new SuppressionTable(JdbcClient.create(this.source), this.clock);
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	@Test
	void findsAddressesHoweverTheyAreWritten() {
		assertThat(this.table.suppress("Ada@Example.org", "550 5.1.1 gone")).isTrue();
		assertThat(this.table.suppress("ÄRZTIN@example.org", "550 5.1.1 gone")).isTrue();
		assertThat(this.table.find(List.of("ada@example.ORG", "ben@example.org", "ärztin@example.org", "a'b@c.org")))
			.containsExactlyInAnyOrder("ada@example.ORG", "ärztin@example.org");
		assertThat(this.table.find(List.of())).isEmpty();
	}

	@Test
	void keepsWhatWasSaidFirst() {
		this.table.suppress("ada@example.org", "550 5.1.1 gone");
		this.clock.advance(Duration.ofDays(1));
		assertThat(this.table.suppress("ADA@example.org", "later")).isFalse();
		assertThat(this.table.list(0, 10)).containsExactly(new Suppressed("ada@example.org", "550 5.1.1 gone", NOW));
	}

	@Test
	void isReadPageByPage() {
		IntStream.range(0, 5).forEach((number) -> {
			this.table.suppress("a%d@example.org".formatted(number), "gone");
			this.clock.advance(Duration.ofMinutes(1));
		});
		assertThat(this.table.list(1, 2)).extracting(Suppressed::address)
			.containsExactly("a3@example.org", "a2@example.org");
		assertThat(this.table.list(4, 2)).hasSize(1);
		assertThat(this.table.list(5, 2)).isEmpty();
	}

	@Test
	void isLifted() {
		this.table.suppress("ada@example.org", "gone");
		assertThat(this.table.lift("Ada@example.org")).isTrue();
		assertThat(this.table.lift("ada@example.org")).isFalse();
		assertThat(this.table.find(List.of("ada@example.org"))).isEmpty();
	}

}
