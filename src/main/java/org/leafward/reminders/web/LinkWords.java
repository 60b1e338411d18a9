package org.leafward.reminders.web;

import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;

/**
 * Says what stands on the pages behind the links of messages, to the person who got them.
 *
 * @param book words of their language
 * @param units the units that they want
 */
record LinkWords(Phrasebook book, Units units) {

	/** A planting as its people call it, with its species in brackets. */
	private static final Pattern PLANT = Pattern.compile("(.+) \\(([^()]+)\\)");

	static LinkWords of(Phrasebooks books, Speech speech) {
		return new LinkWords(books.of(speech.language()), speech.units());
	}

	/** Code of the language, for the markup. */
	public String language() {
		return this.book.language().code();
	}

	/** Words of the server. */
	public String say(String english) {
		return this.units.in(this.book.say(english));
	}

	/** What its people call it stays; the name of the species behind it is said. */
	public String plant(String words) {
		Matcher named = PLANT.matcher(words);
		return (named.matches() && this.book.knows(named.group(2)))
				? named.group(1) + " (" + this.book.say(named.group(2)) + ")" : this.book.say(words);
	}

	public String days(DayWindow window) {
		return this.book.days(window);
	}

	public String day(LocalDate day) {
		return this.book.day(day);
	}

}
