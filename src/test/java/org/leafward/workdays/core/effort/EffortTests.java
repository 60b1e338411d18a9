package org.leafward.workdays.core.effort;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.core.rule.Work;
import org.leafward.workdays.Skill;

import static org.assertj.core.api.Assertions.assertThat;

/** The figures are common practice without a source; what is held here is their sense. */
class EffortTests {

	@ParameterizedTest
	@EnumSource(Work.class)
	void moreTakesLongerAndADayOfManyIsNeverExceeded(Work work) {
		int before = 0;
		for (int count : new int[] { 1, 5, 20, 100, 400, 100_000 }) {
			int minutes = Effort.of(work, count, null, null).minutes();
			assertThat(minutes).isBetween(Math.max(5, before), 2400);
			before = minutes;
		}
		assertThat(Effort.of(work, 1, null, null).tools()).isNotEmpty();
	}

	@Test
	void spraysNeedALicenceAndThickTreesASaw() {
		assertThat(Effort.of(Work.TREAT, 1, null, null).skills()).isEqualTo(Set.of(Skill.PESTICIDE));
		assertThat(Effort.of(Work.PRUNE, 1, null, 560.0).skills()).isEqualTo(Set.of(Skill.SAW));
		assertThat(Effort.of(Work.PRUNE, 1, null, 40.0).skills()).isEmpty();
		assertThat(Effort.of(null, 1, null, null).skills()).isEmpty();
	}

}
