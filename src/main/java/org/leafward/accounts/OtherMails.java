package org.leafward.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Mails that a module writes by itself and hands on by {@link Post}, to be read where
 * people read the others.
 */
public interface OtherMails {

	/**
	 * Mails to somebody.
	 * @param person who
	 * @param most how many at most, 1 or more
	 * @return newest first
	 */
	List<Letter> newest(PersonId person, int most);

	/**
	 * One mail.
	 * @param id its identifier
	 * @return empty when it is none of this module's
	 */
	Optional<Letter> find(UUID id);

	/**
	 * A mail as its reader sees it.
	 *
	 * @param id identifier
	 * @param person to whom
	 * @param to the address
	 * @param name the name beside it
	 * @param subject one line
	 * @param text plain text; empty once it was sent, as its links answer for the reader
	 * @param standing what became of it
	 * @param reason why it isn't sent; null when it is, or nobody tried
	 * @param writtenAt when it was written
	 */
	record Letter(UUID id, PersonId person, String to, String name, String subject, String text, Standing standing,
			@Nullable String reason, Instant writtenAt) {
	}

	/** What became of a mail. */
	enum Standing {

		/** It is not taken yet. */
		WAITING,

		/** The mail server has it. */
		SENT,

		/** No mail server is set up. */
		KEPT,

		/** It was refused, or tried in vain. */
		FAILED

	}

}
