package org.leafward.care.core.review;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.AmountUnit;
import org.leafward.care.core.rule.Work;

import static org.assertj.core.api.Assertions.assertThat;

/** RFC 4180, section 2, and the advice of OWASP on CSV injection. */
class ReviewTableTests {

	/** Quoted by another character here, so that quotes stand as they are. */
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
			""")
	void cellsAreQuotedAndNoneIsAFormula(String text, String cell) {
		assertThat(ReviewTable.cell(text)).isEqualTo(cell);
	}

	@Test
	void linesInACellStayInIt() {
		assertThat(ReviewTable.cell("one\ntwo")).isEqualTo("\"one\ntwo\"");
		assertThat(ReviewTable.cell("\tx")).isEqualTo("'\tx");
		assertThat(ReviewTable.cell("")).isEmpty();
	}

	@Test
	void aLineForEachThingThatWasDone() {
		YearReview.Done done = new YearReview.Done(new UUID(0, 7), LocalDate.of(2026, 7, 4), Work.WATER, "@hedge", true,
				12.50, AmountUnit.MM, "note", null, null, null);
		String table = ReviewTable
			.write(new YearReview(2026, true, List.of(), Tally.of(List.of()), List.of(), List.of(), List.of(),
					List.of(), List.of(new YearReview.MonthDone(Month.JULY, List.of(), List.of(done))), List.of()));
		assertThat(table.split("\r\n", -1)).containsExactly(String.join(",", ReviewTable.COLUMNS),
				"done,00000000-0000-0000-0000-000000000007,,,2026-07-04,water,,,'@hedge,,,,12.5,mm,,note,,", "");
	}

}
