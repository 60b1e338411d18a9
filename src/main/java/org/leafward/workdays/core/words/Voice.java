package org.leafward.workdays.core.words;

import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.language.Units;

/**
 * Says sentences to a reader. Names and words of people are put beside them, or stand in
 * places of patterns that leave them as they are.
 *
 * @param book in which language
 * @param units with which units
 */
public record Voice(Phrasebook book, Units units) {

	/** As everything is written. */
	public static final Voice USUAL = new Voice(Phrasebooks.english(), Speech.USUAL.units());

	/**
	 * Says words.
	 * @param english one sentence or more, without units
	 * @return English when a part of it can't be said
	 */
	public String say(String english) {
		return this.book.say(english);
	}

	/**
	 * Says words with amounts.
	 * @param english one sentence or more, with pairs of units
	 * @return with the reader's units
	 */
	public String measured(String english) {
		return this.units.in(this.book.say(english));
	}

}
