package org.leafward.feeds.core;

import java.net.URI;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWindow;

/**
 * What one calendar entry shows.
 *
 * @param uid the same for the life of what it shows (RFC 5545 section 3.8.4.7)
 * @param sequence number of changes of what it is about; the document counts on from here
 * @param created when what it shows came to be, whole seconds
 * @param changed when what it is about last changed, whole seconds
 * @param window its days
 * @param summary at most 60 code points on one line
 * @param description plain text, lines parted by LF, at most 1,000 octets in UTF-8
 * @param url the page about it; null for a notice
 * @param kind what it asks for; null for a notice
 * @param categories words to filter by, one or more. None holds a comma: clients are
 * known to split there even when it is escaped.
 * @param standing where it stands
 */
public record FeedEntry(String uid, int sequence, Instant created, Instant changed, DayWindow window, String summary,
		String description, @Nullable URI url, @Nullable TaskKind kind, List<String> categories, Standing standing) {

	/** Where an entry stands. */
	public enum Standing {

		/** To be seen to. */
		OPEN,

		/** Done. */
		DONE,

		/** Left out by its people. */
		LEFT_OUT,

		/** No longer needed. */
		CANCELLED

	}

	public FeedEntry {
		categories = List.copyOf(categories);
	}

	public boolean cancelled() {
		return this.standing == Standing.CANCELLED;
	}

	/**
	 * Whether there is something to do about it.
	 * @return false for notices, hold-offs and what is over
	 */
	public boolean todo() {
		return this.kind != null && this.kind != TaskKind.HOLD_OFF;
	}

}
