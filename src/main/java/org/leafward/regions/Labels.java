package org.leafward.regions;

import java.util.ArrayList;
import java.util.List;

/** Room for names on a map: none may lie on another. */
final class Labels {

	private final List<double[]> taken = new ArrayList<>();

	/**
	 * Takes a box, unless a part of it is taken.
	 * @param x left, px
	 * @param y top, px
	 * @param width px
	 * @param height px
	 * @return whether it was free
	 */
	boolean take(double x, double y, double width, double height) {
		boolean free = this.taken.stream()
			.allMatch((box) -> x + width <= box[0] || box[2] <= x || y + height <= box[1] || box[3] <= y);
		if (free) {
			this.taken.add(new double[] { x, y, x + width, y + height });
		}
		return free;
	}

}
