package org.leafward.register;

import java.util.UUID;

/**
 * Identifier of a planting.
 *
 * @param value the identifier
 */
public record PlantingId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
