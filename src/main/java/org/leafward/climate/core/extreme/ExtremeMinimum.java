package org.leafward.climate.core.extreme;

import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.measure.Hemisphere;

/**
 * The mean of the lowest minimum of each year, from which hardiness zones are made (USDA;
 * the map of 2023 takes 1991 to 2020).
 * <p>
 * No statement of the USDA was found as to whether its years are calendar years, so both
 * are there. Calendar years can count one cold spell at the turn of the year twice and
 * another winter not at all, hence winters are what the program itself uses.
 *
 * @param celsius the mean, °C
 * @param lowest the lowest of all, °C
 * @param years years that are in the mean
 * @param leftOut years that were left out: more than ten minima missing in the five cold
 * months (November to March, in the south May to September)
 */
public record ExtremeMinimum(double celsius, double lowest, int years, int leftOut) {

	/** Fewest years that make a mean; our choice. */
	public static final int FEWEST_YEARS = 10;

	private static final int MISSING_ALLOWED = 10;

	/** What a year is. */
	public enum Years {

		/** From summer to summer: the winter before the spring that names the season. */
		WINTERS,

		/** From January to December. */
		CALENDAR

	}

	/**
	 * The mean over a period.
	 * @param record the station's record
	 * @param period which years; a winter is named by the year of the spring after it
	 * @param years what a year is
	 * @param hemisphere where the station is
	 * @return empty when fewer than ten years can be told
	 */
	public static Optional<ExtremeMinimum> of(DailyRecord record, SeasonPeriod period, Years years,
			Hemisphere hemisphere) {
		double sum = 0;
		double lowest = Double.POSITIVE_INFINITY;
		int used = 0;
		for (int year = period.from(); year <= period.to(); year++) {
			boolean split = years == Years.WINTERS && hemisphere == Hemisphere.NORTH;
			LocalDate begin = split ? LocalDate.of(year - 1, Month.JULY, 1) : LocalDate.of(year, Month.JANUARY, 1);
			double extreme = lowest(record, begin, hemisphere);
			if (!Double.isNaN(extreme)) {
				sum += extreme;
				lowest = Math.min(lowest, extreme);
				used++;
			}
		}
		return (used < FEWEST_YEARS) ? Optional.empty()
				: Optional.of(new ExtremeMinimum(sum / used / 10, lowest / 10, used, period.seasons() - used));
	}

	private static double lowest(DailyRecord record, LocalDate begin, Hemisphere hemisphere) {
		int lowest = Integer.MAX_VALUE;
		int missing = 0;
		for (LocalDate day = begin; day.isBefore(begin.plusYears(1)); day = day.plusDays(1)) {
			short value = record.value(Element.TMIN, day);
			if (value != DailyRecord.MISSING) {
				lowest = Math.min(lowest, value);
			}
			else if (cold(day.getMonth(), hemisphere)) {
				missing++;
			}
		}
		return (missing > MISSING_ALLOWED) ? Double.NaN : lowest;
	}

	private static boolean cold(Month month, Hemisphere hemisphere) {
		return switch (month) {
			case NOVEMBER, DECEMBER, JANUARY, FEBRUARY, MARCH -> hemisphere == Hemisphere.NORTH;
			case MAY, JUNE, JULY, AUGUST, SEPTEMBER -> hemisphere == Hemisphere.SOUTH;
			default -> false;
		};
	}

	/**
	 * The half zone at a place.
	 * @param colderBy how much colder the place is than the station, °C
	 * @return empty outside the zones
	 */
	public Optional<HardinessZone> zone(double colderBy) {
		return HardinessZone.of((this.celsius - colderBy) * 1.8 + 32);
	}

}
