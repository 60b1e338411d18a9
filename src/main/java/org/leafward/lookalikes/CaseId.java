package org.leafward.lookalikes;

import java.util.UUID;

/**
 * Identifier of a case.
 *
 * @param value the identifier
 */
public record CaseId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
