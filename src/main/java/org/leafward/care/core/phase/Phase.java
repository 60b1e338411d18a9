package org.leafward.care.core.phase;

import java.util.List;
import java.util.Optional;
import org.leafward.plants.Species;

/**
 * A phase of the plant's year.
 *
 * @param name lower case with hyphens, for example {@code bud-break}
 * @param words the phase for readers
 * @param lookFor how to tell that it is reached, in a sentence
 * @param estimates when it is expected where nobody observed it, most particular first
 */
public record Phase(String name, String words, String lookFor, List<Estimate> estimates) {

	public Phase {
		estimates = List.copyOf(estimates);
	}

	/**
	 * When the phase is expected.
	 * @param plant the species
	 * @return the first estimate that fits the plant; empty when none does
	 */
	public Optional<Estimate> estimateFor(Species plant) {
		return this.estimates.stream().filter((estimate) -> estimate.concern().addresses(plant)).findFirst();
	}

}
