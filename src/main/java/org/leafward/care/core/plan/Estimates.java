package org.leafward.care.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

/**
 * When phases are expected, looked up once for each species of the catalogue. Safe for
 * use by threads.
 */
final class Estimates {

	private final List<Phase> phases;

	private final Map<String, OfPhase> byName = new HashMap<>();

	Estimates(Phenology phenology) {
		this.phases = phenology.phases();
		this.phases.forEach((phase) -> this.byName.putIfAbsent(phase.name(), new OfPhase(phase)));
	}

	/** In the order written. */
	List<Phase> phases() {
		return this.phases;
	}

	/** Empty when there is no such phase, or no estimate for the plant. */
	Optional<Known> of(String phase, Species plant) {
		OfPhase estimates = this.byName.get(phase);
		return (estimates != null) ? estimates.of(plant) : Optional.empty();
	}

	/**
	 * An estimate.
	 *
	 * @param estimate the estimate
	 * @param basis stands for its sources in a {@link Basis}
	 */
	record Known(Estimate estimate, int basis) {

		static Known of(Estimate estimate) {
			return new Known(estimate, estimate.sources().toString().hashCode());
		}

	}

	private record OfPhase(Phase phase, Map<SpeciesId, Optional<Known>> known) {

		OfPhase(Phase phase) {
			this(phase, new ConcurrentHashMap<>());
		}

		Optional<Known> of(Species plant) {
			Optional<Known> before = this.known.get(plant.id());
			return (before != null) ? before
					: this.known.computeIfAbsent(plant.id(), (id) -> this.phase.estimateFor(plant).map(Known::of));
		}

	}

}
