package org.leafward.reminders.channel.webhook;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import org.leafward.reminders.Message;
import tools.jackson.databind.json.JsonMapper;

/** What a webhook is sent: a type, a time and data, as JSON. */
final class WebhookBody {

	/** Smaller than the 20 kB that the other side is told to expect at most. */
	static final int MOST_BYTES = 20_000;

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private WebhookBody() {
	}

	/**
	 * A message about what is due. Where it would be too long only the address of the
	 * page that tells it all goes out.
	 * @param message the message
	 * @return UTF-8, below 20 kB
	 */
	static byte[] of(Message message) {
		byte[] full = write("reminders.due", message.createdAt(), message.words().content());
		return (full.length < MOST_BYTES) ? full : write("reminders.due", message.createdAt(),
				JSON.writeValueAsString(Map.of("cut", true, "link", message.words().link())));
	}

	/**
	 * A message that tries whether all is well.
	 * @param now when it is made
	 * @param page address of the page from which it was sent
	 * @return UTF-8
	 */
	static byte[] trial(Instant now, String page) {
		return write("reminders.trial", now,
				JSON.writeValueAsString(Map.of("text", "A trial. Nothing is due.", "link", page)));
	}

	private static byte[] write(String type, Instant at, String data) {
		return "{\"type\":\"%s\",\"timestamp\":\"%s\",\"data\":%s}".formatted(type, at, data)
			.getBytes(StandardCharsets.UTF_8);
	}

}
