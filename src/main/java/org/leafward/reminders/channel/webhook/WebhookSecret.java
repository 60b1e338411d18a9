package org.leafward.reminders.channel.webhook;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** What signs webhooks: 256 random bits, HMAC-SHA256 (RFC 2104). */
final class WebhookSecret {

	private static final String PREFIX = "whsec_";

	private static final int OCTETS = 32;

	private static final String ALGORITHM = "HmacSHA256";

	private static final SecureRandom RANDOM = new SecureRandom();

	private WebhookSecret() {
	}

	/**
	 * A new secret.
	 * @return 32 octets that nobody can guess
	 */
	static byte[] make() {
		byte[] octets = new byte[OCTETS];
		RANDOM.nextBytes(octets);
		return octets;
	}

	/**
	 * A secret as people see it, once.
	 * @param secret its octets
	 * @return for example {@code whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw}
	 */
	static String shown(byte[] secret) {
		return PREFIX + Base64.getEncoder().encodeToString(secret);
	}

	/**
	 * Signs a message.
	 * @param secret what signs
	 * @param id identifier of the message, without a dot
	 * @param timestamp when it is sent, seconds since 1970
	 * @param body the very octets that are sent
	 * @return version and signature, for example {@code v1,g0hM9SsE…}
	 */
	static String sign(byte[] secret, String id, long timestamp, byte[] body) {
		if (id.indexOf('.') >= 0) {
			throw new IllegalArgumentException("an identifier with a dot could move into the body");
		}
		try {
			Mac mac = Mac.getInstance(ALGORITHM);
			mac.init(new SecretKeySpec(secret, ALGORITHM));
			mac.update("%s.%d.".formatted(id, timestamp).getBytes(StandardCharsets.UTF_8));
			return "v1," + Base64.getEncoder().encodeToString(mac.doFinal(body));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("every Java platform has HMAC-SHA256", ex);
		}
	}

}
