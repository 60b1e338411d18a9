package org.leafward.climate;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.climate.store.StationTable;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The weather stations that are known. */
@Service
public class Stations {

	/** Largest page. */
	public static final int MOST_ON_PAGE = 200;

	private static final int LAST_PAGE = 100_000;

	private static final int LONGEST_NAME = 100;

	/**
	 * Length of a degree of latitude, km, rounded down so that the strip is not too
	 * small.
	 */
	private static final double KILOMETRES_PER_DEGREE = 110.5;

	private static final double HALF_CIRCLE = 180;

	private final StationTable table;

	Stations(StationTable table) {
		this.table = table;
	}

	/**
	 * Registers a station, or changes what is known of it; its record stays.
	 * @param station the station
	 * @return whether it is new
	 * @throws BadInput when the name is blank, longer than 100 characters or not one line
	 */
	@Transactional
	public boolean register(Station station) {
		if (station.name().isBlank() || station.name().length() > LONGEST_NAME) {
			throw new BadInput("the name has %d characters".formatted(station.name().strip().length()), "name",
					"give a name of 1 to %d characters".formatted(LONGEST_NAME));
		}
		Given.line("name", station.name());
		return this.table.save(station);
	}

	public Optional<Station> find(StationId id) {
		return this.table.find(id).map(StoredStation::station);
	}

	/**
	 * Lists stations.
	 * @param page number of the page, from 0
	 * @param size 1 to 200
	 * @return the page, empty behind the last one
	 * @throws BadInput when page or size is out of bounds
	 */
	public StationPage page(int page, int size) {
		if (page < 0 || page > LAST_PAGE) {
			throw new BadInput("page %d is outside 0 to %d".formatted(page, LAST_PAGE), "page", "begin with page 0");
		}
		if (size < 1 || size > MOST_ON_PAGE) {
			throw new BadInput("size %d is outside 1 to %d".formatted(size, MOST_ON_PAGE), "size",
					"ask for up to %d stations at once".formatted(MOST_ON_PAGE));
		}
		List<Station> stations = this.table.page(page * size, size).stream().map(StoredStation::station).toList();
		return new StationPage(stations, page, size, this.table.count());
	}

	/**
	 * The stations around a point.
	 * @param point the point
	 * @param kilometres greatest distance, heights ignored
	 * @return nearest first
	 */
	public List<Station> near(GeoPoint point, double kilometres) {
		return storedNear(point, kilometres).stream().map(StoredStation::station).toList();
	}

	/** The stations that may speak for a place. */
	List<StoredStation> around(GeoPoint point) {
		return storedNear(point, LocalClimate.STATION_RADIUS_KILOMETRES);
	}

	/** The stations that may speak for some places, read with one question. */
	Map<GeoPoint, List<StoredStation>> around(Collection<GeoPoint> points) {
		double kilometres = LocalClimate.STATION_RADIUS_KILOMETRES;
		List<StoredStation> all = this.table
			.between(points.stream().distinct().map((point) -> box(point, kilometres)).toList());
		Map<GeoPoint, List<StoredStation>> around = new HashMap<>();
		points.forEach((point) -> around.computeIfAbsent(point, (key) -> sorted(all, key, kilometres)));
		return around;
	}

	List<StoredStation> storedNear(GeoPoint point, double kilometres) {
		return sorted(this.table.between(List.of(box(point, kilometres))), point, kilometres);
	}

	private static List<StoredStation> sorted(List<StoredStation> stations, GeoPoint point, double kilometres) {
		record Far(StoredStation stored, double kilometres) {
		}
		return stations.stream()
			.map((stored) -> new Far(stored, point.distanceKilometres(stored.station().point())))
			.filter((far) -> far.kilometres() <= kilometres)
			.sorted(Comparator.comparingDouble(Far::kilometres)
				.thenComparing((far) -> far.stored().station().id().value()))
			.map(Far::stored)
			.toList();
	}

	private static StationTable.Box box(GeoPoint point, double kilometres) {
		double degrees = kilometres / KILOMETRES_PER_DEGREE;
		double wide = degreesOfLongitude(point.latitude(), degrees);
		boolean around = wide >= HALF_CIRCLE;
		return new StationTable.Box(point.latitude() - degrees, point.latitude() + degrees,
				around ? -HALF_CIRCLE : wrapped(point.longitude() - wide),
				around ? HALF_CIRCLE : wrapped(point.longitude() + wide));
	}

	/**
	 * How far east and west a circle reaches; more than everywhere around a pole.
	 * @param latitude of its middle
	 * @param radius in degrees of latitude
	 * @return degrees of longitude, rounded up a little
	 */
	private static double degreesOfLongitude(double latitude, double radius) {
		double sine = Math.sin(Math.toRadians(radius)) / Math.cos(Math.toRadians(latitude));
		boolean pole = radius >= HALF_CIRCLE / 2 || Math.abs(latitude) + radius >= HALF_CIRCLE / 2;
		return (pole || sine >= 1) ? HALF_CIRCLE : Math.toDegrees(Math.asin(sine)) * 1.001;
	}

	private static double wrapped(double longitude) {
		if (longitude < -HALF_CIRCLE) {
			return longitude + 2 * HALF_CIRCLE;
		}
		return (longitude > HALF_CIRCLE) ? longitude - 2 * HALF_CIRCLE : longitude;
	}

}
