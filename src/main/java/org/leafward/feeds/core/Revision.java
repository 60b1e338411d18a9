package org.leafward.feeds.core;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The revision under which a document shows an entry (RFC 5545 sections 3.8.7.3 and
 * 3.8.7.4). It goes up when a reader of this document would see a difference, whatever
 * brought it about: the task, the rules, the language, the words of the server.
 *
 * @param sequence never falls
 * @param changed whole seconds
 */
public record Revision(int sequence, Instant changed) {

	/**
	 * The revision of an entry in a first document.
	 * @param entry the entry
	 * @param aheadBy how far sequence numbers have run ahead of those of what they are
	 * about
	 * @return as of the entry
	 */
	public static Revision first(FeedEntry entry, int aheadBy) {
		return new Revision(entry.sequence() + aheadBy, entry.changed());
	}

	/**
	 * The next one of an entry that looks otherwise than in the document before, or that
	 * was not in it. It may have been in an earlier one, and a client that missed those
	 * between takes only what is later than what it has, so it is new as of now.
	 * @param entry the entry as it is
	 * @param before the revision under which it was shown; null when it was not
	 * @param aheadBy how far numbers of this document have run ahead; above all that the
	 * entry may have been shown with before
	 * @param now the moment, whole seconds
	 * @return higher and later
	 */
	public static Revision next(FeedEntry entry, @Nullable Revision before, int aheadBy, Instant now) {
		if (before == null) {
			return new Revision(entry.sequence() + aheadBy, now);
		}
		Instant after = before.changed().plusSeconds(1);
		return new Revision(Math.max(before.sequence() + 1, entry.sequence() + aheadBy),
				now.isBefore(after) ? after : now);
	}

}
