package org.leafward.measure;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Explicit directional formatting characters: Unicode Standard Annex #9, section 2. */
class GivenTests {

	@ParameterizedTest
	@ValueSource(strings = { "a\u0000b", "a\r\nb", "\u0007", "a\u0085b", "a\u2028b", "a\u2029b", "\ud800", "a\udc00",
			"\u202eabc", "\u2066abc" })
	void aLineIsTextThatStaysOnItsLine(String text) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Given.line("name", text))
			.satisfies((ex) -> assertThat(ex.where()).isEqualTo("name"));
	}

	@Test
	void writingOfAllPeoplesIsALine() {
		for (String text : new String[] { "\u05d2\u05df", "\u062d\u062f\u064a\u0642\u0629", "\ud83c\udf31 bed",
				"\ud83d\udc69\u200d\ud83c\udf3e", "<b>x</b>" }) {
			assertThat(Given.line("name", text)).isEqualTo(text);
		}
	}

}
