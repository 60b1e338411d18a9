package org.leafward.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of phrases as written.
 *
 * @param title what it holds
 * @param groups what may stand in places of patterns
 * @param phrases whole texts and patterns
 */
record PhraseFile(String title, @Nullable List<Group> groups, @Nullable List<Phrase> phrases) {

	/**
	 * A group of what may stand in a place.
	 *
	 * @param name its name
	 * @param members what may stand there
	 */
	record Group(String name, List<Phrase> members) {
	}

	/**
	 * A phrase in two languages.
	 *
	 * @param en in English, with places such as {n}
	 * @param say in the language of the file, with places such as {1}
	 */
	record Phrase(String en, String say) {
	}

	List<Group> allGroups() {
		return (this.groups != null) ? this.groups : List.of();
	}

	List<Phrase> allPhrases() {
		return (this.phrases != null) ? this.phrases : List.of();
	}

}
