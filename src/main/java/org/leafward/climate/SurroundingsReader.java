package org.leafward.climate;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/** Reads what the weather of many places hangs on, at once. */
@Service
public class SurroundingsReader {

	private final Stations stations;

	private final Forecasts forecasts;

	SurroundingsReader(Stations stations, Forecasts forecasts) {
		this.stations = stations;
		this.forecasts = forecasts;
	}

	/**
	 * Reads the stations and forecasts of some places.
	 * @param points the places, at most 1,000
	 * @return as they are now
	 */
	public Surroundings of(Collection<GeoPoint> points) {
		Map<GeoPoint, List<StoredStation>> near = this.stations.around(points);
		Map<StationId, Station> all = new LinkedHashMap<>();
		near.values()
			.forEach((stations) -> stations.forEach((stored) -> all.put(stored.station().id(), stored.station())));
		return new Surroundings(near, this.forecasts.fresh(all.values()), this.stations::around);
	}

}
