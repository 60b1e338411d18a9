package org.leafward.care.core.rule;

/**
 * A calendar date, for the few cases where practice or law names one.
 *
 * @param day month and day
 * @param nextSeason whether the day of the following season is meant
 * @param whyFixed why no local event will do
 */
public record CalendarAnchor(FixedDay day, boolean nextSeason, String whyFixed) implements Anchor {

	@Override
	public String words() {
		return "%s%s, a fixed date: %s".formatted(this.day.words(), this.nextSeason ? " of the following season" : "",
				this.whyFixed);
	}

}
