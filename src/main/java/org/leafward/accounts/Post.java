package org.leafward.accounts;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Hands mails of an outbox on; implemented by the module that owns mail. The outbox is
 * the caller's: nothing is kept here.
 */
public interface Post {

	/**
	 * The address that mails come from.
	 * @return without a name
	 */
	String sender();

	/**
	 * Hands a mail on. Talks to the network, so it is never called inside a transaction;
	 * bounded in time by the settings of the mail server. Throws nothing for trouble
	 * outside.
	 * @param mail the mail
	 * @return what came of it
	 */
	Handed hand(Mail mail);

	/**
	 * A mail to one person.
	 *
	 * @param id names the mail, the same however often it is tried
	 * @param to the address
	 * @param name the name beside it
	 * @param subject one line
	 * @param text plain text; lines that are an address become a link
	 * @param calendar an invitation (RFC 6047); null for none
	 * @param method its method; null for none
	 * @param thread what mails about the same thing share; null for none
	 * @param language its code (ISO 639-1)
	 * @param writtenAt when it was written
	 */
	record Mail(UUID id, String to, String name, String subject, String text, @Nullable String calendar,
			@Nullable String method, @Nullable String thread, String language, Instant writtenAt) {
	}

	/**
	 * What came of it.
	 *
	 * @param outcome taken or not
	 * @param reason why not; null when it was
	 */
	record Handed(Outcome outcome, @Nullable String reason) {
	}

	/** What can come of it. */
	enum Outcome {

		/** The mail server has it. */
		TAKEN,

		/** No mail server is set up. */
		KEPT,

		/** Worth another try. */
		LATER,

		/** Never to this address, or not in this form. */
		REFUSED

	}

}
