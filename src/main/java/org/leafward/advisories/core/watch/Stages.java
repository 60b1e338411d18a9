package org.leafward.advisories.core.watch;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leafward.advisories.Bilingual;
import org.leafward.climate.TemperatureThreshold;

/**
 * Stages of buds by degree-days, with the temperatures that kill them.
 *
 * @param base of the degree-days
 * @param start first day that counts, northern hemisphere
 * @param crops the crops
 */
public record Stages(TemperatureThreshold base, MonthDay start, List<Crop> crops) {

	public Stages {
		crops = List.copyOf(crops);
	}

	/**
	 * A crop.
	 *
	 * @param words its name
	 * @param species identifiers of its species
	 * @param stages in order of their sums
	 */
	public record Crop(Bilingual words, Set<String> species, List<Stage> stages) {

		public Crop {
			species = Set.copyOf(species);
			stages = List.copyOf(stages);
		}

		/**
		 * The stage that is reached.
		 * @param sum degree-days
		 * @return empty before the first, and after the last that can be killed
		 */
		public Optional<Stage> at(double sum) {
			Stage reached = null;
			for (Stage stage : this.stages) {
				if (sum >= stage.sum()) {
					reached = stage;
				}
			}
			return Optional.ofNullable(reached).filter((stage) -> !stage.over());
		}

	}

	/**
	 * A stage.
	 *
	 * @param words its name
	 * @param sum degree-days from which it is reached
	 * @param killsTenth temperature that kills one bud in ten within half an hour, °F
	 * @param killsNine the same for nine in ten, °F
	 * @param over whether nothing is at stake any more
	 */
	public record Stage(Bilingual words, double sum, double killsTenth, double killsNine, boolean over) {
	}

}
