package org.leafward.reminders.channel.webhook;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;

/** The header by which a server asks to be left alone for a while. */
final class RetryAfter {

	/** Who asks for more gets no more: a reminder is of use for so long only. */
	static final Duration MOST = Duration.ofDays(1);

	private RetryAfter() {
	}

	/**
	 * Reads the header (RFC 9110, section 10.2.3).
	 * @param header seconds, or a date; null when there is none
	 * @param now the time
	 * @return how long, up to a day; null when nothing can be read, or it is over
	 */
	static @Nullable Duration of(@Nullable String header, Instant now) {
		if (header == null) {
			return null;
		}
		String text = header.strip();
		try {
			Duration wait = text.matches("\\d{1,9}") ? Duration.ofSeconds(Long.parseLong(text))
					: Duration.between(now, Instant.from(DateTimeFormatter.RFC_1123_DATE_TIME.parse(text)));
			if (wait.isNegative() || wait.isZero()) {
				return null;
			}
			return (wait.compareTo(MOST) > 0) ? MOST : wait;
		}
		catch (DateTimeException ex) {
			return null;
		}
	}

}
