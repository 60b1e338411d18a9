package org.leafward.climate;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.leafward.climate.core.LapseRate;
import org.leafward.climate.core.state.StationGround;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/** Whether the ground around a place is frozen, by the nearest station that can tell. */
@Service
public class Grounds {

	/** Stations looked into at most, when many have no temperatures of late. */
	private static final int MOST_OPENED = 6;

	private final Stations stations;

	private final LocalClimate climate;

	Grounds(Stations stations, LocalClimate climate) {
		this.stations = stations;
		this.climate = climate;
	}

	/**
	 * The ground on a day.
	 * @param place the place with its height
	 * @param today the day there
	 * @return empty when none of the six nearest stations within 150 km knows
	 */
	public Optional<GroundReading> at(GeoPoint place, LocalDate today) {
		return at(place, this.stations::around, today);
	}

	/**
	 * Whether the ground was frozen on each day of a period, from the nearest station
	 * that knows the last of them.
	 * @param place the place with its height
	 * @param from first day
	 * @param to last day, at most a year later
	 * @return the days that are known, with true for frozen; empty when none of the six
	 * nearest stations within 150 km knows
	 */
	public Map<LocalDate, Boolean> frozenDays(GeoPoint place, LocalDate from, LocalDate to) {
		LocalWeather.check(from, to);
		return OneVersion.of(() -> {
			Map<LocalDate, Boolean> days = new HashMap<>();
			this.stations.around(place)
				.stream()
				.filter((stored) -> stored.recordVersion() > 0)
				.limit(MOST_OPENED)
				.filter((stored) -> read(stored, place, to.plusDays(1)).isPresent())
				.findFirst()
				.ifPresent((stored) -> {
					for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
						LocalDate one = day;
						read(stored, place, day.plusDays(1)).ifPresent((reading) -> days.put(one, reading.frozen()));
					}
				});
			return days;
		});
	}

	Optional<GroundReading> at(GeoPoint place, StationsAround around, LocalDate today) {
		return OneVersion.of(around,
				() -> around.of(place)
					.stream()
					.filter((stored) -> stored.recordVersion() > 0)
					.limit(MOST_OPENED)
					.flatMap((stored) -> read(stored, place, today).stream())
					.findFirst());
	}

	private Optional<GroundReading> read(StoredStation stored, GeoPoint place, LocalDate today) {
		Station station = stored.station();
		return StationGround.read(station, this.climate.climate(stored).soil(), today,
				LapseRate.colderBy(place, station.point()));
	}

}
