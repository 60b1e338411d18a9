package org.leafward.regions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leafward.measure.GeoPoint;
import org.leafward.pages.Svg;
import org.leafward.regions.core.Area;
import org.leafward.regions.core.Extent;
import org.leafward.regions.core.MapProjection;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/** Draws a map: outlines, names where they have room, towns, a measure. */
final class RegionMapDrawing {

	/** Width of a letter of a name, px at 13 px, generous. */
	private static final double LETTER = 7.2;

	/** A line is not drawn in more detail than this, px. */
	private static final double DETAIL = 0.6;

	private static final int MOST_TOWNS = 60;

	/** Kilometres of an international mile, exact by definition. */
	private static final double KM_PER_MILE = 1.609344;

	/** A page has one map with dots at most. */
	private static final String DOTS = "county-dots";

	private final RegionMap map;

	private final MapProjection on;

	/** How far from the middle a name may stand, px. */
	private static final int[] AWAY = { 4, 24, -16, 44, -36 };

	private final Labels labels = new Labels();

	private final Svg svg = new Svg();

	RegionMapDrawing(RegionMap map) {
		this.map = map;
		this.on = map.projection();
	}

	String svg(String style) {
		int height = this.map.height();
		this.svg.open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "region-map", "viewBox",
				"0 0 %d %d".formatted(this.map.width(), height), "width", this.map.width(), "height", height, "role",
				"img", "aria-label", words());
		if (!style.isEmpty()) {
			this.svg.element("style", style);
		}
		if (!this.map.dotted().isEmpty()) {
			dots();
		}
		this.map.counties().forEach(this::outline);
		// Names last, so that no neighbour's line runs over them.
		this.map.towns().stream().limit(MOST_TOWNS).forEach(this::town);
		this.map.counties().forEach(this::name);
		measure();
		this.map.chosen().ifPresent(this::mark);
		return this.svg.close().toString();
	}

	private String words() {
		List<String> names = this.map.counties().stream().map(County::name).toList();
		String all = (names.size() > 12) ? "Map of %d counties".formatted(names.size())
				: "Map of " + String.join(", ", names);
		return this.map.dotted().isEmpty() ? all
				: all + ". Dotted: "
						+ this.map.counties()
							.stream()
							.filter((one) -> this.map.dotted().contains(one.code()))
							.map(County::name)
							.collect(Collectors.joining(", "));
	}

	/** Dots of a size, whatever the width of the map. */
	private void dots() {
		this.svg.open("defs");
		this.svg.open("pattern", "id", DOTS, "patternUnits", "userSpaceOnUse", "width", 8, "height", 8);
		this.svg.empty("circle", "class", "county-dot", "cx", 2, "cy", 2, "r", 1.3);
		this.svg.empty("circle", "class", "county-dot", "cx", 6, "cy", 6, "r", 1.3);
		this.svg.close();
		this.svg.close();
	}

	private void outline(County county) {
		StringBuilder path = new StringBuilder();
		county.area().polygons().stream().flatMap(Area.Polygon::rings).forEach((ring) -> line(ring, path));
		this.svg.open("path", "class", "county", "fill-rule", "evenodd", "d", path.toString());
		this.svg.element("title", county.name());
		this.svg.close();
		if (this.map.dotted().contains(county.code())) {
			this.svg.empty("path", "class", "county-dotted", "fill", "url(#" + DOTS + ")", "fill-rule", "evenodd", "d",
					path.toString());
		}
	}

	/** Points that the eye can't tell apart from the one before are left out. */
	private void line(Ring ring, StringBuilder path) {
		double lastX = Double.NaN;
		double lastY = Double.NaN;
		for (Position one : ring.positions()) {
			double x = this.on.x(one.longitude());
			double y = this.on.y(one.latitude());
			if (Math.hypot(x - lastX, y - lastY) < DETAIL) {
				continue;
			}
			path.append(Double.isNaN(lastX) ? 'M' : 'L').append(String.format(Locale.ROOT, "%.1f %.1f", x, y));
			lastX = x;
			lastY = y;
		}
		path.append('Z');
	}

	/** Near the middle of the county, where no town stands. */
	private void name(County county) {
		Extent extent = county.area().extent();
		if (county.name().length() * LETTER > this.on.x(extent.east()) - this.on.x(extent.west())) {
			return;
		}
		Position inside = county.area().inside();
		double x = this.on.x(inside.longitude());
		for (int away : AWAY) {
			double y = this.on.y(inside.latitude()) + away;
			if (this.labels.take(x - county.name().length() * LETTER / 2, y - 12, county.name().length() * LETTER,
					16)) {
				this.svg.element("text", county.name(), "class", "county-name", "x", x, "y", y, "text-anchor",
						"middle");
				return;
			}
		}
	}

	/** Its name to the right or to the left of it, rather within its county. */
	private void town(Town town) {
		double x = this.on.x(town.at().longitude());
		double y = this.on.y(town.at().latitude());
		double width = town.name().length() * LETTER;
		this.svg.empty("circle", "class", "town", "cx", x, "cy", y, "r", 2.5);
		boolean leftward = !within(town, x + 6 + width, y) && within(town, x - 6 - width, y);
		if (!named(town, x, y, width, leftward)) {
			named(town, x, y, width, !leftward);
		}
	}

	private boolean within(Town town, double x, double y) {
		return this.on.at(x, y)
			.filter((end) -> this.map.counties()
				.stream()
				.anyMatch((one) -> one.area().contains(town.at()) && one.area().contains(end)))
			.isPresent();
	}

	private boolean named(Town town, double x, double y, double width, boolean leftward) {
		double left = leftward ? x - 6 - width : x - 3;
		if (left < 0 || left + width + 9 > this.map.width() || !this.labels.take(left, y - 8, width + 9, 16)) {
			return false;
		}
		this.svg.element("text", town.name(), "class", "town-name", "x", leftward ? x - 6 : x + 6, "y", y + 4,
				"text-anchor", leftward ? "end" : null);
		return true;
	}

	/** A line as long as a round number of kilometres, about a quarter of the map. */
	private void measure() {
		double quarter = this.map.width() / 4.0 / this.on.pixelsPerKilometre();
		double power = Math.pow(10, Math.floor(Math.log10(quarter)));
		double length = power * ((quarter >= 5 * power) ? 5 : (quarter >= 2 * power) ? 2 : 1);
		double width = length * this.on.pixelsPerKilometre();
		double right = this.map.width() - 8.0;
		double y = this.map.height() - 2.0;
		this.svg.empty("path", "class", "map-measure", "d",
				String.format(Locale.ROOT, "M%.1f %.1fv5H%.1fv-5", right - width, y - 5, right));
		this.svg.element("text",
				(length >= 1) ? String.format(Locale.ROOT, "%.0f km (%.3g mi)", length, length / KM_PER_MILE)
						: "%.0f m".formatted(length * 1000),
				"class", "town-name", "x", right - width - 6, "y", y, "text-anchor", "end");
	}

	private void mark(GeoPoint place) {
		double x = this.on.x(place.longitude());
		double y = this.on.y(place.latitude());
		Optional<Position> there = this.on.at(x, y);
		if (there.isPresent()) {
			this.svg.empty("circle", "class", "chosen-ring", "cx", x, "cy", y, "r", 9);
			this.svg.empty("circle", "class", "chosen-point", "cx", x, "cy", y, "r", 3.5);
		}
	}

}
