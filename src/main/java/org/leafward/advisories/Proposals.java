package org.leafward.advisories;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;

/** What the watch found. */
public interface Proposals {

	/**
	 * Proposals about some counties, the latest first.
	 * @param counties names of counties as people are granted them, case doesn't matter;
	 * null means all
	 * @param openOnly whether those are left out that are decided for all of these
	 * counties
	 * @param page from 0
	 * @return the page; empty beyond the last
	 */
	ProposalPage page(@Nullable Collection<String> counties, boolean openOnly, int page);

	/**
	 * A proposal.
	 * @param id which
	 * @return empty when there is none
	 */
	Optional<Proposal> find(ProposalId id);

	/**
	 * What was decided about a proposal.
	 * @param id which
	 * @return for the counties that somebody has decided for
	 */
	List<Decided> decided(ProposalId id);

	/**
	 * Notes that no advisory is needed for some counties of a proposal. Counties that are
	 * decided already stay as they are.
	 * @param id which
	 * @param counties codes of counties
	 * @param by who decided
	 * @param why in a few words, at most 300 characters, may be empty
	 * @throws NotThere when there is no such proposal
	 * @throws BadInput when none of the counties belongs to it
	 */
	void dismiss(ProposalId id, Collection<String> counties, Decider by, String why);

	/**
	 * Notes that an advisory was made of a proposal for some counties.
	 * @param id which
	 * @param counties codes of counties
	 * @param advisory identifier of the advisory
	 * @param by who made it
	 * @throws NotThere when there is no such proposal
	 */
	void composed(ProposalId id, Collection<String> counties, UUID advisory, Decider by);

	/**
	 * Proposes an advisory where several cases with the same likely cause came up near
	 * each other. Cases that are far apart, old or few propose nothing; within the
	 * cool-down the same cause is proposed once for a county.
	 * @param cases cases of late, of any cause
	 * @return the proposals that were made
	 */
	List<ProposalId> fromCases(Collection<NearCase> cases);

}
