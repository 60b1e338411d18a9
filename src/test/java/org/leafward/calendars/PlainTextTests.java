package org.leafward.calendars;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class PlainTextTests {

	@Test
	void turnsEverySeparatorIntoALineFeed() {
		assertThat(PlainText.clean("a\r\nb\rc\nd\u000Be\u000Cf\u0085g\u2028h\u2029i"))
			.isEqualTo("a\nb\nc\nd\ne\nf\ng\nh\ni");
	}

	@Test
	void dropsControlsMarksAndLoneSurrogates() {
		assertThat(PlainText.clean("a\u0000b\u001Bc\u007Fd\u009Fe\uFEFFf\uD83Cg\uDF31h")).isEqualTo("abcdefgh");
		assertThat(PlainText.clean("\uD83C\uDF31")).isEqualTo("\uD83C\uDF31");
	}

	/** UAX #15, figure 3: A and a combining ring above compose to U+00C5. */
	@Test
	void composes() {
		assertThat(PlainText.clean("A\u030A")).isEqualTo("\u00C5");
	}

	/** By the normaliser of the platform, whose tables are Unicode's. */
	@Test
	void whatComesOutIsComposedAndWithoutControlsWhateverGoesIn() {
		for (int point = 0; point <= 0x2FFFF; point++) {
			String clean = PlainText.clean("a" + Character.toString(point) + "e");
			assertThat(Normalizer.isNormalized(clean, Normalizer.Form.NFC)).as("U+%04X", point).isTrue();
			assertThat(clean.chars().anyMatch((unit) -> unit != '\n' && Character.isISOControl(unit)))
				.as("U+%04X", point)
				.isFalse();
			assertThat(clean).as("U+%04X", point).doesNotContain("\u2028", "\u2029", "\uFEFF");
		}
	}

	@Test
	void leavesSingleSpacesAloneAndNoOthers() {
		assertThat(PlainText.line("hedge by the gate")).isEqualTo("hedge by the gate");
		assertThat(PlainText.line("hedge  by")).isEqualTo("hedge by");
		assertThat(PlainText.line("hedge ")).isEqualTo("hedge");
		assertThat(PlainText.line(" ")).isEmpty();
		assertThat(PlainText.line("")).isEmpty();
	}

	@Test
	void putsTextOnOneLine() {
		assertThat(PlainText.line(" hedge\u2028by\t the\r\n\r\ngate ")).isEqualTo("hedge by the gate");
	}

	@Test
	void neverCutsInsideACharacter() {
		assertThat(PlainText.cut("seedling", 8)).isEqualTo("seedling");
		assertThat(PlainText.cut("seedlings", 8)).isEqualTo("seedlin…");
		assertThat(PlainText.cut("ab\uD83C\uDF31cd", 4)).isEqualTo("ab\uD83C\uDF31…");
		// e and a combining dot below and acute stay together.
		assertThat(PlainText.cut("abe\u0323\u0301cd", 5)).isEqualTo("ab…");
		assertThat(PlainText.cutOctets("üüüü", 7)).isEqualTo("üü…");
		assertThat(PlainText.cutOctets("üüü", 6)).isEqualTo("üüü");
	}

}
