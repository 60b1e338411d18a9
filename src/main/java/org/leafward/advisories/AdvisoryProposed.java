package org.leafward.advisories;

import java.util.Set;
import java.util.UUID;

/**
 * The watch found something that specialists should decide about.
 *
 * @param proposal identifier of the proposal
 * @param condition code of the condition
 * @param counties codes of the counties
 */
public record AdvisoryProposed(UUID proposal, String condition, Set<String> counties) {

	public AdvisoryProposed {
		counties = Set.copyOf(counties);
	}

}
