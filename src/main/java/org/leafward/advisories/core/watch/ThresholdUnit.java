package org.leafward.advisories.core.watch;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;

/** Units in which thresholds are written, and how they are counted. */
public enum ThresholdUnit {

	/** °F; counted in °C, rounded to tenths as records do. */
	FAHRENHEIT("F", "°F", Kind.TEMPERATURE),

	/** °C. */
	CELSIUS("C", "°C", Kind.TEMPERATURE),

	/** A difference of so many °F. */
	FAHRENHEIT_STEPS("F-steps", "°F", Kind.STEPS),

	/** A difference of so many °C. */
	CELSIUS_STEPS("C-steps", "°C", Kind.STEPS),

	/** Inches; counted in mm. */
	INCHES("in", "in", Kind.DEPTH),

	/** Millimetres. */
	MILLIMETRES("mm", "mm", Kind.DEPTH),

	/** Miles per hour; counted in m/s. */
	MILES_PER_HOUR("mph", "mph", Kind.SPEED),

	/** Metres per second. */
	METRES_PER_SECOND("m/s", "m/s", Kind.SPEED),

	/** Percent. */
	PERCENT("%", "%", Kind.PERCENT),

	/** Days. */
	DAYS("days", "days", Kind.DAYS),

	/** Degree-days of Fahrenheit. */
	DEGREE_DAYS("degree-days", "degree-days (°F)", Kind.HEAT),

	/** 1 for yes. */
	YES("yes", "", Kind.YES);

	/** What is measured. */
	public enum Kind {

		/** A temperature, °C. */
		TEMPERATURE,

		/** A difference of temperatures, °C. */
		STEPS,

		/** Depth of water or snow, mm. */
		DEPTH,

		/** A speed, m/s. */
		SPEED,

		/** A share, percent. */
		PERCENT,

		/** A number of days. */
		DAYS,

		/** Degree-days of Fahrenheit. */
		HEAT,

		/** Yes or no, 1 or 0. */
		YES

	}

	private static final double MILLIMETRES_PER_INCH = 25.4;

	private static final double METRES_PER_SECOND_PER_MPH = 0.44704;

	private final String code;

	private final String words;

	private final Kind kind;

	ThresholdUnit(String code, String words, Kind kind) {
		this.code = code;
		this.words = words;
		this.kind = kind;
	}

	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

	public Kind kind() {
		return this.kind;
	}

	/**
	 * A number of this unit as it is counted.
	 * @param number in this unit
	 * @return °C to tenths, °C of a difference, mm, m/s, or the number itself
	 */
	public double counted(double number) {
		return switch (this) {
			case FAHRENHEIT -> Math.rint((number - 32) * 50 / 9) / 10;
			case FAHRENHEIT_STEPS -> number * 5 / 9;
			case INCHES -> number * MILLIMETRES_PER_INCH;
			case MILES_PER_HOUR -> number * METRES_PER_SECOND_PER_MPH;
			case CELSIUS, CELSIUS_STEPS, MILLIMETRES, METRES_PER_SECOND, PERCENT, DAYS, DEGREE_DAYS, YES -> number;
		};
	}

	/**
	 * The unit of a code.
	 * @param code as {@link #code} gives it
	 * @return the unit
	 * @throws BadInput when there is none
	 */
	public static ThresholdUnit of(String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code.equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("there is no unit '%s'".formatted(code), "unit", "write one of "
					+ Arrays.stream(values()).map(ThresholdUnit::code).collect(Collectors.joining(", "))));
	}

}
