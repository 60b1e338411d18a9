package org.leafward.care.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.pages.Formats;

/** The sentence with which a week begins, also when there is nothing in it. */
final class WeekLead {

	private WeekLead() {
	}

	/**
	 * What comes after a week without work.
	 *
	 * @param day its first day
	 * @param title what to do
	 * @param plant for what
	 */
	record Next(LocalDate day, String title, String plant) {
	}

	/**
	 * The sentence.
	 * @param todo how many things to do or to look for
	 * @param holdOffs how many to leave alone
	 * @param next what comes next; null when nothing is planned for a year, or there is
	 * something to do
	 * @param today the day of the reader
	 * @return one or two sentences
	 */
	static String of(int todo, int holdOffs, @Nullable Next next, LocalDate today) {
		if (todo > 0) {
			return capital(Stream
				.of(count(todo, "thing to do", "things to do"), count(holdOffs, "to leave alone", "to leave alone"))
				.filter((part) -> !part.isEmpty())
				.reduce((first, second) -> first + " and " + second)
				.orElse("")) + ".";
		}
		String week = (holdOffs == 0) ? "Nothing this week."
				: "Nothing to do this week, and %s.".formatted(count(holdOffs, "to leave alone", "to leave alone"));
		if (next == null) {
			return week + " Nothing is planned for the year ahead.";
		}
		long days = ChronoUnit.DAYS.between(today, next.day());
		return week + " The next thing is in %d %s, on %s: %s, %s.".formatted(days, (days == 1) ? "day" : "days",
				new Formats(today.getYear()).day(next.day()), next.title(), next.plant());
	}

	/**
	 * Why nothing may be planned for a year.
	 * @param sites whether there are sites
	 * @param plantings whether something is planted
	 * @return a sentence; null where the page says it elsewhere
	 */
	static @Nullable String whyNothing(boolean sites, boolean plantings) {
		if (!sites) {
			return null;
		}
		return plantings
				? "No rule is for what grows at your sites, or its days can’t be told there; the page of each site says which and why."
				: "Nothing is planted at your sites yet. Add what grows there, and its care appears here.";
	}

	private static String capital(String words) {
		return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
	}

	private static String count(int number, String one, String many) {
		return switch (number) {
			case 0 -> "";
			case 1 -> "one " + one;
			default -> number + " " + many;
		};
	}

}
