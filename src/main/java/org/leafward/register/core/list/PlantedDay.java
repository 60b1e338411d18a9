package org.leafward.register.core.list;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.NameLookup;

/**
 * A day as people write it, in English or Spanish: 2019-05-01 (ISO 8601), 5/1/2019, 1 May
 * 2019, mayo de 2019, 2019.
 *
 * @param day the day; of an undecided one the day when the month comes first
 * @param other of an undecided one the day when the day comes first, else null
 * @param taken how it was understood
 */
public record PlantedDay(LocalDate day, @Nullable LocalDate other, Taken taken) {

	/** How a day was understood. */
	public enum Taken {

		/** Day, month and year were told. */
		WHOLE,

		/** The year has two digits, of the hundred years up to the next one. */
		SHORT_YEAR,

		/** Month and year were told; the first day is taken. */
		MONTH,

		/** The year was told; 1 May is taken. */
		YEAR,

		/** It may be either of two days; whoever wrote it has to say. */
		EITHER

	}

	private static final Pattern ISO = Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})");

	private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{2})");

	private static final Pattern YEAR_MONTH = Pattern.compile("(\\d{4})[-/](\\d{1,2})");

	private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})[-/](\\d{4})");

	private static final Pattern YEAR = Pattern.compile("(?:1[7-9]|2[01])\\d\\d");

	/** Spreadsheets write a time behind a date. */
	private static final Pattern TIME = Pattern.compile("(?<=\\d)[T ]\\d{1,2}:\\d{2}.{0,20}$");

	private static final Pattern ORDINAL = Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)");

	private static final Set<String> BESIDE = Set.of("planted", "since", "in", "on", "from", "about", "around", "c",
			"ca", "circa", "of", "the", "year", "de", "del", "el", "en", "desde", "hacia", "ano", "plantado",
			"plantada", "plantados", "plantadas");

	private static final Map<String, Integer> MONTHS = months();

	private static final int LONGEST = 60;

	/**
	 * Reads a day.
	 * @param text what was written
	 * @param order what comes first in 3/4/2021
	 * @param today for years of two digits
	 * @return empty when it is no day
	 */
	public static Optional<PlantedDay> read(String text, DayOrder order, LocalDate today) {
		if (text.length() > LONGEST) {
			return Optional.empty();
		}
		String plain = TIME.matcher(text.strip()).replaceFirst("");
		Matcher numbers = NUMBERS.matcher(plain);
		if (numbers.matches()) {
			return byNumbers(numbers, order, today);
		}
		Matcher iso = ISO.matcher(plain);
		if (iso.matches()) {
			return day(number(iso, 1), number(iso, 3), number(iso, 4), Taken.WHOLE);
		}
		Matcher yearMonth = YEAR_MONTH.matcher(plain);
		if (yearMonth.matches()) {
			return day(number(yearMonth, 1), number(yearMonth, 2), 1, Taken.MONTH);
		}
		Matcher monthYear = MONTH_YEAR.matcher(plain);
		if (monthYear.matches()) {
			return day(number(monthYear, 2), number(monthYear, 1), 1, Taken.MONTH);
		}
		return inWords(plain, order, today);
	}

	private static Optional<PlantedDay> inWords(String text, DayOrder order, LocalDate today) {
		List<String> words = new ArrayList<>();
		for (String word : NameLookup.fold(text).split(" ")) {
			if (!BESIDE.contains(word)) {
				words.add(ORDINAL.matcher(word).replaceFirst("$1"));
			}
		}
		List<Integer> months = words.stream().filter(MONTHS::containsKey).map(MONTHS::get).toList();
		List<Integer> years = words.stream()
			.filter((word) -> YEAR.matcher(word).matches())
			.map(Integer::valueOf)
			.toList();
		List<Integer> days = words.stream().filter((word) -> word.matches("\\d{1,2}")).map(Integer::valueOf).toList();
		if (years.size() != 1 || months.size() > 1 || days.size() > 1
				|| words.size() != years.size() + months.size() + days.size()) {
			return withoutWordsBeside(text, order, today);
		}
		if (months.isEmpty()) {
			return days.isEmpty() ? day(years.get(0), Month.MAY.getValue(), 1, Taken.YEAR) : Optional.empty();
		}
		return days.isEmpty() ? day(years.get(0), months.get(0), 1, Taken.MONTH)
				: day(years.get(0), months.get(0), days.get(0), Taken.WHOLE);
	}

	/** "planted 5/1/2019": the last word is a date in numbers. */
	private static Optional<PlantedDay> withoutWordsBeside(String text, DayOrder order, LocalDate today) {
		String[] words = text.strip().split("\\s+");
		for (int i = 0; i < words.length - 1; i++) {
			if (!BESIDE.contains(NameLookup.fold(words[i]))) {
				return Optional.empty();
			}
		}
		return (words.length > 1) ? read(words[words.length - 1], order, today) : Optional.empty();
	}

	private static Optional<PlantedDay> byNumbers(Matcher numbers, DayOrder order, LocalDate today) {
		int first = number(numbers, 1);
		int second = number(numbers, 3);
		boolean shortYear = numbers.group(4).length() == 2;
		int year = shortYear ? century(number(numbers, 4), today) : number(numbers, 4);
		Taken taken = shortYear ? Taken.SHORT_YEAR : Taken.WHOLE;
		Optional<PlantedDay> monthFirst = day(year, first, second, taken);
		Optional<PlantedDay> dayFirst = day(year, second, first, taken);
		if (monthFirst.isEmpty() || dayFirst.isEmpty() || first == second) {
			return monthFirst.or(() -> dayFirst);
		}
		return switch (order) {
			case MONTH_FIRST -> monthFirst;
			case DAY_FIRST -> dayFirst;
			case UNKNOWN -> Optional.of(new PlantedDay(monthFirst.get().day(), dayFirst.get().day(), Taken.EITHER));
		};
	}

	private static int century(int year, LocalDate today) {
		int next = today.getYear() + 1;
		int here = next - next % 100 + year;
		return (here > next) ? here - 100 : here;
	}

	private static Optional<PlantedDay> day(int year, int month, int day, Taken taken) {
		try {
			return Optional.of(new PlantedDay(LocalDate.of(year, month, day), null, taken));
		}
		catch (DateTimeException ex) {
			return Optional.empty();
		}
	}

	private static int number(Matcher matcher, int group) {
		return Integer.parseInt(matcher.group(group));
	}

	/**
	 * Whether it is a month and a day, of which the year stands in the next cell: "May 1,
	 * 2019" between commas.
	 */
	static boolean lacksItsYear(String text) {
		String[] words = NameLookup.fold(text).split(" ");
		return words.length == 2 && MONTHS.containsKey(words[0])
				&& ORDINAL.matcher(words[1]).replaceFirst("$1").matches("\\d{1,2}");
	}

	static boolean isYear(String text) {
		return YEAR.matcher(text.strip()).matches();
	}

	private static Map<String, Integer> months() {
		Map<String, Integer> months = new HashMap<>(Map.of("sept", 9, "set", 9));
		for (Month month : Month.values()) {
			for (Locale locale : List.of(Locale.ENGLISH, Locale.forLanguageTag("es"))) {
				for (TextStyle style : List.of(TextStyle.FULL, TextStyle.SHORT)) {
					months.putIfAbsent(NameLookup.fold(month.getDisplayName(style, locale)), month.getValue());
				}
			}
		}
		return Map.copyOf(months);
	}

}
