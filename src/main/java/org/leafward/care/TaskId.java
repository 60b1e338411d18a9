package org.leafward.care;

import java.util.UUID;

/**
 * Identifier of a care task.
 *
 * @param value the identifier
 */
public record TaskId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
