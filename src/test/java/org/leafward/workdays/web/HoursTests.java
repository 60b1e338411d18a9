package org.leafward.workdays.web;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Hours as people write them; what is refused names no identifiers of fields. */
class HoursTests {

	@ParameterizedTest
	@CsvSource({ "2.5, 150", "2:30, 150", "'2,5', 150", " 3 , 180", "0, 0", "24, 1440", "0.01, 1" })
	void readsWhatPeopleWrite(String text, int minutes) {
		assertThat(Hours.minutes("hours-x", text)).isEqualTo(minutes);
	}

	@ParameterizedTest
	@ValueSource(strings = { "two", "2:75", "NaN", "2h30", "0x10" })
	void refusesWhatIsNoNumber(String text) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Hours.minutes("hours-x", text))
			.satisfies((ex) -> assertThat(ex.what()).isEqualTo("'%s' is no number of hours".formatted(text)))
			.satisfies((ex) -> assertThat(ex.mend()).isEqualTo("write it like 2.5 or 2:30"));
	}

	@Test
	void refusesMoreThanADay() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Hours.minutes("hours-x", "24:01"))
			.satisfies((ex) -> assertThat(ex.what()).isEqualTo("24:01 hours are outside 0 to 24"));
	}

}
