package org.leafward.regions.core;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A polygon or several (RFC 7946, sections 3.1.6 and 3.1.7).
 *
 * @param polygons at least one
 */
public record Area(List<Polygon> polygons) {

	public Area {
		polygons = List.copyOf(polygons);
		if (polygons.isEmpty()) {
			throw new IllegalArgumentException("an area has at least one polygon");
		}
	}

	/**
	 * A polygon.
	 *
	 * @param outer its outer ring
	 * @param holes rings that are cut out of it
	 */
	public record Polygon(Ring outer, List<Ring> holes) {

		public Polygon {
			holes = List.copyOf(holes);
		}

		boolean contains(Position point) {
			return this.outer.contains(point) && this.holes.stream().noneMatch((hole) -> hole.contains(point));
		}

		/**
		 * Its rings.
		 * @return the outer one first
		 */
		public Stream<Ring> rings() {
			return Stream.concat(Stream.of(this.outer), this.holes.stream());
		}

	}

	public Extent extent() {
		return this.polygons.stream()
			.map((one) -> Extent.around(one.outer().positions()))
			.reduce(Extent::with)
			.orElseThrow();
	}

	/**
	 * Whether a point lies inside.
	 * @param point the point
	 * @return false in a hole; of two areas that share a line, one has the points on it
	 */
	public boolean contains(Position point) {
		return this.polygons.stream().anyMatch((one) -> one.contains(point));
	}

	/**
	 * A point inside, for a name and for whoever tells nothing but the area: the middle
	 * of the widest stretch of the largest polygon, at one of nine heights.
	 * @return a point that the area contains
	 */
	public Position inside() {
		Polygon largest = this.polygons.stream()
			.max(Comparator.comparingDouble((Polygon one) -> Math.abs(one.outer().signedArea())))
			.orElseThrow();
		Extent extent = Extent.around(largest.outer().positions());
		double widest = -1;
		Position best = largest.outer().positions().get(0);
		for (int tenth : new int[] { 5, 4, 6, 3, 7, 2, 8, 1, 9 }) {
			double latitude = extent.south() + (extent.north() - extent.south()) * tenth / 10;
			double[] crossings = largest.rings()
				.flatMapToDouble((ring) -> crossings(ring, latitude))
				.sorted()
				.toArray();
			for (int i = 1; i < crossings.length; i += 2) {
				// A height nearer to the middle wins unless another is clearly wider.
				double width = (crossings[i] - crossings[i - 1]) * (1 - 0.06 * Math.abs(tenth - 5));
				if (width > widest) {
					widest = width;
					best = new Position((crossings[i] + crossings[i - 1]) / 2, latitude);
				}
			}
		}
		return best;
	}

	private static DoubleStream crossings(Ring ring, double latitude) {
		List<Position> line = ring.positions();
		DoubleStream.Builder found = DoubleStream.builder();
		for (int i = 1; i < line.size(); i++) {
			Position from = line.get(i - 1);
			Position to = line.get(i);
			if ((from.latitude() > latitude) != (to.latitude() > latitude)) {
				found.add(from.longitude() + (latitude - from.latitude()) / (to.latitude() - from.latitude())
						* (to.longitude() - from.longitude()));
			}
		}
		return found.build();
	}

}
