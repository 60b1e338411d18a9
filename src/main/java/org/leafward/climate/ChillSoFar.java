package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The chill of the winter before a season, as far as it has come.
 *
 * @param season the season whose spring ends the winter
 * @param from first day of the winter
 * @param end its last day
 * @param until last day that is counted; null when none could be
 * @param observed the sums so far; null when they aren't known
 * @param normalSoFar medians of past winters up to the same day; null when not known
 * @param normalWhole medians of whole past winters; null when not known
 * @param years past winters behind the medians
 * @param missing why something isn't known, in words, or null
 */
public record ChillSoFar(int season, LocalDate from, LocalDate end, @Nullable LocalDate until, @Nullable Chill observed,
		@Nullable Chill normalSoFar, @Nullable Chill normalWhole, int years, @Nullable String missing) {

	/**
	 * Sums of chill.
	 *
	 * @param hours hours from 32 to 45 °F, from the third month of the winter on
	 * @param utah units of the Utah model
	 * @param portions portions of the dynamic model
	 */
	public record Chill(double hours, double utah, double portions) {
	}

}
