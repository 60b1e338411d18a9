package org.leafward.reminders.core;

import org.leafward.language.Speech;
import org.leafward.reminders.MessageText;

/** Puts what a message is about into words. */
@FunctionalInterface
public interface Writing {

	/**
	 * Writes a message.
	 * @param content what it is about
	 * @param speech language and units of the reader
	 * @return the same for the same content
	 */
	MessageText write(Content content, Speech speech);

}
