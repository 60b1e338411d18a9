package org.leafward.amounts.water;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Against the plan of University of Minnesota Extension, in the head of its table. */
class NewTreePlanTests {

	private static final double INCH = 25.4;

	private static final LocalDate PLANTED = LocalDate.of(2027, 5, 3);

	@Test
	void theWeeksAndTheYearsAreThoseOfMinnesota() {
		List<String[]> rows = SharedData.table("water/tree-watering.csv");
		assertThat(rows).isNotEmpty().allSatisfy((row) -> {
			NewTreePlan plan = NewTreePlan.of(Double.parseDouble(row[0]) * INCH, PLANTED, 1, null);
			assertThat(plan.stages()).extracting(NewTreePlan.Stage::often)
				.containsExactly("daily", "every two to three days", "once a week");
			assertThat(plan.stages()).extracting(NewTreePlan.Stage::fromWeek).containsExactly(1, 3, 13);
			assertThat(plan.stages().get(0).toWeek()).isEqualTo(2);
			assertThat(plan.stages().get(1).toWeek()).isEqualTo(12);
			LocalDate end = plan.stages().get(2).to();
			assertThat(ChronoUnit.DAYS.between(PLANTED, end) / 365.25).isCloseTo(Double.parseDouble(row[1]),
					within(0.01));
			assertThat(plan.each().lowLitres() / 3.785411784).isCloseTo(Double.parseDouble(row[2]), within(1e-9));
		});
	}

	@Test
	void theDaysFollowTheRhythm() {
		NewTreePlan plan = NewTreePlan.of(2 * INCH, PLANTED, 1, null);
		assertThat(plan.weeks()).hasSize(26);
		assertThat(plan.weeks().subList(0, 2)).allSatisfy((week) -> assertThat(week.days()).hasSize(7));
		assertThat(plan.weeks().subList(2, 11)).allSatisfy((week) -> assertThat(week.days()).hasSizeBetween(2, 4));
		assertThat(plan.weeks().subList(13, 26)).allSatisfy((week) -> assertThat(week.days()).hasSize(1));
		List<LocalDate> days = plan.weeks().stream().flatMap((week) -> week.days().stream()).toList();
		assertThat(days.get(0)).isEqualTo(PLANTED);
		List<Long> gaps = IntStream.range(1, days.size())
			.mapToObj((i) -> ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)))
			.toList();
		assertThat(gaps.subList(0, 13)).containsOnly(1L);
		assertThat(gaps).contains(2L, 3L, 7L).doesNotContain(0L, 4L, 5L, 6L);
		assertThat(
				days.stream().filter((day) -> day.isAfter(PLANTED.plusDays(13)) && day.isBefore(PLANTED.plusDays(84))))
			.as("70 days, every 2 or 3")
			.hasSizeBetween(24, 35);
	}

	@Test
	void saysHowMuchHowLongAndUntilWhen() {
		assertThat(NewTreePlan.of(2 * INCH, PLANTED, 1, 3.785411784).amount().words()).isEqualTo(
				"About 7.6 to 11 litres (2 to 3 gal), 2 to 3 minutes of the hose for each watering: daily for two "
						+ "weeks, every two to three days to week 12, then once a week until Thu 2 May 2030.");
		NewTreePlan undated = NewTreePlan.of(2 * INCH, null, 5, null);
		assertThat(undated.amount().words()).contains("a tree for each watering", "for about 3 years in all");
		assertThat(undated.weeks()).isEmpty();
		assertThat(undated.stages().get(0).from()).isNull();
		assertThat(undated.amount().explanation().toString()).contains("University of Minnesota Extension",
				"frozen ground");
	}

	@Test
	void theThinnestTrunkStillHasAllThreeParts() {
		NewTreePlan plan = NewTreePlan.of(5, PLANTED, 1, null);
		assertThat(plan.stages().get(2).toWeek()).isEqualTo(16);
		assertThat(plan.weeks()).hasSize(16);
	}

	@Test
	void refusesWhatCantBe() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> NewTreePlan.of(4, PLANTED, 1, null))
			.matches((ex) -> ex.where().equals("calliper"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> NewTreePlan.of(50, PLANTED, 0, null))
			.matches((ex) -> ex.where().equals("count"));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> NewTreePlan.of(50, LocalDate.of(1899, 1, 1), 1, null))
			.matches((ex) -> ex.where().equals("planted"));
	}

}
