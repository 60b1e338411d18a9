package org.leafward.care.web;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Freezing;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.CatalogueFixture;

import static org.assertj.core.api.Assertions.assertThat;

class WhomWordsTests {

	private final WhomWords words = new WhomWords(CatalogueFixture.configured());

	@Test
	void saysHowColdAPlaceHasToBe() {
		Concern plain = Concern.of(Set.of("boxwood"), Set.of(), Set.of());
		Concern cold = new Concern(plain.groups(), plain.species(), plain.traits(), plain.exceptGroups(),
				plain.exceptSpecies(), plain.placement(), plain.wintersIndoors(), plain.saltExposed(), plain.years(),
				plain.soils(), plain.where(), plain.site(), new Freezing(TemperatureThreshold.parse("20F"), 2));
		assertThat(this.words.of(plain)).doesNotContain("freezes");
		assertThat(this.words.of(cold))
			.isEqualTo(this.words.of(plain) + "; where it freezes to 20 °F (−6.7 °C) in at least one year of 2");
	}

}
