package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.leafward.climate.Station;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.LapseRate;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.GeoPoint;

/**
 * A station that lends its daily weather to a place.
 *
 * @param climate the station
 * @param distance km
 * @param colderBy how much colder the place is for its height, °C
 */
public record NearStation(StationClimate climate, double distance, double colderBy) {

	/** Most stations whose days are used. */
	public static final int MOST = 3;

	/** Stations looked into at most, when many have no day of the period. */
	private static final int MOST_OPENED = 12;

	/**
	 * Chooses the nearest stations by the effective distance that the season markers use
	 * too.
	 * @param place the place
	 * @param stations all that are known around it
	 * @param open gets a station's record; asked for as few as possible
	 * @param from first day
	 * @param to last day
	 * @return up to three that have any value in the period, nearest first
	 */
	public static List<NearStation> choose(GeoPoint place, List<Station> stations,
			Function<Station, Optional<StationClimate>> open, LocalDate from, LocalDate to) {
		List<Station> near = stations.stream()
			.sorted(Comparator.comparingDouble((Station station) -> Neighbour.effectiveDistance(place, station.point()))
				.thenComparing((station) -> station.id().value()))
			.limit(MOST_OPENED)
			.toList();
		List<NearStation> chosen = new ArrayList<>();
		for (Station station : near) {
			if (chosen.size() < MOST) {
				open.apply(station)
					.filter((climate) -> hasAny(climate.record(), from, to))
					.ifPresent((climate) -> chosen.add(at(place, climate)));
			}
		}
		return List.copyOf(chosen);
	}

	/**
	 * A station as it stands to a place.
	 * @param place the place
	 * @param climate the station
	 * @return the station, near or not
	 */
	public static NearStation at(GeoPoint place, StationClimate climate) {
		GeoPoint point = climate.station().point();
		return new NearStation(climate, place.distanceKilometres(point), LapseRate.colderBy(place, point));
	}

	private static boolean hasAny(DailyRecord record, LocalDate from, LocalDate to) {
		// Whoever asks for all that there is gives centuries.
		long first = Math.max(from.toEpochDay(), record.firstDay().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE));
		long last = Math.min(to.toEpochDay(), record.lastDay().map(LocalDate::toEpochDay).orElse(Long.MIN_VALUE));
		for (long day = first; day <= last; day++) {
			boolean temperatures = record.value(Element.TMIN, day) != DailyRecord.MISSING
					&& record.value(Element.TMAX, day) != DailyRecord.MISSING;
			if (temperatures || record.value(Element.PRCP, day) != DailyRecord.MISSING) {
				return true;
			}
		}
		return false;
	}

}
