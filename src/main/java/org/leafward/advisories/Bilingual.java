package org.leafward.advisories;

import org.leafward.language.Language;

/**
 * Words in both languages of an advisory.
 *
 * @param english in English
 * @param spanish in Spanish
 */
public record Bilingual(String english, String spanish) {

	/**
	 * The words in a language.
	 * @param language which
	 * @return English for whatever is not Spanish
	 */
	public String in(Language language) {
		return (language == Language.SPANISH) ? this.spanish : this.english;
	}

}
