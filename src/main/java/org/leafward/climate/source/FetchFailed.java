package org.leafward.climate.source;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** A service outside gave no answer that can be used. The message may be shown. */
public class FetchFailed extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final transient @Nullable Duration retryAfter;

	/**
	 * Creates the failure.
	 * @param what what went wrong, in words for the operator
	 */
	public FetchFailed(String what) {
		this(what, null, null);
	}

	FetchFailed(String what, @Nullable Duration retryAfter, @Nullable Throwable cause) {
		super(what, cause);
		this.retryAfter = retryAfter;
	}

	/**
	 * How long the service asked to be left alone.
	 * @return null when it didn't say
	 */
	public @Nullable Duration retryAfter() {
		return this.retryAfter;
	}

}
