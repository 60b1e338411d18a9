package org.leafward.care.core.plan;

import java.util.List;
import java.util.Optional;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Source;
import org.leafward.plants.Species;

/** When phases of plants are expected where nobody observed them. */
@FunctionalInterface
public interface PhaseEstimates {

	/** No estimates. */
	PhaseEstimates NONE = (phase, species) -> Optional.empty();

	/**
	 * The estimate for a species.
	 * @param phase name of the phase, for example {@code bud-break}
	 * @param species the species
	 * @return the first estimate that fits, or empty when there is none
	 */
	Optional<Estimate> of(String phase, Species species);

	/**
	 * An estimate.
	 *
	 * @param at what the day hangs on; no phase or event
	 * @param sources where it comes from
	 */
	record Estimate(Anchor at, List<Source> sources) {

		public Estimate {
			sources = List.copyOf(sources);
		}

	}

}
