package org.leafward.care.core.rule;

/**
 * A phase of the plant's year: as it was observed on the planting, else as it is
 * estimated.
 *
 * @param phase name of the phase, for example {@code bud-break}
 * @param days days after it
 * @param nextSeason whether the phase of the following season is meant
 * @param bounds days of the year that the date keeps to
 */
public record PhaseAnchor(String phase, Days days, boolean nextSeason, Bounds bounds) implements Anchor {

	@Override
	public String words() {
		return this.days.words(this.phase.replace('-', ' ') + (this.nextSeason ? " of the following season" : ""));
	}

}
