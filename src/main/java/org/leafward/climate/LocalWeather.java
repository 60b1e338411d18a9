package org.leafward.climate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.water.NearStation;
import org.leafward.climate.core.water.PlaceWeather;
import org.leafward.climate.store.StationTable;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Service;

/**
 * The daily weather that was observed around a place, with the evapotranspiration made
 * from it.
 */
@Service
public class LocalWeather {

	/** Longest period that is answered at once, days: three years. */
	public static final int MOST_DAYS = 1096;

	private final Stations stations;

	private final StationTable table;

	private final LocalClimate climate;

	LocalWeather(Stations stations, StationTable table, LocalClimate climate) {
		this.stations = stations;
		this.table = table;
		this.climate = climate;
	}

	/**
	 * The weather of a place, from up to three stations within 150 km.
	 * @param place the place with its height
	 * @param from first day
	 * @param to last day
	 * @return one entry for each day, known or not
	 * @throws BadInput when the period is no period, or longer than three years
	 */
	public WeatherSeries at(GeoPoint place, LocalDate from, LocalDate to) {
		check(from, to);
		return unchecked(place, from, to);
	}

	/**
	 * The wind around a place, from the nearest of the same stations that measured it.
	 * @param place the place
	 * @param from first day
	 * @param to last day
	 * @return mean speed of the day, m/s, for the days on which one did
	 * @throws BadInput when the period is no period, or longer than three years
	 */
	public Map<LocalDate, Double> windAt(GeoPoint place, LocalDate from, LocalDate to) {
		check(from, to);
		return OneVersion.of(() -> {
			List<NearStation> stations = near(place, from, to);
			Map<LocalDate, Double> wind = new HashMap<>();
			for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
				for (NearStation station : stations) {
					short value = station.climate().record().value(Element.AWND, day);
					if (value != DailyRecord.MISSING) {
						wind.putIfAbsent(day, value / 10.0);
					}
				}
			}
			return wind;
		});
	}

	WeatherSeries unchecked(GeoPoint place, LocalDate from, LocalDate to) {
		return unchecked(place, this.stations::around, from, to);
	}

	WeatherSeries unchecked(GeoPoint place, StationsAround around, LocalDate from, LocalDate to) {
		return OneVersion.of(around, () -> PlaceWeather.of(place, near(place, around, from, to), from, to));
	}

	/**
	 * The stations whose days of a period are used, nearest first. Ask, and use their
	 * records, within one {@link OneVersion}.
	 */
	List<NearStation> near(GeoPoint place, LocalDate from, LocalDate to) {
		return near(place, this.stations::around, from, to);
	}

	private List<NearStation> near(GeoPoint place, StationsAround around, LocalDate from, LocalDate to) {
		Map<StationId, StoredStation> near = around.of(place)
			.stream()
			.filter((stored) -> stored.recordVersion() > 0)
			.collect(Collectors.toMap((stored) -> stored.station().id(), (stored) -> stored));
		List<Station> candidates = near.values().stream().map(StoredStation::station).toList();
		return NearStation.choose(place, candidates,
				(station) -> Optional.ofNullable(near.get(station.id())).map(this.climate::climate), from, to);
	}

	/**
	 * The weather at a station, from its own record only.
	 * @param id which station
	 * @param from first day
	 * @param to last day
	 * @return one entry for each day, known or not
	 * @throws NotThere when the station isn't registered
	 * @throws BadInput when the period is no period, or longer than three years
	 */
	public WeatherSeries ofStation(StationId id, LocalDate from, LocalDate to) {
		check(from, to);
		return OneVersion.of(() -> {
			StoredStation stored = this.table.find(id).orElseThrow(() -> new NotThere("station " + id.value()));
			GeoPoint place = stored.station().point();
			return PlaceWeather.of(place, List.of(NearStation.at(place, this.climate.climate(stored))), from, to);
		});
	}

	static void check(LocalDate from, LocalDate to) {
		if (from.getYear() < DailyRecord.FIRST_YEAR || to.getYear() > DailyRecord.LAST_YEAR || to.isBefore(from)) {
			throw new BadInput("%s to %s is no period".formatted(from, to), "from, to",
					"give two days from %d to %d, the earlier one first".formatted(DailyRecord.FIRST_YEAR,
							DailyRecord.LAST_YEAR));
		}
		long days = ChronoUnit.DAYS.between(from, to) + 1;
		if (days > MOST_DAYS) {
			throw new BadInput("%d days are more than %d".formatted(days, MOST_DAYS), "from, to",
					"ask for at most three years at a time");
		}
	}

}
