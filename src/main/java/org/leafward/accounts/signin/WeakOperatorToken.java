package org.leafward.accounts.signin;

/** The operator token is too short to be a secret; the server does not start with it. */
class WeakOperatorToken extends RuntimeException {

	private static final long serialVersionUID = 1L;

	WeakOperatorToken(int length, int least) {
		super("The operator token has %d characters; at least %d are needed.".formatted(length, least));
	}

}
