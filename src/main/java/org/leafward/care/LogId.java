package org.leafward.care;

import java.util.UUID;

/**
 * Identifier of an entry of the care log.
 *
 * @param value the identifier
 */
public record LogId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
