package org.leafward.advisories;

import java.util.List;

/**
 * A page of proposals.
 *
 * @param proposals latest first
 * @param page its number, from 0
 * @param total how many there are in all
 */
public record ProposalPage(List<Proposal> proposals, int page, long total) {

	/** Proposals of a page at most. */
	public static final int SIZE = 20;

	public ProposalPage {
		proposals = List.copyOf(proposals);
	}

	/**
	 * Whether there is a page after it.
	 * @return false on the last
	 */
	public boolean more() {
		return (this.page + 1L) * SIZE < this.total;
	}

}
