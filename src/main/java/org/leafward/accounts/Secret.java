package org.leafward.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * Secrets in addresses, links and tokens: 256 random bits as 43 characters of the URL
 * alphabet (RFC 4648, section 5). Only their hashes are kept.
 */
public final class Secret {

	private static final int OCTETS = 32;

	private static final SecureRandom RANDOM = new SecureRandom();

	private Secret() {
	}

	/**
	 * A new secret.
	 * @return 43 characters that nobody can guess
	 */
	public static String make() {
		byte[] octets = new byte[OCTETS];
		RANDOM.nextBytes(octets);
		return Base64.getUrlEncoder().withoutPadding().encodeToString(octets);
	}

	/**
	 * What is kept of a secret.
	 * @param secret the secret, or what somebody says is one
	 * @return SHA-256, 32 octets; secrets are random, so they need no salt
	 */
	public static byte[] hash(String secret) {
		try {
			return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
