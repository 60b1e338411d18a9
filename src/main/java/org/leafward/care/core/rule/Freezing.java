package org.leafward.care.core.rule;

import org.jspecify.annotations.Nullable;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.TemperatureThreshold;

/**
 * Places where it freezes often enough for a rule to make sense.
 *
 * @param to the air there falls to this or below
 * @param oneYearIn in at least one year of so many, 1 to 20; 1 is every year
 */
public record Freezing(TemperatureThreshold to, int oneYearIn) {

	/** The most that thirty seasons can still tell. */
	public static final int RAREST = 20;

	/** Shares are sums of weights, so one year in two may come out a hair below. */
	private static final double HAIR = 1e-9;

	public Freezing {
		if (oneYearIn < 1 || oneYearIn > RAREST) {
			throw new IllegalArgumentException("one year in %d is not from 1 to %d".formatted(oneYearIn, RAREST));
		}
	}

	/**
	 * Whether a place is such a place.
	 * @param place its markers
	 * @return true also when no station can tell: unknown is never no
	 */
	public boolean comesAt(PlaceMarkers place) {
		return place.yearsWithFreeze(this.to).orElse(1) >= 1.0 / this.oneYearIn - HAIR;
	}

	/**
	 * Whether every place of another condition is a place of this one.
	 * @param given the other; null is any place
	 * @return true when it is as cold, as often
	 */
	public boolean follows(@Nullable Freezing given) {
		return given != null && given.to.celsius() <= this.to.celsius() && given.oneYearIn <= this.oneYearIn;
	}

	/**
	 * The condition for readers.
	 * @return for example "where it freezes to 28 °F (−2.2 °C) in at least one year of 2"
	 */
	public String words() {
		return "where it freezes to %s in %s".formatted(this.to.words(),
				(this.oneYearIn == 1) ? "every year" : "at least one year of " + this.oneYearIn);
	}

}
