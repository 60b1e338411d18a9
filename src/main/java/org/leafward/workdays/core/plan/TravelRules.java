package org.leafward.workdays.core.plan;

import org.leafward.measure.GeoPoint;

/**
 * How long a team is on its way: the great circle, longer by a detour factor, at one
 * speed, and the time to pack up and unload. No map of roads is asked; all figures are
 * common practice without a source, and a group may have its own.
 *
 * @param detour how much longer roads are than the great circle, 1 to 3
 * @param kilometresPerHour 3 (on foot) to 100
 * @param packMinutes minutes to pack up at one site and unload at the next, 0 to 120
 */
public record TravelRules(double detour, double kilometresPerHour, int packMinutes) {

	/** A third more than the great circle, 40 km/h, ten minutes to pack. */
	public static final TravelRules USUAL = new TravelRules(1.3, 40, 10);

	public TravelRules {
		if (!(detour >= 1 && detour <= 3 && kilometresPerHour >= 3 && kilometresPerHour <= 100 && packMinutes >= 0
				&& packMinutes <= 120)) {
			throw new IllegalArgumentException(
					"travel with detour %s, %s km/h, %d min".formatted(detour, kilometresPerHour, packMinutes));
		}
	}

	/**
	 * Minutes from one site to another.
	 * @param from where the team was
	 * @param to where it goes
	 * @return whole minutes, rounded up
	 */
	public int minutes(GeoPoint from, GeoPoint to) {
		return this.packMinutes
				+ (int) Math.ceil(from.distanceKilometres(to) * this.detour / this.kilometresPerHour * 60 - 1e-9);
	}

}
