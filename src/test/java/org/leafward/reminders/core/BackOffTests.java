package org.leafward.reminders.core;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class BackOffTests {

	private static final Instant NOW = Instant.parse("2026-11-12T06:00:00Z");

	/**
	 * The steps are ours; only their growing is asked for by RFC 5321 section 4.5.4.1.
	 */
	@ParameterizedTest
	@CsvSource({ "1,PT5M", "2,PT15M", "3,PT1H", "4,PT3H", "5,PT6H", "6,PT6H", "500,PT6H" })
	void waitsLongerEachTime(int attempts, Duration step) {
		assertThat(BackOff.delay(attempts, 0.5)).isEqualTo(step);
		assertThat(BackOff.delay(attempts, 0)).isEqualTo(step.multipliedBy(8).dividedBy(10));
		assertThat(BackOff.delay(attempts, Math.nextDown(1.0))).isEqualTo(step.multipliedBy(12).dividedBy(10));
	}

	@Test
	void givesUpWhenTheNextTryWouldBeTooLate() {
		Instant next = NOW.plus(Duration.ofMinutes(5));
		assertThat(BackOff.nextTry(NOW, 1, 0.5, next.plusMillis(1))).contains(next);
		assertThat(BackOff.nextTry(NOW, 1, 0.5, next)).isEmpty();
	}

	@Test
	void refusesWhatIsNoCountOrNoChance() {
		assertThatIllegalArgumentException().isThrownBy(() -> BackOff.delay(0, 0.5));
		assertThatIllegalArgumentException().isThrownBy(() -> BackOff.delay(1, 1));
		assertThatIllegalArgumentException().isThrownBy(() -> BackOff.delay(1, -0.1));
	}

}
