package org.leafward.register;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Station;
import org.leafward.climate.Stations;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Component;

/**
 * Reads a place that somebody gives: a county, coordinates, or a point of the map. Height
 * and time zone come from the county and the stations as far as these tell them.
 */
@Component
public class PlaceReader {

	/** Exact: the international foot (NIST SP 811, B.6). */
	private static final double METRES_PER_FOOT = 0.3048;

	/** About ten metres; a map is not more exact. */
	private static final int DECIMALS = 4;

	/** Widths of the maps, one of which is seen; px. */
	private static final List<Integer> MAPS = List.of(280, 344, 560);

	/** The name of a map with its width, and what a browser adds for the way across. */
	private static final Pattern CLICK = Pattern.compile("map(\\d{3,4})\\.x");

	private final Regions regions;

	private final Stations stations;

	PlaceReader(Regions regions, Stations stations) {
		this.regions = regions;
		this.stations = stations;
	}

	/**
	 * A map to point at.
	 *
	 * @param width px
	 * @param height px
	 */
	public record Picked(int width, int height) {
	}

	/**
	 * The counties to choose from.
	 * @return code and name, by name; empty when this server knows none
	 */
	public List<Choice> counties() {
		return this.regions.counties().stream().map((one) -> new Choice(one.code(), one.name())).toList();
	}

	/**
	 * The code of a county.
	 * @param name its name
	 * @param region its state or province
	 * @return empty when there is no such county here
	 */
	public String code(String name, String region) {
		return this.regions.counties()
			.stream()
			.filter((one) -> one.name().equalsIgnoreCase(name) && one.region().equals(region))
			.map(County::code)
			.findFirst()
			.orElse("");
	}

	/**
	 * The maps to point at, one for each width of a screen.
	 * @return empty without counties
	 */
	public List<Picked> maps() {
		return MAPS.stream()
			.flatMap((width) -> this.regions.map(width).stream())
			.map((map) -> new Picked(map.width(), map.height()))
			.toList();
	}

	/**
	 * The units that a height may be given in.
	 * @return metres first
	 */
	public static List<Choice> units() {
		return List.of(new Choice("m", "metres"), new Choice("ft", "feet"));
	}

	/**
	 * Whether somebody pointed at a map.
	 * @param parameters those of the request
	 * @return true for any map
	 */
	public static boolean pointed(Map<String, String> parameters) {
		return parameters.keySet().stream().anyMatch((name) -> CLICK.matcher(name).matches());
	}

	/**
	 * What somebody pointed at.
	 * @param parameters those of the request
	 * @return the coordinates, without a height; what they had before can be left
	 * @throws BadInput when it is off the map, or a key was pressed on it
	 */
	public GivenPlace clicked(Map<String, String> parameters) {
		for (Map.Entry<String, String> one : parameters.entrySet()) {
			Matcher matcher = CLICK.matcher(one.getKey());
			if (matcher.matches()) {
				int width = Integer.parseInt(matcher.group(1));
				String down = parameters.get("map%d.y".formatted(width));
				GeoPoint point = this.regions.map(width)
					.flatMap((map) -> map.at(Given.whole("map", one.getValue()), Given.whole("map", down)))
					.orElseThrow(() -> new BadInput("that is no place on the map", "county",
							"point at your garden, or choose its county from the list"));
				return new GivenPlace("", String.valueOf(rounded(point.latitude())),
						String.valueOf(rounded(point.longitude())), "", "", "");
			}
		}
		throw new BadInput("nobody pointed at the map", "county", "choose a county");
	}

	/**
	 * Reads a place.
	 * @param given what was told
	 * @return the place
	 * @throws BadInput by the names of its parts, when it can't be used or too little is
	 * told
	 */
	public FoundPlace read(GivenPlace given) {
		if (blank(given.latitude()) && blank(given.longitude())) {
			if (blank(given.county())) {
				throw new BadInput("no place is chosen yet", "county",
						"choose a county, point at the map, or give coordinates");
			}
			County county = this.regions.find(String.valueOf(given.county()))
				.orElseThrow(() -> new BadInput("there is no county '%s' here".formatted(given.county()), "county",
						"choose one from the list, or give coordinates"));
			return place(rounded(county.somewhere()), given.zone());
		}
		Findings all = new Findings();
		Supplier<Double> north = all.read(() -> Given.number("latitude", given.latitude(), "degrees north"));
		Supplier<Double> east = all.read(() -> Given.number("longitude", given.longitude(), "degrees east"));
		Supplier<Optional<Double>> height = all.read(() -> height(given.elevation(), given.unit()));
		GeoPoint level = all.give(() -> new GeoPoint(north.get(), east.get(), 0));
		double metres = height.get().orElseGet(() -> usualHeight(level));
		return place(withHeight(level, metres), given.zone());
	}

	private FoundPlace place(GeoPoint point, @Nullable String zone) {
		Optional<County> county = this.regions.countyAt(point);
		List<Station> near = this.stations.near(point, LocalClimate.STATION_RADIUS_KILOMETRES);
		return new FoundPlace(point, county.map(County::name).orElse(""), county.map(County::region).orElse(""),
				county.map(County::zone).orElseGet(() -> zone(zone, near)), !near.isEmpty());
	}

	/**
	 * Outside of all counties: as told; else the one that all counties share, else that
	 * of the county in which the nearest station lies.
	 */
	private ZoneId zone(@Nullable String given, List<Station> near) {
		if (!blank(given)) {
			return Given.zone("zone", given);
		}
		List<ZoneId> zones = this.regions.counties().stream().map(County::zone).distinct().toList();
		if (zones.size() == 1) {
			return zones.get(0);
		}
		return near.stream()
			.flatMap((station) -> this.regions.countyAt(station.point()).stream())
			.map(County::zone)
			.findFirst()
			.orElseThrow(() -> new BadInput("the place lies in no county of ours, so its time zone isn't known", "zone",
					"write it like America/New_York"));
	}

	/**
	 * A height as people write it.
	 * @param elevation the figure; empty for not told
	 * @param unit ft for feet, m or nothing for metres
	 * @return metres above sea level; empty when it wasn't told
	 * @throws BadInput at {@code elevation} when it is no number, at {@code unit} when it
	 * is another
	 */
	public static Optional<Double> height(@Nullable String elevation, @Nullable String unit) {
		if (blank(elevation)) {
			return Optional.empty();
		}
		double given = Given.number("elevation", elevation, "metres or feet above sea level");
		if (!blank(unit) && !"m".equals(unit) && !"ft".equals(unit)) {
			throw new BadInput("heights are not read in that unit", "unit", "choose m or ft");
		}
		return Optional.of("ft".equals(unit) ? given * METRES_PER_FOOT : given);
	}

	private double usualHeight(GeoPoint level) {
		return this.regions.countyAt(level)
			.map(County::elevationMetres)
			.or(() -> this.stations.near(level, LocalClimate.STATION_RADIUS_KILOMETRES)
				.stream()
				.findFirst()
				.map(Station::point)
				.map(GeoPoint::elevationMetres))
			.orElseThrow(() -> new BadInput("neither a county nor a weather station tells how high that is",
					"elevation", "give the height above sea level"));
	}

	private static GeoPoint withHeight(GeoPoint level, double metres) {
		try {
			return new GeoPoint(level.latitude(), level.longitude(), metres);
		}
		catch (BadInput ex) {
			throw new BadInput(ex.what(), "elevation", ex.mend());
		}
	}

	private static GeoPoint rounded(GeoPoint point) {
		return new GeoPoint(rounded(point.latitude()), rounded(point.longitude()), point.elevationMetres());
	}

	private static double rounded(double degrees) {
		return BigDecimal.valueOf(degrees).setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue();
	}

	private static boolean blank(@Nullable String text) {
		return text == null || text.isBlank();
	}

}
