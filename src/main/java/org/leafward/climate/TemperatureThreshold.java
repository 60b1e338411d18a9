package org.leafward.climate;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.measure.BadInput;
import org.leafward.measure.NumberWords;

/**
 * A temperature that is compared with daily minima, in the unit in which people state it.
 * <p>
 * GHCN-Daily keeps tenths of a degree Celsius, and United States minima were whole
 * degrees Fahrenheit before: 28 °F is stored as -2.2 °C, which is 28.04 °F. So a
 * Fahrenheit threshold is first rounded to tenths of a degree Celsius and the tenths are
 * compared; otherwise days at exactly 28 °F or 24 °F are lost. (Freezes at stations of
 * the United States are compared in whole degrees Fahrenheit, for since 2013 some of them
 * keep 28 °F as -2.1 °C.)
 *
 * @param degrees the threshold in its own unit, -100 to 150
 * @param fahrenheit whether the unit is °F, else °C
 */
public record TemperatureThreshold(double degrees, boolean fahrenheit) {

	private static final Pattern SHAPE = Pattern.compile("(-?\\d{1,3}(?:\\.\\d)?)\\s*°?\\s*([CF])",
			Pattern.CASE_INSENSITIVE);

	public TemperatureThreshold {
		if (!(degrees >= -100 && degrees <= 150)) {
			throw new BadInput("threshold %s is outside -100 to 150 degrees".formatted(degrees), "threshold",
					"give a temperature such as 32F or 0C");
		}
	}

	/**
	 * Reads a threshold.
	 * @param text a number and a unit, for example {@code 32F}, {@code 0C}, {@code -2.2C}
	 * @return the threshold
	 * @throws BadInput when the text is anything else
	 */
	public static TemperatureThreshold parse(String text) {
		Matcher matcher = SHAPE.matcher(text.strip());
		if (!matcher.matches()) {
			throw new BadInput("threshold '%s' is not a temperature".formatted(text), "threshold",
					"write a number and a unit, for example 32F or 0C");
		}
		return new TemperatureThreshold(Double.parseDouble(matcher.group(1)), "F".equalsIgnoreCase(matcher.group(2)));
	}

	/**
	 * The threshold as the daily record counts it.
	 * @return tenths of a degree Celsius, halves away from zero
	 */
	public int tenthsCelsius() {
		double celsius = celsius();
		return (int) (Math.signum(celsius) * Math.floor(Math.abs(celsius) * 10 + 0.5));
	}

	/**
	 * The threshold unrounded.
	 * @return °C
	 */
	public double celsius() {
		return this.fahrenheit ? (this.degrees - 32) * 5 / 9 : this.degrees;
	}

	/**
	 * The threshold as text that {@link #parse} reads again.
	 * @return for example {@code 32F} or {@code -2.2C}
	 */
	public String code() {
		String number = (this.degrees == Math.rint(this.degrees)) ? String.valueOf((long) this.degrees)
				: NumberWords.fixed(this.degrees, 1);
		return number + (this.fahrenheit ? "F" : "C");
	}

	/**
	 * The threshold for readers.
	 * @return for example "32 °F (0 °C)", "28 °F (−2.2 °C)" or "0 °C", with a true minus
	 * sign
	 */
	public String words() {
		String own = code();
		String text = own.substring(0, own.length() - 1) + " °" + own.substring(own.length() - 1);
		if (this.fahrenheit) {
			int tenths = tenthsCelsius();
			text += " (" + ((tenths % 10 == 0) ? String.valueOf(tenths / 10) : NumberWords.fixed(tenths / 10.0, 1))
					+ " °C)";
		}
		return text.replace('-', '\u2212');
	}

}
