package org.leafward.reminders.core;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What both parts of a mail say. All words are single lines.
 *
 * @param language tag of the language (BCP 47)
 * @param title its first line
 * @param body what it is about
 * @param foot why somebody gets it, and how not to
 */
record Letter(String language, String title, List<Block> body, List<Sentence> foot) {

	/** A piece of a letter. */
	sealed interface Block {

	}

	/** Begins a part. */
	record Part(String heading) implements Block {
	}

	/**
	 * A task.
	 *
	 * @param heading what, and for which plant
	 * @param lines label and value, in reading order
	 * @param links what can be opened
	 */
	record Piece(String heading, List<Line> lines, List<Sentence> links) implements Block {
	}

	/** Short entries. */
	record Entries(List<Sentence> entries) implements Block {
	}

	/**
	 * Words that may be a link.
	 *
	 * @param words the words
	 * @param address where they lead; null for no link
	 */
	record Sentence(String words, @Nullable String address) implements Block {

		static Sentence of(String words) {
			return new Sentence(words, null);
		}

	}

	/**
	 * A label and its value.
	 *
	 * @param label what it tells
	 * @param value the words
	 * @param caution whether it tells what can hurt someone
	 */
	record Line(String label, String value, boolean caution) {
	}

}
