package org.leafward.measure;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class CsvTextTests {

	/** The examples of RFC 4180, section 2, items 1, 2, 5, 6 and 7. */
	/** RFC 4180, section 2, and OWASP ASVS 5.0.0, 1.2.10. */
	@ParameterizedTest
	@CsvSource(quoteCharacter = '~', delimiter = '|', textBlock = """
			plain|plain
			a, b|"a, b"
			say "no"|"say ""no\"""
			=1+1|'=1+1
			+49|'+49
			-x|'-x
			@SUM(A1)|'@SUM(A1)
			=1,2|"'=1,2"
			a=1|a=1
			'tis|''tis
			""")
	void noCellIsAFormulaAndEachIsReadBack(String text, String cell) {
		String table = CsvText.write(List.of(List.of("x", CsvText.safe(text))));
		assertThat(table).isEqualTo("x," + cell + "\r\n");
		assertThat(CsvText.plain(CsvText.read(table, 1).get(0).get(1))).isEqualTo(text);
	}

	@Test
	void examplesOfTheStandard() {
		List<List<String>> two = List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
		assertThat(CsvText.read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", 9)).isEqualTo(two);
		assertThat(CsvText.read("aaa,bbb,ccc\r\nzzz,yyy,xxx", 9)).isEqualTo(two);
		assertThat(CsvText.read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", 9)).isEqualTo(two);
		List<List<String>> broken = List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
		assertThat(CsvText.read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", 9)).isEqualTo(broken);
		assertThat(CsvText.read("\"aaa\",\"b\"\"bb\",\"ccc\"", 9)).containsExactly(List.of("aaa", "b\"bb", "ccc"));
		assertThat(CsvText.write(broken)).isEqualTo("aaa,\"b\r\nbb\",ccc\r\nzzz,yyy,xxx\r\n");
		assertThat(CsvText.write(List.of(List.of("a,b", "c\"d", "")))).isEqualTo("\"a,b\",\"c\"\"d\",\r\n");
	}

	@Test
	void whatIsNoTableIsRefusedAndRowsAreBounded() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> CsvText.read("a,b\r\n\"open,c", 9))
			.satisfies((ex) -> assertThat(ex.where()).isEqualTo("row 2"));
		assertThat(CsvText.read("a\n".repeat(100), 9)).hasSize(10);
		assertThat(CsvText.read("\ufeffa,b", 9)).containsExactly(List.of("a", "b"));
	}

	/** The same examples as people would paste them, read with their lines. */
	@Test
	void typedTextKeepsItsLines() {
		List<CsvText.Row> rows = CsvText.typed("\ufeffaaa, \"b\r\nbb\" ,ccc\r\n\r\nzzz,\"y\"\"yy\",xxx", ',');
		assertThat(rows).extracting(CsvText.Row::line).containsExactly(1, 3, 4);
		assertThat(rows.get(0).cells()).containsExactly("aaa", "b\nbb", "ccc");
		assertThat(rows.get(0).written()).isEqualTo("aaa, \"b\nbb\" ,ccc");
		assertThat(rows.get(1).cells()).containsExactly("");
		assertThat(rows.get(2).cells()).containsExactly("zzz", "y\"yy", "xxx");
		assertThat(rows).noneMatch(CsvText.Row::open);
	}

	@Test
	void aQuoteThatIsNotClosedCostsItsOwnLineOnly() {
		List<CsvText.Row> rows = CsvText.typed("rose, front\n\"boxwood, hedge\nlilac, gate\n\"oak\" tall, 2\n", ',');
		assertThat(rows).extracting(CsvText.Row::line).containsExactly(1, 2, 3, 4, 5);
		assertThat(rows.get(1).cells()).containsExactly("\"boxwood", "hedge");
		assertThat(rows.get(1).open()).isTrue();
		assertThat(rows.get(2).cells()).containsExactly("lilac", "gate");
		assertThat(rows.get(3).cells()).containsExactly("\"oak\" tall", "2");
		assertThat(rows.get(3).open()).isFalse();
	}

	@Test
	void noLineIsLostWhateverIsTyped() {
		Random random = new Random(4180);
		String letters = "ab,;\t\"\"\n\n\r '\u202e\ufffe\u0000\u00a0";
		for (int i = 0; i < 20_000; i++) {
			StringBuilder text = new StringBuilder();
			int length = random.nextInt(60);
			for (int j = 0; j < length; j++) {
				text.append(letters.charAt(random.nextInt(letters.length())));
			}
			char separator = ",;\t".charAt(random.nextInt(3));
			String lines = text.toString().replace("\r\n", "\n").replace('\r', '\n').replace('\ufffe', '\ufffd');
			List<CsvText.Row> rows = CsvText.typed(text.toString(), separator);
			assertThat(String.join("\n", rows.stream().map(CsvText.Row::written).toList())).as(text.toString())
				.isEqualTo(lines);
			int line = 1;
			for (CsvText.Row row : rows) {
				assertThat(row.line()).isEqualTo(line);
				line += row.written().split("\n", -1).length;
			}
		}
	}

}
