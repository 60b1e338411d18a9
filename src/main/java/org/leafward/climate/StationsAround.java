package org.leafward.climate;

import java.util.List;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;

/** Gives the stations that may speak for a place, with the versions of their records. */
@FunctionalInterface
interface StationsAround {

	/**
	 * The stations within {@link LocalClimate#STATION_RADIUS_KILOMETRES}.
	 * @param point the place
	 * @return nearest first
	 */
	List<StoredStation> of(GeoPoint point);

	/** Told that a record moved on, so that it is read anew when it was read ahead. */
	default void renew() {
	}

}
