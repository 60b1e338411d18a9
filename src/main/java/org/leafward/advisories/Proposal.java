package org.leafward.advisories;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.leafward.language.Language;

/**
 * What the watch found, for specialists to decide about.
 *
 * @param id identifier
 * @param condition what it was looking out for, as it was then
 * @param madeAt when it was found
 * @param counties where, at least one, by name
 * @param growth what grows there of the plants concerned, as it was then
 * @param english drafted text
 * @param spanish the same in Spanish
 */
public record Proposal(ProposalId id, Condition condition, Instant madeAt, List<AffectedCounty> counties, Growth growth,
		DraftText english, DraftText spanish) {

	public Proposal {
		counties = List.copyOf(counties);
	}

	/**
	 * First day that it is about in any county.
	 * @return the day
	 */
	public LocalDate from() {
		return this.counties.stream().map(AffectedCounty::from).min(Comparator.naturalOrder()).orElseThrow();
	}

	/**
	 * Last day that it is about in any county.
	 * @return the day
	 */
	public LocalDate to() {
		return this.counties.stream().map(AffectedCounty::to).max(Comparator.naturalOrder()).orElseThrow();
	}

	/**
	 * The drafted text.
	 * @param language which language
	 * @return English for whatever is not Spanish
	 */
	public DraftText draft(Language language) {
		return (language == Language.SPANISH) ? this.spanish : this.english;
	}

	/**
	 * Whether somebody has still to decide.
	 * @return true while it is open for a county
	 */
	public boolean open() {
		return this.counties.stream().anyMatch((one) -> one.standing() == AffectedCounty.Standing.OPEN);
	}

}
