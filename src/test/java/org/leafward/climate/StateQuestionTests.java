package org.leafward.climate;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

class StateQuestionTests {

	@ParameterizedTest
	@CsvSource({ "forecast-min-at-most-34f,1.1,a minimum of 34 °F (1.1 °C) or less ahead",
			"forecast-min-at-most-28f,-2.2,a minimum of 28 °F (−2.2 °C) or less ahead",
			"forecast-min-at-least-minus-2.2c,-2.2,no minimum below −2.2 °C ahead",
			"forecast-min-at-most-minus-4f,-20,a minimum of −4 °F (−20 °C) or less ahead",
			"forecast-max-at-least-85f,29.4,a maximum of 85 °F (29.4 °C) or more ahead",
			"forecast-max-at-most-84f,28.9,no maximum above 84 °F (28.9 °C) ahead",
			"heat-index-at-least-80f,26.7,a heat index of 80 °F (26.7 °C) or more ahead",
			"heat-index-at-most-79f,26.1,no heat index above 79 °F (26.1 °C) ahead",
			"forecast-wind-at-most-10mph,4.4704,no mean wind above 10 mph (4.5 m/s) ahead",
			"forecast-wind-at-most-4.5ms,4.5,no mean wind above 4.5 m/s ahead",
			"dry-ahead-1d,1,a day without rain ahead", "dry-days-21d,21,21 days without rain that counts",
			"new-snow-at-least-3in,76.2,new snow of 3 in (76 mm) or more",
			"new-snow-at-least-75mm,75,new snow of 75 mm or more",
			"rain-week-at-least-0.25in,6.35,rain of 0.25 in (6 mm) or more in the last seven days",
			"ground-frozen,0,frozen ground", "day-max-above-40f,4.4,a maximum above 40 °F (4.4 °C) today",
			"hot-dry-wind,0,hot dry wind", "drought-at-least-d1,1,drought of D1 or worse by a station's rain" })
	void aCodeIsReadAndWrittenAlike(String code, double figure, String words) {
		StateQuestion question = StateQuestion.parse(code);
		assertThat(question.code()).isEqualTo(code);
		assertThat(question.figure()).isCloseTo(figure, within(1e-9));
		assertThat(question.words()).isEqualTo(words);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "rain", "forecast-min-at-most", "forecast-min-at-most-", "forecast-min-at-most-34",
			"forecast-min-at-most-34k", "forecast-min-at-most-200f", "forecast-min-at-most-34.555f", "dry-days-21",
			"dry-days-1.5d", "dry-days-0d", "dry-days-91d", "dry-days-d3", "dry-days-minus-3d", "drought-at-least-1d",
			"drought-at-least-d5", "drought-at-least-d", "hot-dry-wind-3", "hot-dry-wind-d", "new-snow-at-least-3f",
			"FROST", "forecast-min-at-most-34F" })
	void whatCantBeAskedIsRefusedWithAWayOut(String code) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> StateQuestion.parse(code))
			.satisfies((refusal) -> assertThat(refusal.mend()).isNotBlank());
	}

	@Test
	void everyKindIsNamedOnceAndTellsItsUnits() {
		assertThat(Arrays.stream(StateKind.values()).map(StateKind::code)).doesNotHaveDuplicates();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> StateQuestion.parse("new-snow-at-least-3"))
			.satisfies((refusal) -> assertThat(refusal.mend())
				.isEqualTo("write new-snow-at-least-3in or new-snow-at-least-75mm"));
	}

}
