package org.leafward.register;

import java.util.UUID;

/**
 * Identifier of a bed.
 *
 * @param value the identifier
 */
public record BedId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
