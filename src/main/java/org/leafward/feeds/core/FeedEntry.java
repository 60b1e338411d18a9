package org.leafward.feeds.core;

import java.time.Instant;
import java.time.ZonedDateTime;
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
 * @param url address of the page about it; null for a notice
 * @param kind what it asks for; null for a notice
 * @param categories words to filter by, one or more. None holds a comma: clients are
 * known to split there even when it is escaped.
 * @param standing where it stands
 * @param meeting its hours; null for whole days
 */
public record FeedEntry(String uid, int sequence, Instant created, Instant changed, DayWindow window, String summary,
		String description, @Nullable String url, @Nullable TaskKind kind, List<String> categories, Standing standing,
		@Nullable Meeting meeting) {

	/**
	 * Where and at what time of its only day people meet.
	 *
	 * @param start when it begins, in a zone with a name of the IANA database
	 * @param end when it ends, in the same zone
	 * @param place where, on one line, may be empty
	 * @param busy whether the reader has said that they come
	 */
	public record Meeting(ZonedDateTime start, ZonedDateTime end, String place, boolean busy) {
	}

	/**
	 * An entry of whole days.
	 * @param uid the same for the life of what it shows
	 * @param sequence number of changes
	 * @param created when it came to be
	 * @param changed when it last changed
	 * @param window its days
	 * @param summary one line
	 * @param description plain text
	 * @param url address of the page about it
	 * @param kind what it asks for
	 * @param categories words to filter by
	 * @param standing where it stands
	 */
	public FeedEntry(String uid, int sequence, Instant created, Instant changed, DayWindow window, String summary,
			String description, @Nullable String url, @Nullable TaskKind kind, List<String> categories,
			Standing standing) {
		this(uid, sequence, created, changed, window, summary, description, url, kind, categories, standing, null);
	}

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
