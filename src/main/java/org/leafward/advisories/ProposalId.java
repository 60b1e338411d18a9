package org.leafward.advisories;

import java.util.UUID;

/**
 * Identifier of a proposal.
 *
 * @param value the identifier
 */
public record ProposalId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
