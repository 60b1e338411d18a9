package org.leafward.workdays.web;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;

/** Fields that forms of groups and workdays share. */
final class Fields {

	private static final int MOST_DAYS = 1000;

	private Fields() {
	}

	static UUID id(String field, @Nullable String text) {
		try {
			return UUID.fromString(Given.text(field, text));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("that is no identifier", field, "load the page anew");
		}
	}

	/** What is read, by words that people know instead of the name of its field. */
	static <T> T called(String words, String field, Function<String, T> read) {
		try {
			return read.apply(words);
		}
		catch (BadInput ex) {
			throw new BadInput(ex.what(), field, ex.mend());
		}
	}

	static LocalTime time(String field, @Nullable String text) {
		try {
			return LocalTime.parse(Given.text(field, text));
		}
		catch (DateTimeParseException ex) {
			throw new BadInput("'%s' is no time of day".formatted(Given.shown(text)), field, "write it like 09:00");
		}
	}

	static Set<DayOfWeek> weekdays(@Nullable List<String> names) {
		Set<DayOfWeek> days = new TreeSet<>();
		for (String name : (names != null) ? names : List.<String>of()) {
			days.add(Given.word("weekdays", name, DayOfWeek.class));
		}
		return days;
	}

	/** Days, one a line or parted by commas and blanks; a span as from..to. */
	static Set<LocalDate> days(String field, @Nullable String text) {
		Set<LocalDate> days = new TreeSet<>();
		for (String one : ((text != null) ? text : "").split("[\\s,;]+")) {
			if (one.isBlank()) {
				continue;
			}
			String[] ends = one.split("\\.\\.", -1);
			LocalDate from = Given.date(field, ends[0]);
			LocalDate to = (ends.length == 2) ? Given.date(field, ends[1]) : from;
			if (ends.length > 2 || to.isBefore(from) || from.plusDays(MOST_DAYS).isBefore(to)) {
				throw new BadInput("'%s' is no span of days".formatted(Given.shown(one)), field,
						"write it like 2026-12-24..2027-01-03");
			}
			for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
				days.add(day);
			}
			if (days.size() > MOST_DAYS) {
				throw new BadInput("these are more than %d days".formatted(MOST_DAYS), field,
						"leave out those that are over");
			}
		}
		return days;
	}

	/** The same days as a text that is read back, spans where days follow each other. */
	static String text(Set<LocalDate> days) {
		List<String> parts = new ArrayList<>();
		List<LocalDate> sorted = days.stream().sorted().toList();
		int at = 0;
		while (at < sorted.size()) {
			int end = at;
			while (end + 1 < sorted.size() && sorted.get(end + 1).equals(sorted.get(end).plusDays(1))) {
				end++;
			}
			parts.add((end == at) ? sorted.get(at).toString() : sorted.get(at) + ".." + sorted.get(end));
			at = end + 1;
		}
		return String.join("\n", parts);
	}

	static List<Choice> weekdays() {
		return List.of(DayOfWeek.values())
			.stream()
			.map((day) -> new Choice(day.name(), day.getDisplayName(TextStyle.FULL, Locale.ENGLISH)))
			.toList();
	}

	static Set<String> names(Set<? extends Enum<?>> values) {
		return values.stream().map(Enum::name).collect(Collectors.toSet());
	}

	static String clock(LocalTime time) {
		return time.toString().substring(0, 5);
	}

}
