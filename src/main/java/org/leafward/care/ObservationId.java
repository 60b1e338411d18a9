package org.leafward.care;

import java.util.UUID;

/**
 * Identifier of an observation.
 *
 * @param value the identifier
 */
public record ObservationId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
