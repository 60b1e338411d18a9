package org.leafward.advisories.dates;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Station;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Service;

/**
 * Season markers of counties: those of a place well inside at a usual height, kept for an
 * hour, since strangers may ask for them.
 */
@Service
public class CountyDates {

	private static final Duration KEPT = Duration.ofHours(1);

	/** Stations named as a source. */
	private static final int MOST_STATIONS = 4;

	private final LocalClimate climate;

	private final Stations stations;

	private final Regions regions;

	private final Clock clock;

	private final Map<String, Known> known = new ConcurrentHashMap<>();

	CountyDates(LocalClimate climate, Stations stations, Regions regions, Clock clock) {
		this.climate = climate;
		this.stations = stations;
		this.regions = regions;
		this.clock = clock;
	}

	/** The dates of a county, and when they were worked out. */
	private record Known(Instant at, List<CountyDate> dates) {
	}

	/**
	 * All markers of a county.
	 * @param county the county
	 * @return in the order of the year
	 */
	public List<CountyDate> of(County county) {
		Instant now = this.clock.instant();
		Known before = this.known.get(county.code());
		if (before != null && now.isBefore(before.at().plus(KEPT)) && !now.isBefore(before.at())) {
			return before.dates();
		}
		// One at a time for each county: the first question of all draws statistics.
		return this.known
			.compute(county.code(),
					(code, there) -> (there != null && there != before) ? there : new Known(now, look(county)))
			.dates();
	}

	private List<CountyDate> look(County county) {
		int season = LocalDate.ofInstant(this.clock.instant(), county.zone()).getYear();
		Place place = new Place(county.somewhere(), Microclimate.NONE);
		return this.climate.answer(place, (markers) -> Arrays.stream(SeasonDate.values()).map((one) -> {
			MarkerKey key = one.key();
			Optional<SeasonMarker> found = markers.on(key, season);
			return found
				.map((marker) -> new CountyDate(one, county, marker.earliest(), marker.date(), marker.latest(), null))
				.orElseGet(() -> new CountyDate(one, county, null, null, null, markers.whyMissing(key)));
		}).toList());
	}

	/**
	 * A marker in all counties.
	 * @param marker which
	 * @return by name of the county
	 */
	public List<CountyDate> of(SeasonDate marker) {
		List<CountyDate> all = new ArrayList<>();
		for (County county : this.regions.counties()) {
			of(county).stream().filter((one) -> one.marker() == marker).forEach(all::add);
		}
		return all;
	}

	/**
	 * Names of the nearest stations of some counties.
	 * @param counties the counties
	 * @return without repeats, at most {@value #MOST_STATIONS}
	 */
	public List<String> sources(List<County> counties) {
		Set<String> names = new LinkedHashSet<>();
		for (County county : counties) {
			GeoPoint point = county.somewhere();
			this.stations.near(point, LocalClimate.STATION_RADIUS_KILOMETRES)
				.stream()
				.limit(2)
				.map(Station::name)
				.forEach(names::add);
		}
		return names.stream().limit(MOST_STATIONS).toList();
	}

}
