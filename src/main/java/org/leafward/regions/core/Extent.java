package org.leafward.regions.core;

import java.util.Collection;

/**
 * The box around something, degrees. It doesn't cross the 180th meridian.
 *
 * @param west least longitude
 * @param south least latitude
 * @param east greatest longitude, not below {@code west}
 * @param north greatest latitude, not below {@code south}
 */
public record Extent(double west, double south, double east, double north) {

	/**
	 * The box around positions.
	 * @param positions at least one
	 * @return the smallest box that holds all
	 */
	public static Extent around(Collection<Position> positions) {
		double west = 180;
		double south = 90;
		double east = -180;
		double north = -90;
		for (Position one : positions) {
			west = Math.min(west, one.longitude());
			south = Math.min(south, one.latitude());
			east = Math.max(east, one.longitude());
			north = Math.max(north, one.latitude());
		}
		return new Extent(west, south, east, north);
	}

	/**
	 * The box around two boxes.
	 * @param other the other one
	 * @return the smallest box that holds both
	 */
	public Extent with(Extent other) {
		return new Extent(Math.min(this.west, other.west), Math.min(this.south, other.south),
				Math.max(this.east, other.east), Math.max(this.north, other.north));
	}

	boolean holds(Position point) {
		return point.longitude() >= this.west && point.longitude() <= this.east && point.latitude() >= this.south
				&& point.latitude() <= this.north;
	}

}
