package org.leafward.platform.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.hc.client5.http.classic.ExecChain;
import org.apache.hc.client5.http.classic.ExecChainHandler;
import org.apache.hc.core5.concurrent.Cancellable;
import org.apache.hc.core5.http.ClassicHttpRequest;
import org.apache.hc.core5.http.ClassicHttpResponse;
import org.apache.hc.core5.http.ContentType;
import org.apache.hc.core5.http.HttpEntity;
import org.apache.hc.core5.http.HttpException;
import org.apache.hc.core5.http.io.entity.ByteArrayEntity;

/**
 * Hears a stranger out for so long and no longer, from the first octet sent to the last
 * one read, and keeps the beginning of what they say. Whoever drips an octet now and then
 * would outlive any time-out of single reads.
 */
final class ShortExchange implements ExecChainHandler, AutoCloseable {

	private final Duration limit;

	private final int mostBytes;

	private final ScheduledThreadPoolExecutor timer = new ScheduledThreadPoolExecutor(1, (work) -> {
		Thread thread = new Thread(work, "ends-of-exchanges");
		thread.setDaemon(true);
		return thread;
	});

	/**
	 * Creates it.
	 * @param limit how long an exchange may take
	 * @param mostBytes how much of an answer is kept; the rest is not read
	 */
	ShortExchange(Duration limit, int mostBytes) {
		this.limit = limit;
		this.mostBytes = mostBytes;
		this.timer.setRemoveOnCancelPolicy(true);
	}

	@Override
	public ClassicHttpResponse execute(ClassicHttpRequest request, ExecChain.Scope scope, ExecChain chain)
			throws IOException, HttpException {
		AtomicBoolean late = new AtomicBoolean();
		Future<?> end = this.timer.schedule(() -> {
			late.set(true);
			cutOff(scope);
		}, this.limit.toMillis(), TimeUnit.MILLISECONDS);
		try {
			ClassicHttpResponse answer = chain.proceed(request, scope);
			shorten(answer, scope);
			return answer;
		}
		catch (IOException ex) {
			if (!late.get()) {
				throw ex;
			}
			HttpTimeoutException tooLate = new HttpTimeoutException("no answer in %s".formatted(this.limit));
			tooLate.initCause(ex);
			throw tooLate;
		}
		finally {
			end.cancel(false);
		}
	}

	private static void cutOff(ExecChain.Scope scope) {
		if (scope.originalRequest instanceof Cancellable request) {
			request.cancel();
		}
		scope.execRuntime.discardEndpoint();
	}

	private void shorten(ClassicHttpResponse answer, ExecChain.Scope scope) {
		HttpEntity entity = answer.getEntity();
		if (entity == null) {
			return;
		}
		byte[] first = beginning(entity);
		// Closing the answer would read it to its end, so there is no connection any
		// more.
		scope.execRuntime.discardEndpoint();
		answer.setEntity(new ByteArrayEntity(first, ContentType.parseLenient(entity.getContentType())));
	}

	/** The status is known; what goes wrong behind it doesn't change that. */
	private byte[] beginning(HttpEntity entity) {
		ByteArrayOutputStream kept = new ByteArrayOutputStream();
		try {
			InputStream body = entity.getContent();
			byte[] buffer = new byte[1024];
			while (kept.size() < this.mostBytes) {
				int got = body.read(buffer, 0, Math.min(buffer.length, this.mostBytes - kept.size()));
				if (got < 0) {
					break;
				}
				kept.write(buffer, 0, got);
			}
		}
		catch (IOException ex) {
			// What came before it is kept.
		}
		return kept.toByteArray();
	}

	@Override
	public void close() {
		this.timer.shutdownNow();
	}

}
