package org.leafward.amounts.light;

import java.time.LocalDate;
import org.leafward.climate.core.light.DailyLight;
import org.leafward.measure.GeoPoint;

/**
 * Light where a plant will grow, as a share of the open sky's on a clear day. The names
 * are the trade's; the shares are from memory, in the middle of what each name covers.
 */
public enum SiteLight {

	/** Six hours of sun and more. */
	FULL_SUN("full sun", 1),

	/** Sun for the greater part of the day. */
	PART_SUN("part sun", 0.65),

	/** Sun for the smaller part of the day, or under light trees. */
	PART_SHADE("part shade", 0.4),

	/** No sun but the sky, as under trees or beside a wall. */
	SHADE("shade", 0.2);

	private final String words;

	private final double share;

	SiteLight(String words, double share) {
		this.words = words;
		this.share = share;
	}

	public String words() {
		return this.words;
	}

	/**
	 * The part of the open sky's light.
	 * @return above 0, at most 1
	 */
	public double share() {
		return this.share;
	}

	/**
	 * The light of a clear day.
	 * @param point the place
	 * @param date the day
	 * @return mol/m² of photons
	 */
	public double molesPerDay(GeoPoint point, LocalDate date) {
		return this.share * DailyLight.clearSky(point, date);
	}

}
