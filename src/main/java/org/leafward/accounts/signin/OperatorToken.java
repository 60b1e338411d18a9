package org.leafward.accounts.signin;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The secret that opens everything. Only its hash is kept in memory, and guesses are
 * compared in constant time.
 */
@Component
public class OperatorToken {

	/**
	 * Short enough to type, too long to guess: 20 characters of letters and digits are
	 * about 119 bits.
	 */
	private static final int LEAST_LENGTH = 20;

	private static final Logger LOG = LoggerFactory.getLogger(OperatorToken.class);

	private final byte[] hash;

	private final boolean set;

	OperatorToken(@Value("${leafward.operator-token:}") String token) {
		String secret = token.strip();
		if (!secret.isEmpty() && secret.length() < LEAST_LENGTH) {
			throw new WeakOperatorToken(secret.length(), LEAST_LENGTH);
		}
		this.set = !secret.isEmpty();
		this.hash = hash(secret);
		if (!this.set) {
			LOG.warn("No operator token is set: the API and the operator's sign-in are closed. "
					+ "Set LEAFWARD_OPERATOR_TOKEN to at least {} characters to open them.", LEAST_LENGTH);
		}
	}

	/**
	 * Whether there is one.
	 * @return false when it opens nothing
	 */
	public boolean isSet() {
		return this.set;
	}

	/**
	 * Compares a guess in constant time.
	 * @param guess what somebody says it is
	 * @return whether it is
	 */
	public boolean matches(String guess) {
		return MessageDigest.isEqual(this.hash, hash(guess.strip())) && this.set;
	}

	private static byte[] hash(String text) {
		try {
			return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
