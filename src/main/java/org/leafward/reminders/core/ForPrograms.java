package org.leafward.reminders.core;

/** Writes what a message is about for programs. */
@FunctionalInterface
public interface ForPrograms {

	/**
	 * Writes it.
	 * @param content what it is about
	 * @param wording the language and units of the reader
	 * @param links addresses
	 * @return a JSON object of at most {@code MessageText.LONGEST_CONTENT} characters
	 */
	String write(Content content, Wording wording, Links links);

}
