package org.leafward.climate.core;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Microclimate;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;

/**
 * A station that speaks for a site.
 *
 * @param climate the station
 * @param normals the seasons that were asked for
 * @param period the seasons of them that are used
 * @param microclimate what the nights at the site are like
 * @param distance km
 * @param higherBy how much higher the site lies than the station, m
 * @param colderBy how much colder it is there for that, °C
 * @param weight inverse square of the effective distance, km⁻²
 */
public record Neighbour(StationClimate climate, NormalsPeriod normals, SeasonPeriod period, Microclimate microclimate,
		double distance, double higherBy, double colderBy, double weight) {

	/** Farthest station that is asked, km. */
	public static final double FARTHEST = 150;

	/** Most stations that are asked. */
	public static final int MOST = 3;

	/** A hundred metres of height count like so many km; our choice. */
	private static final double KILOMETRES_PER_HUNDRED_METRES = 10;

	/** Effective distances below are all the same, km. */
	private static final double NEAREST = 1;

	/** Stations looked into at most, when many have too short a record. */
	private static final int MOST_OPENED = 12;

	/**
	 * Chooses the nearest stations by effective distance, which counts height too.
	 * @param site the site
	 * @param stations all that are known
	 * @param open gets a station's record; asked for as few as possible
	 * @return up to three within 150 km whose record covers ten seasons, nearest first
	 */
	public static List<Neighbour> choose(GeoPoint site, List<Station> stations,
			Function<Station, Optional<StationClimate>> open) {
		return choose(Place.of(site), NormalsPeriod.LATEST_30, stations, open, MOST);
	}

	/**
	 * Chooses the nearest stations by effective distance, which counts height too.
	 * @param place the site and what its nights are like
	 * @param normals which seasons are used
	 * @param stations all that are known
	 * @param open gets a station's record; asked for as few as possible
	 * @param most stations wanted, 1 to 12
	 * @return up to that many within 150 km whose record covers ten of the seasons,
	 * nearest first
	 */
	public static List<Neighbour> choose(Place place, NormalsPeriod normals, List<Station> stations,
			Function<Station, Optional<StationClimate>> open, int most) {
		GeoPoint site = place.point();
		List<Station> near = stations.stream()
			.filter((station) -> site.distanceKilometres(station.point()) <= FARTHEST)
			.sorted(Comparator.comparingDouble((Station station) -> effectiveDistance(site, station.point()))
				.thenComparing((station) -> station.id().value()))
			.limit(MOST_OPENED)
			.toList();
		List<Neighbour> chosen = new ArrayList<>();
		for (Station station : near) {
			if (chosen.size() < most) {
				open.apply(station).flatMap((climate) -> of(place, normals, climate)).ifPresent(chosen::add);
			}
		}
		return List.copyOf(chosen);
	}

	private static Optional<Neighbour> of(Place place, NormalsPeriod normals, StationClimate climate) {
		GeoPoint site = place.point();
		GeoPoint point = climate.station().point();
		return climate.period(normals, site.hemisphere())
			.filter((period) -> period.seasons() >= Sample.FEWEST_SEASONS)
			.map((period) -> new Neighbour(climate, normals, period, place.microclimate(),
					site.distanceKilometres(point), site.elevationMetres() - point.elevationMetres(),
					LapseRate.colderBy(site, point), 1 / Math.pow(effectiveDistance(site, point), 2)));
	}

	/**
	 * How much colder the site is than the station in what an event hangs on: the
	 * microclimate counts by the share of the night minima, the height for everything.
	 * @param kind which event
	 * @return °C, negative when the site is warmer
	 */
	public double colderBy(MarkerKind kind) {
		return colderBy(kind.nightShare());
	}

	double colderBy(double nightShare) {
		return this.colderBy - nightShare * this.microclimate.minimumOffset();
	}

	/** The share of years with a freeze at the site, as this station has it. */
	OptionalDouble yearsWithFreeze(TemperatureThreshold threshold, Hemisphere hemisphere) {
		return Stream.of(MarkerKind.LAST_SPRING_FREEZE, MarkerKind.FIRST_FALL_FREEZE)
			.map((kind) -> this.climate.sample(kind, threshold, colderBy(kind), hemisphere, this.period))
			.flatMapToDouble((sample) -> sample.share().stream())
			.max();
	}

	/**
	 * Distance with the difference in height added to it.
	 * @param site one point
	 * @param station the other point
	 * @return km, 1 or more
	 */
	public static double effectiveDistance(GeoPoint site, GeoPoint station) {
		double height = Math.abs(site.elevationMetres() - station.elevationMetres());
		return Math.max(NEAREST, site.distanceKilometres(station) + height / 100 * KILOMETRES_PER_HUNDRED_METRES);
	}

}
