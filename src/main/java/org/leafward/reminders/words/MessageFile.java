package org.leafward.reminders.words;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.core.Words.Counted;

/**
 * A file of words of messages as written.
 *
 * @param title what it holds
 * @param words words with one form, by key
 * @param counts words with two forms, by key
 */
record MessageFile(String title, @Nullable Map<String, String> words, @Nullable Map<String, Counted> counts) {

	Map<String, String> allWords() {
		return (this.words != null) ? this.words : Map.of();
	}

	Map<String, Counted> allCounts() {
		return (this.counts != null) ? this.counts : Map.of();
	}

}
