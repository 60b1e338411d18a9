package org.leafward.register.core.list;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class ListFileTests {

	private static final String TEXT = "planta;cantidad\nniño \u2013 jazmín;3\n";

	@Test
	void textIsReadInTheWaysSpreadsheetsSaveIt() {
		assertThat(ListFile.text(TEXT.getBytes(StandardCharsets.UTF_8))).isEqualTo(TEXT);
		assertThat(ListFile.text(("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_8))).isEqualTo(TEXT);
		assertThat(ListFile.text(("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_16LE))).isEqualTo(TEXT);
		assertThat(ListFile.text(("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_16BE))).isEqualTo(TEXT);
	}

	/**
	 * Octets by the table of windows-1252 that IANA registers: 96 is an en dash, f1 an ñ.
	 */
	@Test
	void invalidUtf8IsWindows1252() {
		byte[] content = TEXT.getBytes(Charset.forName("windows-1252"));
		assertThat(content).contains(0x96, 0xf1);
		assertThat(ListFile.text(content)).isEqualTo(TEXT);
	}

	@Test
	void whatIsNoTextIsRefusedWithAWayOut() {
		refused(new byte[] { 'P', 'K', 3, 4, 20 }, "save it from your spreadsheet as CSV");
		refused(new byte[] { (byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 0 }, "save it from your spreadsheet as CSV");
		refused("%PDF-1.7".getBytes(StandardCharsets.US_ASCII), "save it from your spreadsheet as CSV");
		refused("a\0b".getBytes(StandardCharsets.US_ASCII), "save it from your spreadsheet as CSV");
		refused(new byte[] { 'a', (byte) 0x81 }, "save it as CSV in UTF-8");
		refused(new byte[ListFile.MOST + 1], "at most 250,000 bytes");
	}

	@Test
	void anyOctetsAreTextOrRefused() {
		Random random = new Random(1252);
		for (int i = 0; i < 5000; i++) {
			byte[] content = new byte[random.nextInt(40)];
			random.nextBytes(content);
			try {
				assertThat(ListFile.text(content)).doesNotContain("\0");
			}
			catch (BadInput ex) {
				assertThat(ex.where()).isEqualTo("file");
			}
		}
	}

	private static void refused(byte[] content, String mend) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> ListFile.text(content))
			.satisfies((ex) -> assertThat(ex.mend()).contains(mend));
	}

}
