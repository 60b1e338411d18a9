package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

class MinimumReadingTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

	private static List<MinimumReading> read(String text, boolean fahrenheit) {
		return MinimumReading.list(text, fahrenheit, TODAY);
	}

	@Test
	void linesAreReadAsPeopleWriteThem() {
		assertThat(read("2026-11-03 -2.5\r\n\n 2026-11-04,1\n2026-11-05; \u22120,5 °C\n2026-11-06\t+3c\n", false))
			.containsExactly(new MinimumReading(LocalDate.of(2026, 11, 3), -2.5),
					new MinimumReading(LocalDate.of(2026, 11, 4), 1),
					new MinimumReading(LocalDate.of(2026, 11, 5), -0.5),
					new MinimumReading(LocalDate.of(2026, 11, 6), 3));
	}

	/** 32 °F is 0 °C, 23 °F is -5 °C by definition; a line's own unit goes before. */
	@Test
	void unitsOfTheListAndOfALine() {
		List<MinimumReading> readings = read("2026-11-03 32\n2026-11-04 23 F\n2026-11-05 -5 C", true);
		assertThat(readings.get(0).celsius()).isEqualTo(0, within(1e-9));
		assertThat(readings.get(1).celsius()).isEqualTo(-5, within(1e-9));
		assertThat(readings.get(2).celsius()).isEqualTo(-5, within(1e-9));
	}

	@Test
	void eachLineThatCantBeUsedIsNamed() {
		assertThatThrownBy(() -> read(
				"2026-11-03 -2\nfrost\n2026-11-31 1\n\n2026-11-27 0\n2026-11-03 4\n" + "2026-11-10 99\n2026-11-11 x",
				false))
			.isInstanceOfSatisfying(BadInput.class,
					(refused) -> assertThat(refused.byField()).containsOnlyKeys("readings")
						.extractingByKey("readings")
						.isEqualTo("line 2: 'frost' is not a date and degrees; "
								+ "line 3: 2026-11-31 is no day of the calendar; line 5: 2026-11-27 is still to come; "
								+ "line 6: 2026-11-03 stands on line 1 already; line 7: 99 °C is outside -60 to 45; "
								+ "and 1 more: write a date and degrees on each line, such as 2026-11-03 -2.5 or "
								+ "2026-11-03 27 F."));
	}

	@Test
	void theListIsBounded() {
		String most = IntStream.range(0, 120)
			.mapToObj((i) -> LocalDate.of(2026, 1, 1).plusDays(i) + " 1")
			.collect(Collectors.joining("\n"));
		assertThat(read(most, false)).hasSize(MinimumReading.MOST);
		assertThatThrownBy(() -> read(most + "\n2025-12-31 1", false)).hasMessage("121 readings are more than 120");
		assertThatThrownBy(() -> read(" \n", false)).hasMessage("no readings are given");
		assertThatThrownBy(() -> read("x".repeat(20_001), false)).hasMessageContaining("20001 characters");
	}

}
