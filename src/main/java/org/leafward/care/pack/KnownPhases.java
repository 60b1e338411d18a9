package org.leafward.care.pack;

import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.care.core.phase.LoggedEvent;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;

/**
 * The names of phases and events that anchors can hang on.
 *
 * @param phases phases of the plant's year
 * @param events events that people log
 */
record KnownPhases(Set<String> phases, Set<String> events) {

	static KnownPhases of(Phenology phenology) {
		return new KnownPhases(phenology.phases().stream().map(Phase::name).collect(Collectors.toSet()),
				phenology.events().stream().map(LoggedEvent::name).collect(Collectors.toSet()));
	}

}
