package org.leafward.reminders.channel.push;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.SecureRandom;
import java.security.interfaces.ECPrivateKey;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.security.spec.ECParameterSpec;
import java.security.spec.ECPoint;
import java.security.spec.ECPrivateKeySpec;
import java.security.spec.ECPublicKeySpec;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.KeyAgreement;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.leafward.reminders.PushKeys;

/**
 * A browser that opens what was sealed for it. Written from RFC 8291 and RFC 8188 with
 * Java alone, and of a message uses nothing that sealing wrote down elsewhere.
 */
public final class PushReceiver {

	private final ECPrivateKey secret;

	private final byte[] point;

	private final byte[] auth;

	/**
	 * A browser with keys that are known.
	 * @param secret private key, 32 octets in base64url
	 * @param point public key in base64url
	 * @param auth secret in base64url
	 */
	PushReceiver(String secret, String point, String auth) {
		this.secret = secret(secret);
		this.point = octets(point);
		this.auth = octets(auth);
	}

	private PushReceiver(KeyPair pair, byte[] auth) {
		this.secret = (ECPrivateKey) pair.getPrivate();
		ECPoint point = ((ECPublicKey) pair.getPublic()).getW();
		this.point = ByteBuffer.allocate(65)
			.put((byte) 4)
			.put(coordinate(point.getAffineX()))
			.put(coordinate(point.getAffineY()))
			.array();
		this.auth = auth;
	}

	/** A private key, 32 octets in base64url. */
	static ECPrivateKey secret(String secret) {
		try {
			return (ECPrivateKey) KeyFactory.getInstance("EC")
				.generatePrivate(new ECPrivateKeySpec(new BigInteger(1, octets(secret)), curve()));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException(ex);
		}
	}

	/** A browser with new keys. */
	public static PushReceiver make() {
		try {
			KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
			generator.initialize(new ECGenParameterSpec("secp256r1"));
			byte[] auth = new byte[16];
			new SecureRandom().nextBytes(auth);
			return new PushReceiver(generator.generateKeyPair(), auth);
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException(ex);
		}
	}

	public String p256dh() {
		return base64url(this.point);
	}

	public String auth() {
		return base64url(this.auth);
	}

	PushKeys keys() {
		return PushKeys.of(p256dh(), auth());
	}

	/**
	 * Opens a message (RFC 8291, section 3.4).
	 * @param body what the push service passes on
	 * @throws GeneralSecurityException if it is not for this browser or was changed
	 */
	public String open(byte[] body) throws GeneralSecurityException {
		byte[] sender = Arrays.copyOfRange(body, 21, 21 + (body[20] & 0xff));
		KeyAgreement agreement = KeyAgreement.getInstance("ECDH");
		agreement.init(this.secret);
		agreement.doPhase(key(sender), true);
		byte[] info = join(text("WebPush: info\0"), this.point, sender);
		byte[] ikm = expand(hmac(this.auth, agreement.generateSecret()), info, 32);
		return new String(decode(ikm, body), StandardCharsets.UTF_8);
	}

	/**
	 * Undoes the content coding aes128gcm for a body of one record (RFC 8188, section 2).
	 * @param ikm the keying material
	 * @param body header and record
	 */
	static byte[] decode(byte[] ikm, byte[] body) throws GeneralSecurityException {
		ByteBuffer header = ByteBuffer.wrap(body);
		byte[] salt = new byte[16];
		header.get(salt);
		int recordSize = header.getInt();
		header.position(21 + (header.get() & 0xff));
		byte[] sealed = new byte[header.remaining()];
		header.get(sealed);
		// RFC 8291, section 4: more than the record takes.
		if (sealed.length >= recordSize) {
			throw new GeneralSecurityException("more than one record");
		}
		byte[] prk = hmac(salt, ikm);
		byte[] key = expand(prk, text("Content-Encoding: aes128gcm\0"), 16);
		byte[] nonce = expand(prk, text("Content-Encoding: nonce\0"), 12);
		Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
		cipher.init(Cipher.DECRYPT_MODE, new SecretKeySpec(key, "AES"), new GCMParameterSpec(128, nonce));
		byte[] padded = cipher.doFinal(sealed);
		int end = padded.length - 1;
		while (end >= 0 && padded[end] == 0) {
			end--;
		}
		// The last record ends with a delimiter of its own.
		if (end < 0 || padded[end] != 2) {
			throw new GeneralSecurityException("the record has no end");
		}
		return Arrays.copyOf(padded, end);
	}

	/** RFC 5869, for no more than one block. */
	private static byte[] expand(byte[] prk, byte[] info, int length) throws GeneralSecurityException {
		return Arrays.copyOf(hmac(prk, join(info, new byte[] { 1 })), length);
	}

	private static byte[] hmac(byte[] key, byte[] text) throws GeneralSecurityException {
		Mac mac = Mac.getInstance("HmacSHA256");
		mac.init(new SecretKeySpec(key, "HmacSHA256"));
		return mac.doFinal(text);
	}

	static ECPublicKey key(byte[] point) throws GeneralSecurityException {
		ECPoint w = new ECPoint(new BigInteger(1, Arrays.copyOfRange(point, 1, 33)),
				new BigInteger(1, Arrays.copyOfRange(point, 33, 65)));
		return (ECPublicKey) KeyFactory.getInstance("EC").generatePublic(new ECPublicKeySpec(w, curve()));
	}

	private static ECParameterSpec curve() throws GeneralSecurityException {
		AlgorithmParameters parameters = AlgorithmParameters.getInstance("EC");
		parameters.init(new ECGenParameterSpec("secp256r1"));
		return parameters.getParameterSpec(ECParameterSpec.class);
	}

	private static byte[] coordinate(BigInteger number) {
		byte[] octets = number.toByteArray();
		byte[] whole = new byte[32];
		int length = Math.min(32, octets.length);
		System.arraycopy(octets, octets.length - length, whole, 32 - length, length);
		return whole;
	}

	private static byte[] join(byte[]... parts) {
		ByteBuffer all = ByteBuffer.allocate(Arrays.stream(parts).mapToInt((part) -> part.length).sum());
		Arrays.stream(parts).forEach(all::put);
		return all.array();
	}

	private static byte[] text(String text) {
		return text.getBytes(StandardCharsets.US_ASCII);
	}

	static byte[] octets(String base64url) {
		return Base64.getUrlDecoder().decode(base64url);
	}

	static String base64url(byte[] octets) {
		return Base64.getUrlEncoder().withoutPadding().encodeToString(octets);
	}

}
