package org.leafward.amounts.light;

import java.time.LocalDate;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.GeoPoint;

/**
 * The side of the house that a window looks to. The shares of the open sky's light on its
 * sill, right behind the pane, are from memory and meant for spring to fall: a fifth
 * where the sun stands at noon, an eighth to the east and west, a twenty-fifth on the
 * side away from the sun. A step back from the pane there is far less.
 */
public enum Aspect {

	/** To the north. */
	NORTH("north"),

	/** To the east. */
	EAST("east"),

	/** To the south. */
	SOUTH("south"),

	/** To the west. */
	WEST("west");

	private static final double SUNNY = 0.2;

	private static final double SIDE = 0.12;

	private static final double AWAY = 0.04;

	private final String words;

	Aspect(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

	/**
	 * The part of the open sky's light on the sill. Between the tropics the sun changes
	 * sides with the season.
	 * @param point the place
	 * @param date the day
	 * @return 0.04, 0.12 or 0.2
	 */
	public double share(GeoPoint point, LocalDate date) {
		if (this == EAST || this == WEST) {
			return SIDE;
		}
		boolean sunInSouth = Math.toRadians(point.latitude()) >= SunGeometry.declination(date.getDayOfYear());
		return ((this == SOUTH) == sunInSouth) ? SUNNY : AWAY;
	}

}
