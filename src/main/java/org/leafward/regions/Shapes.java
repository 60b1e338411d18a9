package org.leafward.regions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.leafward.measure.BadInput;
import org.leafward.regions.core.Area;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/**
 * Makes shapes of the lists in lists of GeoJSON (RFC 7946, section 3.1).
 */
final class Shapes {

	/** Stands in for a shape that was refused, so that the rest is checked too. */
	static final Area ANYWHERE = new Area(
			List.of(polygon(List.of(List.of(List.of(0, 0), List.of(1, 0), List.of(1, 1), List.of(0, 0))))));

	private static final int MOST_POSITIONS = 200_000;

	private static final String NESTING = "a Polygon is a list of rings, a MultiPolygon a list of such lists";

	private Shapes() {
	}

	static Area area(RegionFile.Geometry shape) {
		Area area = new Area(shape.type().equals("Polygon") ? List.of(polygon(shape.coordinates()))
				: each(shape.coordinates(), Shapes::polygon));
		if (area.polygons()
			.stream()
			.flatMap(Area.Polygon::rings)
			.mapToInt((r) -> r.positions().size())
			.sum() > MOST_POSITIONS) {
			throw new BadInput("the shape has more than %,d positions".formatted(MOST_POSITIONS), "coordinates",
					"take a coarser outline");
		}
		return area;
	}

	private static Area.Polygon polygon(Object lists) {
		List<Ring> rings = each(lists, (ring) -> new Ring(each(ring, Shapes::position)));
		if (rings.isEmpty()) {
			throw new BadInput("a polygon has no ring", "coordinates", "give its outer ring first, then its holes");
		}
		return new Area.Polygon(rings.get(0), rings.subList(1, rings.size()));
	}

	static Position position(Object numbers) {
		if (numbers instanceof List<?> list && list.size() >= 2 && list.get(0) instanceof Number longitude
				&& list.get(1) instanceof Number latitude) {
			return new Position(longitude.doubleValue(), latitude.doubleValue());
		}
		throw new BadInput("a position is not two numbers", "coordinates",
				"write it as [longitude, latitude]; " + NESTING);
	}

	private static <T> List<T> each(Object lists, Function<Object, T> make) {
		if (!(lists instanceof List<?> list)) {
			throw new BadInput("the positions don't nest as the type asks", "coordinates", NESTING);
		}
		List<T> made = new ArrayList<>();
		for (Object one : list) {
			made.add(make.apply(one));
		}
		return made;
	}

}
