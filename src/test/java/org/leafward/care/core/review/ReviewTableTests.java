package org.leafward.care.core.review;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.care.AmountUnit;
import org.leafward.care.core.rule.Work;

import static org.assertj.core.api.Assertions.assertThat;

class ReviewTableTests {

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
