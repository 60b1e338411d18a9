package org.leafward.workdays;

import java.util.UUID;

/**
 * Identifier of a workday.
 *
 * @param value the identifier
 */
public record WorkdayId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
