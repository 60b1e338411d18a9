package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.PlaceDay;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.PlaceNow;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Station;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.state.NowFromRecords;
import org.leafward.climate.core.water.NearStation;
import org.leafward.climate.core.water.Vapour;

/**
 * Goes through past seasons of a station day by day, as if each were today: only days
 * before it are known, the markers come from the years before the first season, and the
 * days that really followed are taken for its forecast. So proposals come here as with
 * forecasts that are always right. Records have no humidity; the night's minimum stands
 * for the dew point (FAO-56, equation 48), which is too moist in dry air.
 */
final class Replay {

	private static final int AHEAD = 4;

	private final Station station;

	private final DailyRecord record;

	private final List<NearStation> near;

	private final PlaceMarkers markers;

	private final int from;

	private final int to;

	/** A proposal that would have come. */
	record Proposed(WatchCondition condition, LocalDate day, Hit hit) {
	}

	Replay(Station station, DailyRecord record, int from, int to) {
		this.station = station;
		this.record = record;
		this.from = from;
		this.to = to;
		this.near = List.of(NearStation.at(station.point(), new StationClimate(station, record)));
		StationClimate before = new StationClimate(station, before(record, LocalDate.of(from, 1, 1)));
		this.markers = new BlendedPlace(station.point().hemisphere(), Neighbour.choose(Place.of(station.point()),
				NormalsPeriod.LATEST_30, List.of(station), (one) -> Optional.of(before), 1));
	}

	private static DailyRecord before(DailyRecord record, LocalDate end) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (Element element : Element.values()) {
			for (LocalDate day = end.minusYears(32); day.isBefore(end); day = day.plusDays(1)) {
				short value = record.value(element, day);
				if (value != DailyRecord.MISSING) {
					builder.set(element, day, value);
				}
			}
		}
		return builder.build();
	}

	List<Proposed> run(List<WatchCondition> conditions) {
		List<Proposed> proposed = new ArrayList<>();
		Map<String, LocalDate> again = new HashMap<>();
		for (LocalDate day = LocalDate.of(this.from, 1, 1); day.getYear() <= this.to; day = day.plusDays(1)) {
			Scene scene = on(day);
			for (WatchCondition condition : conditions) {
				Limits limits = new Limits(condition, "", "", List.of());
				LocalDate free = again.get(condition.code());
				if (free != null && day.isBefore(free)) {
					continue;
				}
				Hit hit = Watch.look(condition, limits, scene).hit();
				if (hit != null) {
					proposed.add(new Proposed(condition, day, hit));
					again.put(condition.code(), day.plusDays((long) limits.value(WatchCondition.COOL_DOWN)));
				}
			}
		}
		return proposed;
	}

	Scene on(LocalDate day) {
		List<PlaceDay> forecast = new ArrayList<>();
		for (int ahead = 0; ahead < AHEAD; ahead++) {
			forecast.add(day(day.plusDays(ahead)));
		}
		PlaceNow now = NowFromRecords.of(this.station.point(), day, this.near, forecast);
		return new Scene(now, (key, season) -> this.markers.on(key, season).map(SeasonMarker::date));
	}

	private PlaceDay day(LocalDate day) {
		Double low = value(Element.TMIN, day);
		Double high = value(Element.TMAX, day);
		Double humidity = (low != null && high != null && high >= low)
				? 100 * Vapour.saturation(low) / Vapour.saturation(high) : null;
		return new PlaceDay(day, low, high, value(Element.PRCP, day), null, null, value(Element.AWND, day), humidity,
				null, null);
	}

	private @Nullable Double value(Element element, LocalDate day) {
		short value = this.record.value(element, day);
		return (value == DailyRecord.MISSING) ? null : value / 10.0;
	}

}
