package org.leafward.platform.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.client.ClientHttpResponse;

/** An answer whose body breaks off with words instead of filling the memory. */
final class CappedResponse implements ClientHttpResponse {

	private final ClientHttpResponse response;

	private final long mostBytes;

	private final Stopwatch watch;

	private CappedResponse(ClientHttpResponse response, long mostBytes, Stopwatch watch) {
		this.response = response;
		this.mostBytes = mostBytes;
		this.watch = watch;
	}

	static CappedResponse of(ClientHttpResponse response, long mostBytes, Stopwatch watch) throws IOException {
		if (response.getHeaders().getContentLength() > mostBytes) {
			response.close();
			throw tooLarge(mostBytes);
		}
		return new CappedResponse(response, mostBytes, watch);
	}

	private static IOException tooLarge(long mostBytes) {
		return new IOException("the answer is larger than %d bytes".formatted(mostBytes));
	}

	@Override
	public InputStream getBody() throws IOException {
		return new Capped(this.response.getBody(), this.mostBytes, this.watch);
	}

	@Override
	public HttpHeaders getHeaders() {
		return this.response.getHeaders();
	}

	@Override
	public HttpStatusCode getStatusCode() throws IOException {
		return this.response.getStatusCode();
	}

	@Override
	public String getStatusText() throws IOException {
		return this.response.getStatusText();
	}

	@Override
	public void close() {
		this.response.close();
	}

	private static final class Capped extends FilterInputStream {

		private final long mostBytes;

		private final Stopwatch watch;

		private long read;

		Capped(InputStream stream, long mostBytes, Stopwatch watch) {
			super(stream);
			this.mostBytes = mostBytes;
			this.watch = watch;
		}

		@Override
		public int read() throws IOException {
			int symbol = this.watch.read(super::read);
			count((symbol < 0) ? 0 : 1);
			return symbol;
		}

		@Override
		public int read(byte[] buffer, int from, int length) throws IOException {
			int got = this.watch.read(() -> super.read(buffer, from, length));
			count(Math.max(0, got));
			return got;
		}

		@Override
		public long skip(long length) throws IOException {
			long skipped = this.watch.read(() -> super.skip(length));
			count(skipped);
			return skipped;
		}

		private void count(long bytes) throws IOException {
			this.read += bytes;
			if (this.read > this.mostBytes) {
				throw tooLarge(this.mostBytes);
			}
		}

		@Override
		public boolean markSupported() {
			return false;
		}

	}

}
