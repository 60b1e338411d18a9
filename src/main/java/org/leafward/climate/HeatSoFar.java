package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The degree-days of a season as far as they have come, beside those of past years.
 *
 * @param base the temperature above which the mean of a day counts
 * @param from first day that counts
 * @param observed the sum in the evening of each observed day, from the first one on
 * @param normal what past years had by the same day, to the end of the season
 * @param projected how the sum goes on from the last observed day: forecast, then as the
 * median past year; empty where nobody can tell
 * @param forecastDays days of a forecast in the projection
 * @param goals dates of some sums
 * @param years past years behind what is normal
 * @param bridged days so far with a missing temperature
 * @param aheadDays by how many days the sum is ahead of the median year, negative when it
 * is behind; null where no sum has come yet, or a day more or less hardly changes it
 * @param missing why something isn't known, in words, or null
 */
public record HeatSoFar(TemperatureThreshold base, LocalDate from, List<Sum> observed, List<Normal> normal,
		List<Sum> projected, int forecastDays, List<Goal> goals, int years, int bridged, @Nullable Integer aheadDays,
		@Nullable String missing) {

	public HeatSoFar {
		observed = List.copyOf(observed);
		normal = List.copyOf(normal);
		projected = List.copyOf(projected);
		goals = List.copyOf(goals);
	}

	/**
	 * The last sum that was observed.
	 * @return null when no day of the season has been
	 */
	public @Nullable Sum latest() {
		return this.observed.isEmpty() ? null : this.observed.get(this.observed.size() - 1);
	}

	/**
	 * What is normal on a day.
	 * @param day the day
	 * @return null outside the season, or when it isn't known
	 */
	public @Nullable Normal normalOn(LocalDate day) {
		return this.normal.stream().filter((one) -> one.day().equals(day)).findFirst().orElse(null);
	}

	/**
	 * A sum in the evening of a day.
	 *
	 * @param day the day
	 * @param sum degree-days in the unit of the base
	 */
	public record Sum(LocalDate day, double sum) {
	}

	/**
	 * The sums of past years in the evening of a day.
	 *
	 * @param day the day
	 * @param low one past year in ten had less
	 * @param middle half of them had less
	 * @param high one in ten had more
	 */
	public record Normal(LocalDate day, double low, double middle, double high) {
	}

	/** What the date of a goal rests on. */
	public enum Basis {

		/** It has been observed. */
		OBSERVED,

		/** It comes inside the forecast. */
		FORECAST,

		/** It comes as in past years, from what has been observed on. */
		NORMAL,

		/** Nobody can tell. */
		UNKNOWN

	}

	/**
	 * A sum and its dates.
	 *
	 * @param sum degree-days
	 * @param usual median date of past years; null when too few reach it
	 * @param date when it was or will be reached this season; null when not known
	 * @param early one past year in ten would bring it earlier
	 * @param late one in ten later
	 * @param basis what the date rests on
	 */
	public record Goal(int sum, @Nullable LocalDate usual, @Nullable LocalDate date, @Nullable LocalDate early,
			@Nullable LocalDate late, Basis basis) {
	}

}
