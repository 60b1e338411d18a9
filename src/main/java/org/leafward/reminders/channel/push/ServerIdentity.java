package org.leafward.reminders.channel.push;

import com.zerodeplibs.webpush.VAPIDKeyPair;
import com.zerodeplibs.webpush.VAPIDKeyPairs;
import com.zerodeplibs.webpush.jwt.VAPIDJWTParam;
import com.zerodeplibs.webpush.key.PrivateKeySources;
import com.zerodeplibs.webpush.key.PublicKeySources;
import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import org.leafward.reminders.core.PushEndpoint;

/**
 * What tells push services that a message comes from the server that the browser trusts
 * (RFC 8292).
 */
final class ServerIdentity {

	/** Longest would be 24 hours (RFC 8292, section 2); some time for clocks that differ. */
	static final Duration LASTS = Duration.ofHours(12);

	/** A point of P-256 in uncompressed form. */
	private static final int POINT = 65;

	private final VAPIDKeyPair keys;

	private final String contact;

	private ServerIdentity(VAPIDKeyPair keys, String contact) {
		this.keys = keys;
		this.contact = contact;
	}

	/**
	 * Makes a new pair of keys.
	 * @return the public key in uncompressed form, then the private one as PKCS #8
	 */
	static byte[] make() {
		try {
			KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
			generator.initialize(new ECGenParameterSpec("secp256r1"));
			KeyPair pair = generator.generateKeyPair();
			byte[] point = PublicKeySources.ofECPublicKey((ECPublicKey) pair.getPublic())
				.extractBytesInUncompressedForm();
			byte[] secret = pair.getPrivate().getEncoded();
			return ByteBuffer.allocate(point.length + secret.length).put(point).put(secret).array();
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("every Java has P-256", ex);
		}
	}

	/**
	 * Reads a pair of keys.
	 * @param stored what {@link #make} gave
	 * @param contact whom a push service may write to, a mailto or https address
	 */
	static ServerIdentity of(byte[] stored, String contact) {
		return new ServerIdentity(
				VAPIDKeyPairs.of(PrivateKeySources.ofPKCS8Bytes(Arrays.copyOfRange(stored, POINT, stored.length)),
						PublicKeySources.ofUncompressedBytes(Arrays.copyOf(stored, POINT))),
				contact);
	}

	/** The public key for browsers, a point in uncompressed form as base64url. */
	String publicKey() {
		return this.keys.extractPublicKeyInUncompressedFormAsString();
	}

	/**
	 * The header that comes with a message.
	 * @param endpoint where it goes
	 * @param now the time
	 * @return good for twelve hours at that push service
	 */
	String authorization(PushEndpoint endpoint, Instant now) {
		return this.keys.generateAuthorizationHeaderValue(VAPIDJWTParam.getBuilder()
			.resourceURLString(endpoint.origin())
			.expirationTime(now.plus(LASTS))
			.subject(this.contact)
			.build());
	}

}
