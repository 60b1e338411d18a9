package org.leafward.language;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Dates in another language, of which weekday and year may be left out, and spans of two.
 */
final class SpokenDates {

	private static final String SPAN = " – ";

	/** Both ways in which English joins two dates. */
	private static final Pattern JOINED = Pattern.compile(" – | to ");

	private static final List<String> PATTERNS = List.of("EEE d MMM yyyy", "d MMM yyyy", "EEE d MMM", "d MMM");

	private final List<Pair> pairs;

	/** How a date is written in English and in the language. */
	private record Pair(DateTimeFormatter english, DateTimeFormatter other, boolean complete) {
	}

	SpokenDates(Locale locale) {
		this.pairs = PATTERNS.stream()
			.map((pattern) -> new Pair(
					new DateTimeFormatterBuilder().appendPattern(pattern).toFormatter(Locale.ENGLISH),
					DateTimeFormatter.ofPattern(pattern, locale), pattern.contains("y")))
			.toList();
	}

	/**
	 * A date with its weekday and year.
	 * @param day the date
	 * @return for example "jue 12 nov 2026"
	 */
	String of(LocalDate day) {
		return withoutDots(this.pairs.get(0).other.format(day));
	}

	/**
	 * Says a date or a span.
	 * @param english as pages and documents write it
	 * @return null when it is none: words of a person may look like a date
	 */
	@Nullable String say(String english) {
		String[] ends = JOINED.split(english, 2);
		if (ends.length < 2) {
			return one(english);
		}
		String from = one(ends[0]);
		String to = one(ends[1]);
		return (from != null && to != null) ? from + SPAN + to : null;
	}

	private @Nullable String one(String english) {
		for (Pair pair : this.pairs) {
			try {
				if (pair.complete) {
					return withoutDots(pair.other.format(LocalDate.parse(english, pair.english)));
				}
				return withoutDots(pair.other.format(pair.english.parse(english)));
			}
			catch (DateTimeException ex) {
				// Written in another way.
			}
		}
		return null;
	}

	private static String withoutDots(String date) {
		return date.replace(".", "");
	}

}
