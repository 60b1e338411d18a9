package org.leafward.care.core.rule;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * A month and day, written for the northern hemisphere; in the south it stands for the
 * day six months later.
 *
 * @param northern month and day as written in the pack
 */
public record FixedDay(MonthDay northern) {

	/**
	 * The day for readers.
	 * @return for example "1 November", as written in the pack
	 */
	public String words() {
		return this.northern.getDayOfMonth() + " "
				+ this.northern.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
	}

	/**
	 * The date in a season.
	 * @param season the season
	 * @return a day of the season's year in the north, from July of that year to June of
	 * the next in the south
	 */
	public LocalDate in(Season season) {
		LocalDate day = this.northern.atYear(season.year());
		return (season.hemisphere() == Hemisphere.NORTH) ? day : day.plusMonths(6);
	}

}
