package org.leafward.reminders.channel.push;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.leafward.reminders.Message;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.OneLine;
import tools.jackson.databind.json.JsonMapper;

/**
 * What is sent to a browser.
 *
 * @param title first line of the notification, at most 120 characters
 * @param body the rest of it, at most 240 characters
 * @param link what opens when it is pressed
 * @param tag the same for what takes each other's place, in the browser and at the push
 * service: at most 32 characters of base64url (RFC 8030, section 5.4)
 * @param urgent whether it is worth the battery of a device that is saving it (RFC 8030,
 * section 5.3)
 * @param uselessAt from when it is no longer worth showing
 */
record PushNote(String title, String body, String link, String tag, boolean urgent, Instant uselessAt) {

	private static final int LONGEST_TITLE = 120;

	private static final int LONGEST_BODY = 240;

	private static final int LONGEST_LINK = 1000;

	private static final int LONGEST_TAG = 32;

	/** What is to be done today is told anew tomorrow. */
	private static final Duration DAY = Duration.ofDays(1);

	/** When a frosty night is over its warning would only puzzle. */
	private static final Duration NIGHT = Duration.ofHours(12);

	private static final JsonMapper JSON = new JsonMapper();

	PushNote {
		title = OneLine.of(title, LONGEST_TITLE);
		body = OneLine.of(body, LONGEST_BODY);
		// A link cut off leads nowhere.
		link = (link.length() > LONGEST_LINK) ? "/" : link;
	}

	static PushNote of(Message message) {
		boolean tonight = message.series() == Series.TONIGHT;
		return new PushNote(message.subject(), message.words().brief(), message.words().link(), tag(message.id()),
				tonight || message.series() == Series.ADVISORY, message.createdAt().plus(tonight ? NIGHT : DAY));
	}

	private static String tag(UUID id) {
		try {
			byte[] hash = MessageDigest.getInstance("SHA-256").digest(id.toString().getBytes(StandardCharsets.UTF_8));
			return Base64.getUrlEncoder().withoutPadding().encodeToString(hash).substring(0, LONGEST_TAG);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java has SHA-256", ex);
		}
	}

	/** What the browser's worker reads: a JSON object, far below what can be sealed. */
	byte[] octets() {
		Map<String, String> members = new LinkedHashMap<>();
		members.put("title", this.title);
		members.put("body", this.body);
		members.put("link", this.link);
		members.put("tag", this.tag);
		return JSON.writeValueAsBytes(members);
	}

	/**
	 * How long a push service may keep it (RFC 8030, section 5.2).
	 * @param now the time
	 * @return whole seconds, 0 or more; 0 shows it now or never
	 */
	long secondsLeft(Instant now) {
		return Math.max(0, Duration.between(now, this.uselessAt).toSeconds());
	}

}
