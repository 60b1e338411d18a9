package org.leafward.workdays;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class PlanTermsTests {

	@ParameterizedTest
	@ValueSource(ints = { -1, 61, Integer.MAX_VALUE })
	void refusesNoticeThatNoneCanBe(int days) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new PlanTerms(days, Map.of()))
			.matches((ex) -> ex.where().equals("notice"), "names the field");
	}

	@ParameterizedTest
	@CsvSource({ "hoe, -1", "hoe, 51", "'', 1", "'a\nb', 1" })
	void refusesToolsThatNoneCanBe(String tool, int teams) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new PlanTerms(3, Map.of(tool, teams)))
			.matches((ex) -> ex.where().equals("fewTools"), "names the field");
	}

	@Test
	void refusesMoreToolsThanAPlanCanHeed() {
		Map<String, Integer> many = IntStream.rangeClosed(0, PlanTerms.MOST_TOOLS)
			.boxed()
			.collect(Collectors.toMap((i) -> "tool " + i, (i) -> 1));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new PlanTerms(3, many))
			.withMessageContaining("13 tools are more than 12");
	}

	@Test
	void findsAToolWhetherThereIsOneOrMore() {
		PlanTerms terms = new PlanTerms(3, Map.of("rakes", 1, "Loppers", 2, "hoe", 1, "compass", 1));
		assertThat(terms.few(List.of("rake", "loppers", "hoes", "gloves")))
			.isEqualTo(Set.of("rakes", "Loppers", "hoe"));
		assertThat(terms.few(List.of())).isEmpty();
	}

}
