package org.leafward.language;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.measure.DayWindow;

/** Says English words in a language. */
public interface Phrasebook {

	Language language();

	/**
	 * Says a text.
	 * @param english words as the server writes them
	 * @return in the language; English when a part of it can't be said
	 */
	String say(String english);

	/**
	 * Says a text, if it can.
	 * @param english words as the server writes them
	 * @return in the language; nothing when a part of it can't be said
	 */
	Optional<String> find(String english);

	/**
	 * Whether it can say a text whole.
	 * @param english the text
	 * @return true for every text when the language is English
	 */
	boolean knows(String english);

	/**
	 * A date with its weekday and year.
	 * @param day the date
	 * @return for example "jue 12 nov 2026"
	 */
	String day(LocalDate day);

	/**
	 * Both ends of a window.
	 * @param window the window
	 * @return one date when it has one day
	 */
	String days(DayWindow window);

}
