package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Minima and maxima of a year at a place beside the normal ones.
 *
 * @param days every day from the first to the last of the year
 * @param missingDays observed days without a minimum or a maximum
 */
public record TemperatureSeason(List<Day> days, int missingDays) {

	public TemperatureSeason {
		days = List.copyOf(days);
	}

	/**
	 * A day; temperatures at the place, °C.
	 *
	 * @param date the day
	 * @param low observed minimum, null when not observed
	 * @param high observed maximum, null when not observed
	 * @param normalLow mean minimum of 15 days around it in past years, null when unknown
	 * @param normalHigh mean maximum likewise
	 */
	public record Day(LocalDate date, @Nullable Double low, @Nullable Double high, @Nullable Double normalLow,
			@Nullable Double normalHigh) {
	}

}
