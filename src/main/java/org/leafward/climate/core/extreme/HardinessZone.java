package org.leafward.climate.core.extreme;

import java.util.Optional;

/**
 * A half zone of the USDA Plant Hardiness Zone Map: bands of 5 °F of the mean yearly
 * extreme minimum, from 1a (-60 to -55 °F) to 13b (65 to 70 °F). A mean on a bound
 * belongs to the warmer zone; that is our convention.
 *
 * @param number 1 to 13
 * @param half 'a' for the colder, 'b' for the warmer half
 */
public record HardinessZone(int number, char half) {

	private static final int LOWEST = -60;

	private static final int HIGHEST = 70;

	private static final int WIDTH = 5;

	public HardinessZone {
		if (number < 1 || number > 13 || (half != 'a' && half != 'b')) {
			throw new IllegalArgumentException("there is no zone %d%s".formatted(number, half));
		}
	}

	/**
	 * The half zone of a mean extreme minimum.
	 * @param fahrenheit °F
	 * @return empty below -60 and from 70 °F on, where there are no zones
	 */
	public static Optional<HardinessZone> of(double fahrenheit) {
		if (!(fahrenheit >= LOWEST && fahrenheit < HIGHEST)) {
			return Optional.empty();
		}
		int half = (int) Math.floor((fahrenheit - LOWEST) / WIDTH);
		return Optional.of(new HardinessZone(half / 2 + 1, (half % 2 == 0) ? 'a' : 'b'));
	}

	/**
	 * Lower bound, which belongs to the half zone.
	 * @return °F
	 */
	public int from() {
		return LOWEST + (this.number - 1) * 2 * WIDTH + ((this.half == 'b') ? WIDTH : 0);
	}

	/**
	 * The name on the map.
	 * @return for example "6b"
	 */
	public String code() {
		return "" + this.number + this.half;
	}

}
