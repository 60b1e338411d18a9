package org.leafward.climate;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.measure.BadInput;

/**
 * What somebody's own minimum thermometer showed.
 *
 * @param day the day whose minimum it is: that of the morning on which it was read
 * @param celsius °C, -60 to 45
 */
public record MinimumReading(LocalDate day, double celsius) {

	/** Most readings that are compared at once. */
	public static final int MOST = 120;

	/** A month of minima has some 700 characters; more than this is something else. */
	private static final int LONGEST_TEXT = 20_000;

	private static final double LOWEST = -60;

	private static final double HIGHEST = 45;

	/** More than these wrong lines are only counted. */
	private static final int MOST_TOLD = 5;

	private static final Pattern LINE = Pattern
		.compile("(\\d{4}-\\d{2}-\\d{2})[\\s,;:]+([-+\u2212]?\\d{1,3}(?:[.,]\\d{1,3})?)\\s*°?\\s*([CcFf])?");

	/**
	 * Reads a list of readings, one a line: a date and degrees, such as 2026-11-03 -2.5.
	 * A line may name its own unit, C or F. Empty lines are passed over.
	 * @param text the lines, at most {@value #MOST}
	 * @param fahrenheit whether lines without a unit are in °F, not °C
	 * @param today no line may lie after it
	 * @return in the order of the lines
	 * @throws BadInput at {@code readings}, naming the lines that can't be used
	 */
	public static List<MinimumReading> list(String text, boolean fahrenheit, LocalDate today) {
		if (text.length() > LONGEST_TEXT) {
			throw new BadInput("the list has %d characters".formatted(text.length()), "readings",
					"give up to %d lines, each with a date and degrees only".formatted(MOST));
		}
		List<MinimumReading> readings = new ArrayList<>();
		List<String> wrong = new ArrayList<>();
		Map<LocalDate, Integer> lines = new HashMap<>();
		int number = 0;
		for (String line : text.split("\\R", -1)) {
			number++;
			if (line.isBlank()) {
				continue;
			}
			try {
				MinimumReading reading = line(line.strip(), fahrenheit, today);
				Integer before = lines.putIfAbsent(reading.day(), number);
				if (before != null) {
					throw new IllegalArgumentException("%s stands on line %d already".formatted(reading.day(), before));
				}
				readings.add(reading);
			}
			catch (IllegalArgumentException ex) {
				wrong.add("line %d: %s".formatted(number, ex.getMessage()));
			}
		}
		if (!wrong.isEmpty()) {
			throw new BadInput(told(wrong), "readings",
					"write a date and degrees on each line, such as 2026-11-03 -2.5 or 2026-11-03 27 F");
		}
		if (readings.isEmpty()) {
			throw new BadInput("no readings are given", "readings", "write a date and degrees on each line");
		}
		if (readings.size() > MOST) {
			throw new BadInput("%d readings are more than %d".formatted(readings.size(), MOST), "readings",
					"leave out the oldest");
		}
		return List.copyOf(readings);
	}

	private static String told(List<String> wrong) {
		String first = String.join("; ", wrong.subList(0, Math.min(wrong.size(), MOST_TOLD)));
		return (wrong.size() > MOST_TOLD) ? "%s; and %d more".formatted(first, wrong.size() - MOST_TOLD) : first;
	}

	/** One line; what is wrong with it is the message of the exception. */
	private static MinimumReading line(String line, boolean fahrenheit, LocalDate today) {
		Matcher matcher = LINE.matcher(line);
		if (!matcher.matches()) {
			throw new IllegalArgumentException("'%s' is not a date and degrees".formatted(shortened(line)));
		}
		LocalDate day = day(matcher.group(1));
		if (day.isAfter(today)) {
			throw new IllegalArgumentException("%s is still to come".formatted(day));
		}
		double degrees = Double.parseDouble(matcher.group(2).replace(',', '.').replace('\u2212', '-'));
		String unit = matcher.group(3);
		boolean imperial = (unit != null) ? unit.toUpperCase(Locale.ROOT).equals("F") : fahrenheit;
		double celsius = imperial ? (degrees - 32) * 5 / 9 : degrees;
		if (!(celsius >= LOWEST && celsius <= HIGHEST)) {
			throw new IllegalArgumentException("%s %s is outside %s".formatted(matcher.group(2), imperial ? "°F" : "°C",
					imperial ? "-76 to 113" : "-60 to 45"));
		}
		return new MinimumReading(day, celsius);
	}

	private static LocalDate day(String text) {
		try {
			return LocalDate.parse(text);
		}
		catch (DateTimeException ex) {
			throw new IllegalArgumentException("%s is no day of the calendar".formatted(text), ex);
		}
	}

	private static String shortened(String line) {
		String plain = line.replaceAll("\\p{Cntrl}", " ");
		return (plain.length() > 30) ? plain.substring(0, 30) + "…" : plain;
	}

}
