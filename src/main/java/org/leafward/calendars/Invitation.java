package org.leafward.calendars;

import java.time.Instant;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;

/**
 * An invitation to one person, or its end (RFC 5546, sections 3.2.2 and 3.2.5). Nobody
 * else who is invited stands in it.
 *
 * @param method whether it asks or takes back
 * @param uid the same for all messages about one event
 * @param sequence raised with each change of day, time and place
 * @param stamp when this message was written
 * @param start when it begins, in a zone with a name of the IANA database
 * @param end when it ends, in the same zone
 * @param summary one line
 * @param description plain text, may have several lines
 * @param location one line, may be empty
 * @param organizer who gets the answers
 * @param attendee who is invited
 * @param answer what they answered so far
 * @param url where it can be read; null for nowhere
 */
public record Invitation(Method method, String uid, int sequence, Instant stamp, ZonedDateTime start, ZonedDateTime end,
		String summary, String description, String location, Party organizer, Party attendee, Answer answer,
		@Nullable String url) {

	/** What it does. */
	public enum Method {

		/** Asks somebody to come, anew after a change. */
		REQUEST,

		/** Tells that it doesn't take place. */
		CANCEL

	}

}
