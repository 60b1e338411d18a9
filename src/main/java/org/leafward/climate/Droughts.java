package org.leafward.climate;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.core.drought.StationDrought;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/** The drought around a place, by the rain of the nearest station that can tell. */
@Service
public class Droughts {

	/** Stations looked into at most, when many have too short a record. */
	private static final int MOST_OPENED = 6;

	/** Readings that are kept, about a kB each. */
	private static final int MOST_KEPT = 5_000;

	private final Stations stations;

	private final LocalClimate climate;

	/** A station speaks for many places. */
	private final BoundedCache<Asked, Optional<DroughtReading>> readings = new BoundedCache<>(MOST_KEPT);

	Droughts(Stations stations, LocalClimate climate) {
		this.stations = stations;
		this.climate = climate;
	}

	/**
	 * The drought on a day.
	 * @param place the place; its height doesn't count, as rain isn't moved by it
	 * @param today the day there
	 * @return empty when none of the six nearest stations within 150 km has twenty years
	 * of rain and that of the last ninety days
	 */
	public Optional<DroughtReading> at(GeoPoint place, LocalDate today) {
		return at(place, this.stations::around, today);
	}

	Optional<DroughtReading> at(GeoPoint place, StationsAround around, LocalDate today) {
		return OneVersion.of(around,
				() -> around.of(place)
					.stream()
					.filter((stored) -> stored.recordVersion() > 0)
					.limit(MOST_OPENED)
					.flatMap((stored) -> read(stored, today).stream())
					.findFirst());
	}

	private Optional<DroughtReading> read(StoredStation stored, LocalDate today) {
		return this.readings.get(new Asked(stored, today),
				() -> StationDrought.read(stored.station(), this.climate.climate(stored).record(), today));
	}

	/** Of one version of a record: a new day of rain is a new version. */
	private record Asked(StoredStation stored, LocalDate today) {
	}

}
