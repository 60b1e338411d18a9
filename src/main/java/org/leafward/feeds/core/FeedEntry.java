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
 * @param sequence number of visible changes, never falls
 * @param created when what it shows came to be, whole seconds
 * @param changed when a reader last saw a difference, whole seconds
 * @param window its days
 * @param summary at most 60 code points on one line
 * @param description plain text, lines parted by LF, at most 1,000 octets in UTF-8
 * @param url the page about it; null for a notice
 * @param kind what it asks for; null for a notice
 * @param cancelled whether it is no longer needed
 */
public record FeedEntry(String uid, int sequence, Instant created, Instant changed, DayWindow window, String summary,
		String description, @Nullable URI url, @Nullable TaskKind kind, boolean cancelled) {

	/**
	 * Words to filter by. None holds a comma: clients are known to split there even when
	 * it is escaped.
	 * @return one or two
	 */
	public List<String> categories() {
		if (this.kind == null) {
			return List.of("Plant care");
		}
		return switch (this.kind) {
			case DO -> List.of("Plant care", "To do");
			case HOLD_OFF -> List.of("Plant care", "Hold-off");
			case RAMP_DAY -> List.of("Plant care", "Hardening off");
			case WATCH -> List.of("Plant care", "Look for");
		};
	}

}
