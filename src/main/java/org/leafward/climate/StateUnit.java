package org.leafward.climate;

/** The unit in which a state of the weather is asked for. */
public enum StateUnit {

	/** Nothing is asked for but the state itself. */
	NONE("", "", 0, 0),

	/** Degrees Fahrenheit. */
	FAHRENHEIT("f", "°F", -60, 150),

	/** Degrees Celsius. */
	CELSIUS("c", "°C", -50, 65),

	/** Whole days. */
	DAYS("d", "days", 1, 90),

	/** Inches of snow or rain. */
	INCHES("in", "in", 0.1, 200),

	/** Millimetres of snow or rain. */
	MILLIMETRES("mm", "mm", 1, 5000),

	/** Miles per hour. */
	MILES_PER_HOUR("mph", "mph", 1, 150),

	/** Metres per second. */
	METRES_PER_SECOND("ms", "m/s", 0.5, 70),

	/** A class of drought, D0 to D4; the only unit that is written in front. */
	DROUGHT("d", "D", 0, 4);

	private final String code;

	private final String words;

	private final double lowest;

	private final double highest;

	StateUnit(String code, String words, double lowest, double highest) {
		this.code = code;
		this.words = words;
		this.lowest = lowest;
		this.highest = highest;
	}

	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

	public double lowest() {
		return this.lowest;
	}

	public double highest() {
		return this.highest;
	}

	/**
	 * Whether only whole numbers are meant.
	 * @return true for days and classes
	 */
	public boolean whole() {
		return this == DAYS || this == DROUGHT || this == NONE;
	}

	/**
	 * A number of this unit as the records count it: temperatures in tenths of °C, as
	 * {@link TemperatureThreshold} has them, for 28 °F stands there as -2.2 °C.
	 * @param number in this unit
	 * @return °C, days, mm, m/s or the number of the class
	 */
	public double figure(double number) {
		return switch (this) {
			case FAHRENHEIT, CELSIUS -> new TemperatureThreshold(number, this == FAHRENHEIT).tenthsCelsius() / 10.0;
			case INCHES -> number * 25.4;
			case MILES_PER_HOUR -> number * 0.44704;
			case NONE, DAYS, MILLIMETRES, METRES_PER_SECOND, DROUGHT -> number;
		};
	}

}
