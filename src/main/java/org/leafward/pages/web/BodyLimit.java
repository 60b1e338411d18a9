package org.leafward.pages.web;

import java.io.IOException;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;

import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Bounds the bodies that programs send. PUT carries files, which may be large; all other
 * bodies are small. A length that is announced is refused before anything is read, one
 * that isn't where the bound is passed.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 60)
class BodyLimit extends OncePerRequestFilter {

	/** 64 MiB; the largest station files have about 10 MB unpacked. */
	static final long MOST_OF_A_FILE = 64L << 20;

	/** 1 MiB. */
	static final long MOST = 1L << 20;

	@Override
	protected boolean shouldNotFilter(HttpServletRequest request) {
		return !PageAttributes.forProgram(request);
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		long most = request.getMethod().equals("PUT") ? MOST_OF_A_FILE : MOST;
		if (request.getContentLengthLong() > most) {
			ProblemText.write(response, HttpStatus.CONTENT_TOO_LARGE, Trouble.of(new BodyTooLarge(most)));
			return;
		}
		chain.doFilter(new BoundedRequest(request, most), response);
	}

	private static final class BoundedRequest extends HttpServletRequestWrapper {

		private final long most;

		BoundedRequest(HttpServletRequest request, long most) {
			super(request);
			this.most = most;
		}

		@Override
		public ServletInputStream getInputStream() throws IOException {
			return new BoundedStream(super.getInputStream(), this.most);
		}

	}

	private static final class BoundedStream extends ServletInputStream {

		private final ServletInputStream stream;

		private final long most;

		private long read;

		BoundedStream(ServletInputStream stream, long most) {
			this.stream = stream;
			this.most = most;
		}

		@Override
		public int read() throws IOException {
			int symbol = this.stream.read();
			if (symbol >= 0) {
				count(1);
			}
			return symbol;
		}

		@Override
		public int read(byte[] into, int at, int length) throws IOException {
			int symbols = this.stream.read(into, at, length);
			count(Math.max(0, symbols));
			return symbols;
		}

		private void count(int symbols) throws BodyTooLarge {
			this.read += symbols;
			if (this.read > this.most) {
				throw new BodyTooLarge(this.most);
			}
		}

		@Override
		public int available() throws IOException {
			return this.stream.available();
		}

		@Override
		public boolean isFinished() {
			return this.stream.isFinished();
		}

		@Override
		public boolean isReady() {
			return this.stream.isReady();
		}

		@Override
		public void setReadListener(ReadListener listener) {
			throw new UnsupportedOperationException("bodies are read in the request's own thread");
		}

	}

}
