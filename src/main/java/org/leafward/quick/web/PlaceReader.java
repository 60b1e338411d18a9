package org.leafward.quick.web;

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
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Component;

/** Reads a place: a county, coordinates, or a point of the map. */
@Component
class PlaceReader {

	private static final double METRES_PER_FOOT = 0.3048;

	/** About ten metres; a map is not more exact. */
	private static final int DECIMALS = 4;

	/** The name of a map with its width, and what a browser adds for the way across. */
	private static final Pattern CLICK = Pattern.compile("map(\\d{3,4})\\.x");

	private final Regions regions;

	private final Stations stations;

	PlaceReader(Regions regions, Stations stations) {
		this.regions = regions;
		this.stations = stations;
	}

	/**
	 * Whether somebody pointed at a map.
	 * @param parameters those of the request
	 * @return true for any map
	 */
	static boolean pointed(Map<String, String> parameters) {
		return parameters.keySet().stream().anyMatch((name) -> CLICK.matcher(name).matches());
	}

	/**
	 * What somebody pointed at.
	 * @param parameters those of the request
	 * @return the point, without its height
	 * @throws BadInput when it is off the map, or a key was pressed on it
	 */
	GeoPoint clicked(Map<String, String> parameters) {
		for (Map.Entry<String, String> one : parameters.entrySet()) {
			Matcher matcher = CLICK.matcher(one.getKey());
			if (matcher.matches()) {
				int width = Integer.parseInt(matcher.group(1));
				String down = parameters.get("map%d.y".formatted(width));
				return this.regions.map(width)
					.flatMap((map) -> map.at(Given.whole("map", one.getValue()), Given.whole("map", down)))
					.orElseThrow(() -> new BadInput("that is no place on the map", "county",
							"point at your garden, or choose its county from the list"));
			}
		}
		throw new BadInput("nobody pointed at the map", "county", "choose a county");
	}

	/**
	 * Reads the place of a form.
	 * @param form the form
	 * @return the place
	 * @throws BadInput by the names of the form's fields
	 */
	QuickPlace read(QuickForm form) {
		if (blank(form.latitude()) && blank(form.longitude())) {
			if (blank(form.county())) {
				throw new BadInput("no place is chosen yet", "county",
						"choose a county, point at the map, or give coordinates");
			}
			County county = this.regions.find(String.valueOf(form.county()))
				.orElseThrow(() -> new BadInput("there is no county '%s' here".formatted(form.county()), "county",
						"choose one from the list, or give coordinates"));
			return place(rounded(county.somewhere()), form.zone());
		}
		Findings all = new Findings();
		Supplier<Double> north = all.read(() -> Given.number("latitude", form.latitude(), "degrees north"));
		Supplier<Double> east = all.read(() -> Given.number("longitude", form.longitude(), "degrees east"));
		Supplier<Optional<Double>> height = all.read(() -> height(form));
		GeoPoint level = all.give(() -> new GeoPoint(north.get(), east.get(), 0));
		double metres = height.get().orElseGet(() -> usualHeight(level));
		return place(withHeight(level, metres), form.zone());
	}

	/**
	 * Reads a point of the map.
	 * @param level the point, without its height
	 * @param form the rest
	 * @return the place
	 */
	QuickPlace read(GeoPoint level, QuickForm form) {
		return place(rounded(withHeight(level, usualHeight(level))), form.zone());
	}

	private QuickPlace place(GeoPoint point, @Nullable String zone) {
		Optional<County> county = this.regions.countyAt(point);
		boolean told = !this.stations.near(point, LocalClimate.STATION_RADIUS_KILOMETRES).isEmpty();
		return new QuickPlace(point, county.map(County::name).orElse(""), county.map(County::region).orElse(""),
				county.map(County::zone).orElseGet(() -> zone(zone)), told);
	}

	/** Outside of all counties; where all of them share a zone, it is that one. */
	private ZoneId zone(@Nullable String given) {
		List<ZoneId> zones = this.regions.counties().stream().map(County::zone).distinct().toList();
		if (blank(given) && zones.size() == 1) {
			return zones.get(0);
		}
		if (blank(given)) {
			throw new BadInput("the place lies in no county of ours, so its time zone isn't known", "zone",
					"write it like America/New_York");
		}
		return Given.zone("zone", given);
	}

	private static Optional<Double> height(QuickForm form) {
		if (blank(form.elevation())) {
			return Optional.empty();
		}
		double given = Given.number("elevation", form.elevation(), "metres or feet above sea level");
		return Optional.of("ft".equals(form.unit()) ? given * METRES_PER_FOOT : given);
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
