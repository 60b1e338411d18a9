package org.leafward.care.core.phase;

import java.util.List;
import java.util.Optional;
import org.leafward.care.core.rule.Anchor;
import org.leafward.plants.Species;

/**
 * The phases and events that rules can hang on.
 *
 * @param phases in the order written
 * @param events in the order written
 */
public record Phenology(List<Phase> phases, List<LoggedEvent> events) {

	/** No phase and no event. */
	public static final Phenology NONE = new Phenology(List.of(), List.of());

	public Phenology {
		phases = List.copyOf(phases);
		events = List.copyOf(events);
	}

	/**
	 * One phase.
	 * @param name its name
	 * @return empty when there is none
	 */
	public Optional<Phase> phase(String name) {
		return this.phases.stream().filter((phase) -> phase.name().equals(name)).findFirst();
	}

	/**
	 * One event.
	 * @param name its name
	 * @return empty when there is none
	 */
	public Optional<LoggedEvent> event(String name) {
		return this.events.stream().filter((event) -> event.name().equals(name)).findFirst();
	}

	/**
	 * What the day of a phase hangs on where nobody observed it.
	 * @param phase name of the phase
	 * @param plant the species
	 * @return empty when the phase is not estimated for this plant
	 */
	public Optional<Anchor> estimate(String phase, Species plant) {
		return phase(phase).flatMap((one) -> one.estimateFor(plant)).map(Estimate::at);
	}

}
