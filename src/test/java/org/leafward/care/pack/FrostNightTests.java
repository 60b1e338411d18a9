package org.leafward.care.pack;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Rule;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.CatalogueFixture;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The lowest temperature of a day comes about sunrise, and a forecast's minimum belongs
 * to the day on which its night ends. So what saves plants from it is to be done on the
 * day before, in every pack. (That minima come about sunrise: common practice.)
 */
class FrostNightTests {

	@Test
	void whatANightCallsForStandsFromTheDayBefore() {
		LoadedRulePacks packs = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(),
				CatalogueFixture.configured());
		List<Rule> nights = packs.all()
			.stream()
			.flatMap((pack) -> pack.rules().stream())
			.filter((rule) -> rule.timing() instanceof DayByDay
					&& rule.weather().opens().stream().anyMatch((asks) -> asks.state().equals("low-ahead")))
			.toList();
		assertThat(nights).hasSizeGreaterThanOrEqualTo(10).allSatisfy((rule) -> {
			assertThat(((DayByDay) rule.timing()).daysAhead()).as(rule.id()).isPositive();
		});
	}

}
