package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.GeoPoint;

/**
 * What is known of the weather of a place on a day, as figures.
 *
 * @param point the place
 * @param today the day there
 * @param observed the days before it that were looked at, in order, without a gap
 * @param forecast today and days after it, in order; empty without a forecast that can be
 * leaned on
 * @param ground whether the ground is frozen; null when no station can tell
 * @param water the water of a bed of shrubs in loam up to yesterday; null when no station
 * can tell
 */
public record PlaceNow(GeoPoint point, LocalDate today, List<PlaceDay> observed, List<PlaceDay> forecast,
		@Nullable GroundReading ground, @Nullable WaterView water) {

	public PlaceNow {
		observed = List.copyOf(observed);
		forecast = List.copyOf(forecast);
	}

}
