package org.leafward.reminders.channel.push;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import org.leafward.reminders.core.PushEndpoint;
import tools.jackson.databind.json.JsonMapper;

/**
 * What tells push services that a message comes from the server that the browser trusts
 * (RFC 8292).
 */
final class ServerIdentity {

	/**
	 * Longest would be 24 hours (RFC 8292, section 2); some time for clocks that differ.
	 */
	static final Duration LASTS = Duration.ofHours(12);

	private static final JsonMapper JSON = new JsonMapper();

	private static final String HEAD = base64url(
			"{\"typ\":\"JWT\",\"alg\":\"ES256\"}".getBytes(StandardCharsets.UTF_8));

	private final String publicKey;

	private final PrivateKey privateKey;

	private final String contact;

	private ServerIdentity(byte[] point, PrivateKey privateKey, String contact) {
		this.publicKey = base64url(point);
		this.privateKey = privateKey;
		this.contact = contact;
	}

	/**
	 * Makes a new pair of keys.
	 * @return the public key as a point in uncompressed form, then the private one as
	 * PKCS #8
	 */
	static byte[] make() {
		KeyPair pair = P256.make();
		byte[] secret = pair.getPrivate().getEncoded();
		return ByteBuffer.allocate(P256.POINT + secret.length).put(P256.point(pair.getPublic())).put(secret).array();
	}

	/**
	 * Reads a pair of keys.
	 * @param stored what {@link #make} gave
	 * @param contact whom a push service may write to, a mailto or https address
	 */
	static ServerIdentity of(byte[] stored, String contact) {
		try {
			PrivateKey secret = KeyFactory.getInstance("EC")
				.generatePrivate(new PKCS8EncodedKeySpec(Arrays.copyOfRange(stored, P256.POINT, stored.length)));
			return new ServerIdentity(Arrays.copyOf(stored, P256.POINT), secret, contact);
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("the stored key for push services can't be read", ex);
		}
	}

	/** The public key for browsers, a point in uncompressed form as base64url. */
	String publicKey() {
		return this.publicKey;
	}

	/**
	 * The header that comes with a message.
	 * @param endpoint where it goes
	 * @param now the time
	 * @return good for twelve hours at that push service
	 */
	String authorization(PushEndpoint endpoint, Instant now) {
		Map<String, Object> claims = new LinkedHashMap<>();
		claims.put("aud", endpoint.origin());
		claims.put("exp", now.plus(LASTS).getEpochSecond());
		claims.put("sub", this.contact);
		String proof = HEAD + "." + base64url(JSON.writeValueAsBytes(claims));
		return "vapid t=%s.%s, k=%s".formatted(proof, base64url(sign(proof)), this.publicKey);
	}

	/** RFC 7518, section 3.4: the two numbers one after the other. */
	private byte[] sign(String text) {
		try {
			Signature signature = Signature.getInstance("SHA256withECDSAinP1363Format");
			signature.initSign(this.privateKey);
			signature.update(text.getBytes(StandardCharsets.US_ASCII));
			return signature.sign();
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("every Java signs with P-256", ex);
		}
	}

	private static String base64url(byte[] octets) {
		return Base64.getUrlEncoder().withoutPadding().encodeToString(octets);
	}

}
