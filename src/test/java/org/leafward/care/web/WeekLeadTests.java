package org.leafward.care.web;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class WeekLeadTests {

	/** A Monday. */
	private static final LocalDate TODAY = LocalDate.of(2026, 11, 23);

	private static WeekLead.Next next(LocalDate day) {
		return new WeekLead.Next(day, "Mulch after the ground has frozen", "strawberry bed");
	}

	@Test
	void aWeekWithWorkIsCounted() {
		assertThat(WeekLead.of(3, 2, null, TODAY)).isEqualTo("3 things to do and 2 to leave alone.");
		assertThat(WeekLead.of(1, 0, null, TODAY)).isEqualTo("One thing to do.");
		assertThat(WeekLead.of(2, 1, null, TODAY)).isEqualTo("2 things to do and one to leave alone.");
	}

	@Test
	void anEmptyWeekSaysWhenTheNextThingIsDue() {
		// 23 November and 12 days are 5 December 2026, a Saturday.
		assertThat(WeekLead.of(0, 0, next(LocalDate.of(2026, 12, 5)), TODAY)).isEqualTo(
				"Nothing this week. The next thing is in 12 days, on Sat 5 Dec: Mulch after the ground has frozen, strawberry bed.");
		assertThat(WeekLead.of(0, 2, next(LocalDate.of(2027, 3, 1)), TODAY)).startsWith(
				"Nothing to do this week, and 2 to leave alone. The next thing is in 98 days, on Mon 1 Mar 2027: ");
	}

	@Test
	void anEmptyYearSaysSoAndWhy() {
		assertThat(WeekLead.of(0, 0, null, TODAY))
			.isEqualTo("Nothing this week. Nothing is planned for the year ahead.");
		assertThat(WeekLead.whyNothing(true, false)).startsWith("Nothing is planted at your sites yet.");
		assertThat(WeekLead.whyNothing(true, true)).contains("the page of each site says which and why");
		assertThat(WeekLead.whyNothing(false, false)).as("the page asks for a site instead").isNull();
	}

}
