package org.leafward.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.leafward.measure.DayWindow;

/**
 * Dates and figures as readers see them. Dates are written out, and the year is left out
 * where it is the reader's own. Templates know it as {@code formats}.
 *
 * @param year the year that goes without saying
 */
public record Formats(int year) {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

	private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

	/** Feet in a metre: the international foot is 0.3048 m (NIST SP 811, B.6). */
	private static final double FEET_PER_METRE = 1 / 0.3048;

	/**
	 * A day.
	 * @param date the day
	 * @return for example "Thu 12 Nov", with the year when it is another one
	 */
	public String day(LocalDate date) {
		return DAY.format(date) + suffix(date);
	}

	/**
	 * A day without weekday and year, for dates that hold in any year.
	 * @param date the day
	 * @return for example "12 Nov"
	 */
	public String dayOfYear(LocalDate date) {
		return SHORT.format(date);
	}

	/**
	 * A span of days.
	 * @param from first day
	 * @param to last day
	 * @return for example "12 Nov – 3 Dec"; a single day as in {@link #day}
	 */
	public String window(LocalDate from, LocalDate to) {
		if (from.equals(to)) {
			return day(from);
		}
		String start = SHORT.format(from) + ((from.getYear() != to.getYear()) ? suffix(from) : "");
		return start + " – " + SHORT.format(to) + suffix(to);
	}

	public String window(DayWindow window) {
		return window(window.from(), window.to());
	}

	/**
	 * A temperature in both units.
	 * @param celsius degrees Celsius
	 * @return for example "0 °C (32 °F)", each to one decimal where it has one
	 */
	public String temperature(double celsius) {
		return number(celsius, 1) + " °C (" + number(celsius * 9 / 5 + 32, 1) + " °F)";
	}

	/**
	 * A temperature in both units, rounded.
	 * @param celsius degrees Celsius
	 * @return for example "−3 °C (27 °F)"
	 */
	public String wholeTemperature(double celsius) {
		return number(celsius, 0) + " °C (" + number(celsius * 9 / 5 + 32, 0) + " °F)";
	}

	/**
	 * A height in both units.
	 * @param metres metres above mean sea level
	 * @return for example "256 m (840 ft)"
	 */
	public String height(double metres) {
		return number(metres, 0) + " m (" + number(metres * FEET_PER_METRE, 0) + " ft)";
	}

	/**
	 * A position.
	 * @param latitude degrees north
	 * @param longitude degrees east
	 * @return for example "44.98° N, 93.27° W"
	 */
	public String position(double latitude, double longitude) {
		return number(Math.abs(latitude), 2) + ((latitude < 0) ? "° S, " : "° N, ") + number(Math.abs(longitude), 2)
				+ ((longitude < 0) ? "° W" : "° E");
	}

	/**
	 * A figure.
	 * @param value the figure
	 * @param decimals most decimals to show, 0 to 6; zeros at the end are left out,
	 * halves go away from zero
	 * @return for example "1,234.5", with a true minus sign
	 */
	public String number(double value, int decimals) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
		BigDecimal plain = (rounded.signum() == 0) ? BigDecimal.ZERO : rounded.stripTrailingZeros();
		String text = String.format(Locale.ROOT, "%,." + Math.max(0, plain.scale()) + "f", plain);
		return text.replace('-', '\u2212');
	}

	/**
	 * A counted thing.
	 * @param count how many
	 * @param one the word for one
	 * @param many the word for none or several
	 * @return for example "1 task" or "3 tasks"
	 */
	public String count(long count, String one, String many) {
		return number(count, 0) + " " + ((count == 1) ? one : many);
	}

	private String suffix(LocalDate date) {
		return (date.getYear() != this.year) ? " " + date.getYear() : "";
	}

}
