package org.leafward.reminders.channel.webhook;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * What came of a call.
 *
 * @param status HTTP status; 0 when there was no answer
 * @param words the same in words, with nothing of what the other side said
 * @param pause how long it asked to be left alone; null when it didn't
 */
record WebhookAnswer(int status, String words, @Nullable Duration pause) {

	private static final int GONE = 410;

	static WebhookAnswer silent(String words) {
		return new WebhookAnswer(0, words, null);
	}

	boolean taken() {
		return this.status >= 200 && this.status < 300;
	}

	boolean gone() {
		return this.status == GONE;
	}

}
