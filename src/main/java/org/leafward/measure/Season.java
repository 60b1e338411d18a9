package org.leafward.measure;

import java.time.LocalDate;
import java.time.Month;

/**
 * A growing season, named on both hemispheres by the year in which its spring falls.
 * <p>
 * Freezes are looked for in two windows that meet at midsummer: spring freezes from
 * midsummer to midsummer before the season, fall freezes from midsummer to midsummer
 * after it. Midsummer is 1 August in the north (the split of NCEI's freeze normals,
 * "August 1 - July 30") and 1 February in the south.
 *
 * @param year the year of its spring
 * @param hemisphere the hemisphere
 */
public record Season(int year, Hemisphere hemisphere) {

	/**
	 * The season that a day belongs to when people speak of "this season": the calendar
	 * year in the north; from July to June in the south.
	 * @param day any day
	 * @param hemisphere the hemisphere
	 * @return the season
	 */
	public static Season containing(LocalDate day, Hemisphere hemisphere) {
		if (hemisphere == Hemisphere.NORTH) {
			return new Season(day.getYear(), hemisphere);
		}
		return new Season((day.getMonthValue() >= 7) ? day.getYear() : day.getYear() - 1, hemisphere);
	}

	/**
	 * First day on which a freeze counts as one of the spring of this season.
	 * @return midsummer before the season
	 */
	public LocalDate springSearchStart() {
		return midsummer().minusYears(1);
	}

	/**
	 * The day that parts spring from fall freezes; it belongs to fall.
	 * @return 1 August of the year in the north, 1 February of the next year in the south
	 */
	public LocalDate midsummer() {
		return (this.hemisphere == Hemisphere.NORTH) ? LocalDate.of(this.year, Month.AUGUST, 1)
				: LocalDate.of(this.year + 1, Month.FEBRUARY, 1);
	}

	/**
	 * Last day on which a freeze counts as one of the fall of this season.
	 * @return the day before the next midsummer
	 */
	public LocalDate fallSearchEnd() {
		return midsummer().plusYears(1).minusDays(1);
	}

	public Season next() {
		return new Season(this.year + 1, this.hemisphere);
	}

	public Season previous() {
		return new Season(this.year - 1, this.hemisphere);
	}

}
