package org.leafward.regions.core;

import java.util.List;
import org.leafward.measure.BadInput;

/**
 * A linear ring (RFC 7946, section 3.1.6): a closed line of four or more positions, the
 * last one the same as the first. Its direction doesn't matter here: the standard asks
 * writers for counter-clockwise outer rings and readers to take both.
 *
 * @param positions the positions
 */
public record Ring(List<Position> positions) {

	/** Half of the way around the earth; wider rings cross the 180th meridian. */
	private static final double WIDEST = 180;

	/**
	 * Checks the ring.
	 * @throws BadInput when it has too few positions, is open, has no area or crosses the
	 * 180th meridian
	 */
	public Ring {
		positions = List.copyOf(positions);
		if (positions.size() < 4) {
			throw new BadInput("a ring has %d positions".formatted(positions.size()), "coordinates",
					"give four or more, the last one the same as the first");
		}
		if (!positions.get(0).equals(positions.get(positions.size() - 1))) {
			throw new BadInput("a ring is not closed", "coordinates",
					"repeat its first position, %s, at the end".formatted(written(positions.get(0))));
		}
		Extent extent = Extent.around(positions);
		if (extent.east() - extent.west() > WIDEST) {
			throw new BadInput("a ring crosses the 180th meridian", "coordinates",
					"cut it there into two polygons of one MultiPolygon (RFC 7946, section 3.1.9)");
		}
		if (signedArea(positions) == 0) {
			throw new BadInput("a ring has no area", "coordinates", "give positions that go around something");
		}
	}

	private static String written(Position position) {
		return "[%s, %s]".formatted(position.longitude(), position.latitude());
	}

	/**
	 * The area between the positions by the trapezoid formula, as if degrees were even.
	 * @return square degrees, above 0 when the ring runs counter-clockwise
	 */
	public double signedArea() {
		return signedArea(this.positions);
	}

	private static double signedArea(List<Position> positions) {
		// Counted from the first position, so that far from the meridian no digits are
		// lost.
		Position origin = positions.get(0);
		double twice = 0;
		for (int i = 1; i < positions.size(); i++) {
			Position from = positions.get(i - 1);
			Position to = positions.get(i);
			twice += (from.longitude() - origin.longitude()) * (to.latitude() - origin.latitude())
					- (to.longitude() - origin.longitude()) * (from.latitude() - origin.latitude());
		}
		return twice / 2;
	}

	/**
	 * Whether a point lies inside, by the number of edges that a ray to the east crosses
	 * (even-odd rule; Shimrat 1962, Algorithm 112 of the ACM, with the correction of
	 * Hacker in the same year, from memory). An edge counts its lower end and not its
	 * upper one, so a corner is never counted twice.
	 * @param point the point
	 * @return on the line itself either answer, but the same for neighbours that share it
	 * in such a way that one of them has it
	 */
	public boolean contains(Position point) {
		boolean inside = false;
		for (int i = 1; i < this.positions.size(); i++) {
			Position from = this.positions.get(i - 1);
			Position to = this.positions.get(i);
			if ((from.latitude() > point.latitude()) != (to.latitude() > point.latitude())) {
				// Always reckoned from the lower end, so that neighbours get the same
				// number for the edge that they share.
				Position low = (from.latitude() < to.latitude()) ? from : to;
				Position high = (low == from) ? to : from;
				double share = (point.latitude() - low.latitude()) / (high.latitude() - low.latitude());
				if (point.longitude() < low.longitude() + share * (high.longitude() - low.longitude())) {
					inside = !inside;
				}
			}
		}
		return inside;
	}

}
