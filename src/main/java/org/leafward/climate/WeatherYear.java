package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the weather did at a place in a calendar year, beside what is normal there. It is
 * one station's, moved to the height and the lie of the place; where that station has too
 * little rain, the rain is that of another.
 *
 * @param year the year
 * @param to last day that was observed, at most 31 December
 * @param over whether the whole year was observed
 * @param station whose temperatures these are
 * @param distance to the station, km
 * @param normalsFrom year of the first season that is normal
 * @param normalsTo year of the last one
 * @param days days of the year up to the last observed one
 * @param missing of these the days without a minimum or a maximum
 * @param spring last freeze of spring, 32 °F at the place
 * @param fall first freeze of fall, likewise
 * @param hottest highest maximum; null when none was measured
 * @param coldest lowest minimum; null when none was measured
 * @param heat degree-days of the season; null when no day of it was observed
 * @param whyNoHeat why there are none or nothing is normal; null otherwise
 * @param rain rain and melted snow; null when no station near enough measured it
 */
public record WeatherYear(int year, LocalDate to, boolean over, Station station, double distance, int normalsFrom,
		int normalsTo, int days, int missing, Freeze spring, Freeze fall, @Nullable Extreme hottest,
		@Nullable Extreme coldest, @Nullable Heat heat, @Nullable String whyNoHeat, @Nullable Rain rain) {

	/** What the record says about a freeze. */
	public enum Seen {

		/** It has a date. */
		OBSERVED,

		/** It didn't come. */
		NONE,

		/** It didn't come so far. */
		NOT_YET,

		/** Too many days are missing to tell. */
		UNKNOWN

	}

	/**
	 * A freeze and when it is usual.
	 *
	 * @param seen what the record says
	 * @param date the day; null unless it was observed
	 * @param settled whether it stays: no later day of this spring is to come
	 * @param median middle date of past seasons; null when unknown
	 * @param early one past season in ten had it earlier
	 * @param late one in ten later
	 * @param whyNoNormal why the three are unknown, a half sentence; null otherwise
	 */
	public record Freeze(Seen seen, @Nullable LocalDate date, boolean settled, @Nullable LocalDate median,
			@Nullable LocalDate early, @Nullable LocalDate late, @Nullable String whyNoNormal) {
	}

	/**
	 * The hottest or the coldest day.
	 *
	 * @param day the day, the first of several alike
	 * @param celsius at the place, °C
	 */
	public record Extreme(LocalDate day, double celsius) {
	}

	/**
	 * Degree-days.
	 *
	 * @param base the temperature above which they count
	 * @param from first day that counts
	 * @param to last day that counts
	 * @param sum degree-days in the unit of the base
	 * @param normal median of past seasons by the same day; null when unknown
	 * @param low one past season in ten had less
	 * @param high one in ten more
	 */
	public record Heat(TemperatureThreshold base, LocalDate from, LocalDate to, double sum, @Nullable Double normal,
			@Nullable Double low, @Nullable Double high) {
	}

	/**
	 * Rain and melted snow of the year, as it was measured.
	 *
	 * @param station who measured it
	 * @param distance to the station, km
	 * @param to last day with a measurement
	 * @param millimetres sum of the days that were measured
	 * @param missing days without a measurement up to that day
	 * @param normal median of the same days of past years; null when unknown
	 * @param low one past year in ten had less
	 * @param high one in ten more
	 * @param years past years behind these
	 * @param whyNoNormal why they are unknown, a sentence; null otherwise
	 * @param driest longest dry spell; null when there was none
	 */
	public record Rain(Station station, double distance, LocalDate to, double millimetres, int missing,
			@Nullable Double normal, @Nullable Double low, @Nullable Double high, int years,
			@Nullable String whyNoNormal, @Nullable Spell driest) {
	}

	/**
	 * Days in a row.
	 *
	 * @param from first day
	 * @param to last day
	 * @param days how many
	 */
	public record Spell(LocalDate from, LocalDate to, int days) {
	}

}
