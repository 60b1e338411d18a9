package org.leafward.pages;

import java.time.LocalDate;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.leafward.measure.DayWindow;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Weekdays are those of the printed calendar (12 November 2026 is a Thursday). Fixed
 * points of temperature: NIST SP 811, B.8 (0 °C is 32 °F, 100 °C is 212 °F, -40 is the
 * same in both). Height: Denver's mile, 1609.344 m, is 5280 ft (NIST SP 811, B.8).
 */
class FormatsTests {

	private final Formats formats = new Formats(2026);

	@ParameterizedTest
	@CsvSource({ "2026-11-12, Thu 12 Nov", "2026-09-01, Tue 1 Sep", "2027-01-03, Sun 3 Jan 2027" })
	void daysAreWrittenOut(LocalDate date, String words) {
		assertThat(this.formats.day(date)).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "2026-11-12, 2026-12-03, 12 Nov – 3 Dec", "2026-11-12, 2027-01-03, 12 Nov – 3 Jan 2027",
			"2025-11-12, 2026-01-03, 12 Nov 2025 – 3 Jan", "2027-03-01, 2027-04-02, 1 Mar – 2 Apr 2027",
			"2024-11-12, 2025-01-03, 12 Nov 2024 – 3 Jan 2025", "2026-11-12, 2026-11-12, Thu 12 Nov" })
	void windowsNameTheYearWhereItIsAnother(LocalDate from, LocalDate to, String words) {
		assertThat(this.formats.window(from, to)).isEqualTo(words);
		assertThat(this.formats.window(new DayWindow(from, to))).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "0, 0 °C (32 °F)", "100, 100 °C (212 °F)", "-40, −40 °C (−40 °F)", "-2.2, −2.2 °C (28 °F)",
			"-0.04, 0 °C (31.9 °F)" })
	void temperaturesStandInBothUnits(double celsius, String words) {
		assertThat(this.formats.temperature(celsius)).isEqualTo(words);
	}

	@Test
	void figuresKeepNoIdleZeros() {
		assertThat(this.formats.height(1609.344)).isEqualTo("1,609 m (5,280 ft)");
		assertThat(this.formats.position(44.975, -93.25)).isEqualTo("44.98° N, 93.25° W");
		assertThat(this.formats.position(-33.9, 151.2)).isEqualTo("33.9° S, 151.2° E");
		assertThat(this.formats.number(1234.50, 2)).isEqualTo("1,234.5");
		assertThat(this.formats.number(100, 2)).isEqualTo("100");
		assertThat(this.formats.count(1, "task", "tasks")).isEqualTo("1 task");
		assertThat(this.formats.count(0, "task", "tasks")).isEqualTo("0 tasks");
	}

	@Test
	void wordsDoNotDependOnTheServersLanguage() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
			assertThat(this.formats.window(LocalDate.of(2026, 11, 12), LocalDate.of(2026, 12, 3)))
				.isEqualTo("12 Nov – 3 Dec");
			assertThat(this.formats.temperature(-2.2)).isEqualTo("−2.2 °C (28 °F)");
		}
		finally {
			Locale.setDefault(before);
		}
	}

}
