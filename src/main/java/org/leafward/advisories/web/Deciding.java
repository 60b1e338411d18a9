package org.leafward.advisories.web;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.Decider;
import org.leafward.advisories.Proposal;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.regions.County;
import org.springframework.stereotype.Component;

/** For which counties whoever is looking may decide. */
@Component
class Deciding {

	private final Viewers viewers;

	Deciding(Viewers viewers) {
		this.viewers = viewers;
	}

	/** Names of the counties whose proposals are shown; null for all. */
	@Nullable Set<String> counties() {
		Viewer viewer = this.viewers.current();
		return viewer.operator() ? null : viewer.counties();
	}

	boolean serves(String county) {
		Viewer viewer = this.viewers.current();
		return viewer.operator() || viewer.serves(county);
	}

	/** A region is everybody's of it, so only who serves all of its counties sets it. */
	boolean servesRegion(String region, List<County> counties) {
		return counties.stream().filter((one) -> one.region().equals(region)).allMatch((one) -> serves(one.name()));
	}

	Decider decider() {
		Viewer viewer = this.viewers.current();
		return new Decider(viewer.name(), viewer.person());
	}

	/** The counties of a proposal that are open and theirs to decide for. */
	List<AffectedCounty> open(Proposal proposal) {
		return proposal.counties()
			.stream()
			.filter((one) -> one.standing() == AffectedCounty.Standing.OPEN && serves(one.name()))
			.toList();
	}

	/** Whether the proposal is about a county of theirs. */
	boolean mayOpen(Proposal proposal) {
		return proposal.counties().stream().anyMatch((one) -> serves(one.name()));
	}

	/** What is said of whom somebody serves. */
	String words() {
		Set<String> counties = counties();
		return (counties == null) ? "all counties"
				: counties.isEmpty() ? "no county"
						: String.join(", ",
								counties.stream()
									.sorted((a, b) -> a.toLowerCase(Locale.ROOT).compareTo(b.toLowerCase(Locale.ROOT)))
									.toList());
	}

}
