package org.leafward.measure;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads what people and programs give in forms and requests; every refusal names the
 * field and how to mend it.
 */
public final class Given {

	private static final int LONGEST_PAGE = 200;

	/** What was given is shown so far in a refusal, characters. */
	private static final int LONGEST_SHOWN = 60;

	private Given() {
	}

	/**
	 * What was given, short enough for a sentence that refuses it.
	 * @param value what was given
	 * @return its beginning
	 */
	public static String shown(@Nullable String value) {
		String text = String.valueOf(value);
		if (text.length() <= LONGEST_SHOWN) {
			return text;
		}
		int end = Character.isHighSurrogate(text.charAt(LONGEST_SHOWN - 1)) ? LONGEST_SHOWN - 1 : LONGEST_SHOWN;
		return text.substring(0, end) + "…";
	}

	/**
	 * A text that must be there.
	 * @param field name of the field
	 * @param value what was given
	 * @return the text, stripped
	 */
	public static String text(String field, @Nullable String value) {
		if (value == null || value.isBlank()) {
			throw new BadInput("%s is missing".formatted(field), field, "fill it in");
		}
		return value.strip();
	}

	/**
	 * Checks that a text stays on its line and is text: no control characters, no line
	 * separators, no halves of a character, and nothing that turns the direction of what
	 * is written around it (Unicode Standard Annex #9, section 2).
	 * @param field name of the field
	 * @param text what was given
	 * @return the text as it is
	 */
	public static String line(String field, String text) {
		if (text.codePoints().anyMatch(Given::breaksTheLine)) {
			throw new BadInput("%s has a line break or a control character".formatted(field), field,
					"write it on one line");
		}
		return text;
	}

	private static boolean breaksTheLine(int point) {
		return Character.isISOControl(point) || Character.getType(point) == Character.SURROGATE || point == 0x2028
				|| point == 0x2029 || (point >= 0x202a && point <= 0x202e) || (point >= 0x2066 && point <= 0x2069);
	}

	/**
	 * A number that must be there.
	 * @param field name of the field
	 * @param value what was given; a decimal comma is taken as a point
	 * @param unit the unit, for the message
	 * @return a finite number
	 */
	public static double number(String field, @Nullable String value, String unit) {
		String text = text(field, value).replace(',', '.');
		try {
			double number = Double.parseDouble(text);
			if (Double.isFinite(number) && !text.matches(".*[dDfFxX].*")) {
				return number;
			}
		}
		catch (NumberFormatException ex) {
			// Falls through to the refusal.
		}
		throw new BadInput("%s '%s' is not a number".formatted(field, shown(value)), field, "give a number in " + unit);
	}

	/**
	 * A whole number that must be there.
	 * @param field name of the field
	 * @param value what was given
	 * @return the number
	 */
	public static int whole(String field, @Nullable String value) {
		String text = text(field, value);
		try {
			return Integer.parseInt(text);
		}
		catch (NumberFormatException ex) {
			throw new BadInput("%s '%s' is not a whole number".formatted(field, shown(value)), field,
					"give a whole number such as 3");
		}
	}

	/**
	 * A date that must be there.
	 * @param field name of the field
	 * @param value what was given
	 * @return the date
	 */
	public static LocalDate date(String field, @Nullable String value) {
		String text = text(field, value);
		try {
			LocalDate date = LocalDate.parse(text);
			// What ISO 8601 has beyond is no day of a garden, and more than tables hold.
			if (date.getYear() >= 1 && date.getYear() <= 9999) {
				return date;
			}
		}
		catch (DateTimeParseException ex) {
			// Falls through to the refusal.
		}
		throw new BadInput("%s '%s' is not a date".formatted(field, shown(value)), field,
				"write year-month-day, for example 2026-05-12");
	}

	/**
	 * A time zone that must be there.
	 * @param field name of the field
	 * @param value what was given
	 * @return the zone
	 */
	public static ZoneId zone(String field, @Nullable String value) {
		String text = text(field, value);
		try {
			return ZoneId.of(text);
		}
		catch (DateTimeException ex) {
			throw new BadInput("%s '%s' is not a time zone".formatted(field, shown(value)), field,
					"use a name such as America/New_York or Europe/Berlin");
		}
	}

	/**
	 * One of several words that must be there.
	 * @param <E> the words
	 * @param field name of the field
	 * @param value what was given, without regard to case, hyphens, spaces or underscores
	 * @param type the words
	 * @return the word
	 */
	public static <E extends Enum<E>> E word(String field, @Nullable String value, Class<E> type) {
		String text = text(field, value).toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
		return Arrays.stream(type.getEnumConstants())
			.filter((constant) -> constant.name().equals(text))
			.findFirst()
			.orElseThrow(() -> new BadInput("%s '%s' is unknown".formatted(field, shown(value)), field,
					"write one of: " + Arrays.stream(type.getEnumConstants())
						.map((constant) -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'))
						.collect(Collectors.joining(", "))));
	}

	/**
	 * Number of a page.
	 * @param page what was given
	 * @return 0 to 100,000
	 */
	public static int page(int page) {
		if (page < 0 || page > 100_000) {
			throw new BadInput("page %d is outside 0 to 100,000".formatted(page), "page", "begin with 0");
		}
		return page;
	}

	/**
	 * Length of a page.
	 * @param size what was given
	 * @return 1 to 200
	 */
	public static int size(int size) {
		if (size < 1 || size > LONGEST_PAGE) {
			throw new BadInput("size %d is outside 1 to %d".formatted(size, LONGEST_PAGE), "size",
					"ask for fewer at a time");
		}
		return size;
	}

}
