package org.leafward.quick.core;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

import static org.assertj.core.api.Assertions.assertThat;

/** Common practice: by the last freezes, hardy before and tender after. */
class PlantedWhenTests {

	private static PlantedWhen on(String today) {
		return new PlantedWhen(LocalDate.parse(today), Hemisphere.NORTH,
				(year) -> new SpringFreezes(LocalDate.of(year, Month.MAY, 1), LocalDate.of(year, Month.MAY, 16)));
	}

	private static Species of(String... groups) {
		return new Species(new SpeciesId("some-plant"), "Planta aliqua", "some plant", List.of(), List.of(groups),
				Set.of());
	}

	@ParameterizedTest
	@CsvSource({ "2027-03-01, vegetable-tender, 2027-05-16", "2027-03-01, vegetable-very-tender, 2027-05-30",
			"2027-03-01, vegetable-hardy, 2027-04-10", "2027-03-01, vegetable-half-hardy, 2027-05-01",
			"2027-06-20, vegetable-tender, 2027-05-16", "2027-07-15, vegetable-tender, 2027-05-16",
			"2027-07-16, vegetable-tender, 2028-05-16", "2026-11-26, annual-tender, 2027-05-16" })
	void whatLivesASeasonGoesOutByTheFreezes(String today, String group, LocalDate planted) {
		String coarse = group.substring(0, group.indexOf('-'));
		assertThat(on(today).of(of(group, coarse, "transplant"), false)).isEqualTo(planted);
	}

	@Test
	void garlicWentInLastFall() {
		assertThat(on("2026-11-26").of(of("garlic", "vegetable"), false)).isEqualTo("2026-10-15");
		assertThat(on("2026-09-01").of(of("garlic", "vegetable"), false)).isEqualTo("2025-10-15");
	}

	@Test
	void whatLastsHasStoodThereForYearsUnlessSomebodySaysOtherwise() {
		assertThat(on("2026-11-26").of(of("oak", "woody"), false)).isEqualTo("2020-11-26");
		assertThat(on("2026-11-26").of(of("oak", "woody"), true)).isEqualTo("2026-05-26");
		assertThat(on("2026-11-26").of(of("perennial-vegetable", "vegetable"), false)).isEqualTo("2020-11-26");
	}

}
