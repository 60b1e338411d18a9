package org.leafward.care.core.rule;

import java.time.format.TextStyle;
import java.util.Locale;

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
		return "%d %s%s, a fixed date: %s".formatted(this.day.northern().getDayOfMonth(),
				this.day.northern().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
				this.nextSeason ? " of the next season" : "", this.whyFixed);
	}

}
