package org.leafward.climate.core;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class FetchBackOffTests {

	/** The steps are ours (common practice): a half draws the step itself. */
	@ParameterizedTest
	@CsvSource({ "1, PT5M", "2, PT15M", "3, PT1H", "4, PT3H", "5, PT6H", "6, PT12H", "7, PT24H", "8, PT24H",
			"1000000, PT24H" })
	void waitsLongerEachTime(int failures, Duration wait) {
		assertThat(FetchBackOff.delay(failures, 0.5, null)).isEqualTo(wait);
	}

	@Test
	void spreadsByAFifth() {
		assertThat(FetchBackOff.delay(1, 0, null)).isEqualTo(Duration.ofMinutes(4));
		Random random = new Random(20261125);
		for (int draw = 0; draw < 1000; draw++) {
			assertThat(FetchBackOff.delay(3, random.nextDouble(), null)).isBetween(Duration.ofMinutes(48),
					Duration.ofMinutes(72));
		}
	}

	@Test
	void waitsAsLongAsAskedButNoLongerThanADay() {
		assertThat(FetchBackOff.delay(1, 0.5, Duration.ofHours(2))).isEqualTo(Duration.ofHours(2));
		assertThat(FetchBackOff.delay(3, 0.5, Duration.ofMinutes(2))).isEqualTo(Duration.ofHours(1));
		assertThat(FetchBackOff.delay(1, 0.5, Duration.ofDays(400))).isEqualTo(Duration.ofHours(24));
	}

	@Test
	void refusesWhatMakesNoSense() {
		assertThatIllegalArgumentException().isThrownBy(() -> FetchBackOff.delay(0, 0.5, null));
		assertThatIllegalArgumentException().isThrownBy(() -> FetchBackOff.delay(1, 1, null));
	}

}
