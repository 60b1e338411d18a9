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
	 * The revision of an entry that the document shows for the first time, or again.
	 * @param entry the entry
	 * @param aheadBy how far sequence numbers of this document have run ahead of those of
	 * what they are about; above all that it may have been shown with before
	 * @return as of the entry
	 */
	public static Revision first(FeedEntry entry, int aheadBy) {
		return new Revision(entry.sequence() + aheadBy, entry.changed());
	}

	/**
	 * The next one of an entry that looks otherwise than before.
	 * @param entry the entry as it is
	 * @param before the revision under which it was shown
	 * @param aheadBy how far numbers have run ahead
	 * @param now the moment, whole seconds
	 * @return higher and later
	 */
	public static Revision next(FeedEntry entry, @Nullable Revision before, int aheadBy, Instant now) {
		if (before == null) {
			return first(entry, aheadBy);
		}
		Instant after = before.changed().plusSeconds(1);
		return new Revision(Math.max(before.sequence() + 1, entry.sequence() + aheadBy),
				now.isBefore(after) ? after : now);
	}

}
