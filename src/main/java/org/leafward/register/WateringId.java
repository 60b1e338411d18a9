package org.leafward.register;

import java.util.UUID;

/**
 * Identifier of a watering.
 *
 * @param value the identifier
 */
public record WateringId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
