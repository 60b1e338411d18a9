package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.PlaceNow;

/**
 * What is known of a place on a day.
 *
 * @param now its weather
 * @param markers the dates of its season
 */
public record Scene(PlaceNow now, MarkerDates markers) {

	/** Tells the dates of markers. */
	@FunctionalInterface
	public interface MarkerDates {

		/**
		 * The date of a marker.
		 * @param key which one
		 * @param season year of the season
		 * @return empty when no station can tell
		 */
		Optional<LocalDate> on(MarkerKey key, int season);

	}

	LocalDate today() {
		return this.now.today();
	}

	boolean south() {
		return this.now.point().latitude() < 0;
	}

}
