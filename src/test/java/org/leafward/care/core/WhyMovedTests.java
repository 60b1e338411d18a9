package org.leafward.care.core;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.measure.Explanation;

import static org.assertj.core.api.Assertions.assertThat;

/** Steps of the shapes that {@code care.core.plan} writes, made by hand. */
class WhyMovedTests {

	private static Explanation task(int version, Explanation... steps) {
		List<Explanation> all = new ArrayList<>();
		all.add(Explanation.of("Rule", "trees/plant").withDetail("Trees, version %d. Anywhere.".formatted(version)));
		all.addAll(List.of(steps));
		all.add(Explanation.of("Read in the source", "Planting trees").withSource("https://example.org/trees"));
		return Explanation.of("Plant", "some days").withSteps(all);
	}

	private static Explanation begins(String day, Explanation... steps) {
		return Explanation.of("Begins", day).withDetail("After the last freeze.").withSteps(List.of(steps));
	}

	@Test
	void theEventBehindAnEndIsNamedRatherThanTheEnd() {
		assertThat(WhyMoved.between(
				task(1, begins("Sat 10 Apr 2027", Explanation.of("Last freeze of 32 °F", "Mon 5 Apr 2027")),
						Explanation.of("Ends", "Sun 30 May 2027")),
				task(1, begins("Wed 14 Apr 2027", Explanation.of("Last freeze of 32 °F", "Fri 9 Apr 2027")),
						Explanation.of("Ends", "Sun 30 May 2027"))))
			.contains("Last freeze of 32 °F: now Fri 9 Apr 2027, before Mon 5 Apr 2027.");
	}

	@Test
	void whatWasSeenGoesBeforeAnEstimate() {
		assertThat(WhyMoved.between(
				task(1, begins("Sat 10 Apr 2027", Explanation.of("Estimate of first bloom", "Sat 10 Apr 2027"))),
				task(1, begins("Wed 14 Apr 2027", Explanation.of("Observed here: first bloom", "Wed 14 Apr 2027")))))
			.contains("Observed here: first bloom, Wed 14 Apr 2027.");
	}

	@Test
	void weatherThatPutsOffIsQuoted() {
		Explanation from = begins("Sat 10 Apr 2027");
		assertThat(WhyMoved.between(task(1, from),
				task(1, from,
						Explanation.of("Put off by the weather", "Mon 12 Apr 2027 to Tue 20 Apr 2027")
							.withSteps(List.of(Explanation.of("A low of 28 °F or colder is forecast", "yes"))))))
			.contains("Put off by the weather: A low of 28 °F or colder is forecast.");
		assertThat(WhyMoved.between(task(1, from, Explanation.of("Put off by the weather", "Mon 12 Apr 2027")),
				task(1, from)))
			.contains("It no longer counts: Put off by the weather, Mon 12 Apr 2027.");
	}

	@Test
	void aChangedRuleIsTheReasonAndNothingElse() {
		assertThat(WhyMoved.between(task(1, begins("Sat 10 Apr 2027")), task(2, begins("Sat 1 May 2027"))))
			.contains("The rule itself was changed.");
	}

	@Test
	void whatNoStepTellsIsNotMadeUp() {
		assertThat(WhyMoved.between(task(1, begins("Sat 10 Apr 2027")), task(1, begins("Sat 10 Apr 2027")))).isEmpty();
		assertThat(WhyMoved.between(task(1, begins("Sat 10 Apr 2027"), Explanation.of("Water", "12 L")),
				task(1, begins("Sat 10 Apr 2027"), Explanation.of("Water", "14 L"))))
			.as("an amount is no reason")
			.isEmpty();
	}

}
