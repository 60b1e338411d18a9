package org.leafward.advisories;

import org.leafward.language.Language;

/**
 * How an advisory would look to whoever is told of it. Implemented by whoever tells them,
 * with the words that are sent; a server without one shows none.
 */
public interface MessagePreview {

	/**
	 * A message that was not sent.
	 *
	 * @param language what its readers read
	 * @param subject of the mail
	 * @param text of the mail
	 * @param push what a browser shows under the subject
	 */
	record Shown(Language language, String subject, String text, String push) {
	}

	/**
	 * What somebody would get who was told of it before, if there is a message before,
	 * and who chose nothing else than the language.
	 * @param advisory the advisory as the message would say it
	 * @param language what they read
	 * @return without an address that leaves a series
	 */
	Shown of(Advisory advisory, Language language);

}
