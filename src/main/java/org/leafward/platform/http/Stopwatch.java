package org.leafward.platform.http;

import java.io.IOException;
import java.net.http.HttpTimeoutException;
import java.time.Duration;

/**
 * Tells time-outs from other trouble. When the client gives up, its exception only says
 * that something was cancelled or closed, depending on where it was just then.
 */
final class Stopwatch {

	private final long started = System.nanoTime();

	private final Duration limit;

	Stopwatch(Duration limit) {
		this.limit = limit;
	}

	/** Something that reads from the other side. */
	@FunctionalInterface
	interface Read<T> {

		T get() throws IOException;

	}

	<T> T read(Read<T> read) throws IOException {
		try {
			return read.get();
		}
		catch (HttpTimeoutException ex) {
			throw ex;
		}
		catch (IOException ex) {
			if (System.nanoTime() - this.started < this.limit.toNanos()) {
				throw ex;
			}
			HttpTimeoutException late = new HttpTimeoutException("no whole answer in %s".formatted(this.limit));
			late.initCause(ex);
			throw late;
		}
	}

}
