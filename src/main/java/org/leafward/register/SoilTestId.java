package org.leafward.register;

import java.util.UUID;

/**
 * Identifier of a soil test.
 *
 * @param value the identifier
 */
public record SoilTestId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
