package org.leafward.pages.web;

import java.io.IOException;

/** More came than is taken; reading stopped there. */
class BodyTooLarge extends IOException {

	private static final long serialVersionUID = 1L;

	private final long most;

	BodyTooLarge(long most) {
		super("the body is larger than %d bytes".formatted(most));
		this.most = most;
	}

	/** Bytes that are taken at most. */
	long most() {
		return this.most;
	}

}
