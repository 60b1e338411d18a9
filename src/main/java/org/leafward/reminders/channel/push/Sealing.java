package org.leafward.reminders.channel.push;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.util.Arrays;
import javax.crypto.Cipher;
import javax.crypto.KeyAgreement;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.leafward.measure.BadInput;
import org.leafward.reminders.PushKeys;

/**
 * Seals messages so that only the browser can read them (RFC 8291), in one record of the
 * content coding aes128gcm (RFC 8188).
 */
final class Sealing {

	/** Name of the content coding. */
	static final String CODING = "aes128gcm";

	/**
	 * Longest message, in octets. Every push service takes 4096 sealed octets (RFC 8030,
	 * section 7.2), of which sealing needs 103.
	 */
	static final int MOST = 3000;

	/** Has to be more than the record takes (RFC 8291, section 4). */
	private static final int RECORD_SIZE = 4096;

	private static final int SALT = 16;

	private static final int TAG_BITS = 128;

	/** Says that no record follows. */
	private static final byte LAST = 2;

	private static final SecureRandom RANDOM = new SecureRandom();

	private Sealing() {
	}

	/**
	 * Checks that something can be sealed for a browser.
	 * @param keys its keys
	 * @throws BadInput if its public key is no point of the curve
	 */
	static void check(PushKeys keys) {
		try {
			P256.key(keys.p256dh());
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("p256dh is no public key on the curve P-256", "p256dh",
					"send it as the browser's subscription gives it");
		}
	}

	/**
	 * Seals a message with a key and a salt that are made for it.
	 * @param keys the browser's keys
	 * @param message at most {@value #MOST} octets
	 * @return the body of the request to the push service
	 */
	static byte[] seal(PushKeys keys, byte[] message) {
		byte[] salt = new byte[SALT];
		RANDOM.nextBytes(salt);
		return seal(keys, message, P256.make(), salt);
	}

	/**
	 * Seals a message.
	 * @param keys the browser's keys
	 * @param message at most {@value #MOST} octets
	 * @param ours keys for this message only
	 * @param salt 16 octets for this message only
	 * @return the body of the request to the push service
	 */
	static byte[] seal(PushKeys keys, byte[] message, KeyPair ours, byte[] salt) {
		if (message.length > MOST) {
			throw new IllegalArgumentException("%d octets are more than %d".formatted(message.length, MOST));
		}
		try {
			byte[] sender = P256.point(ours.getPublic());
			byte[] prk = hmac(salt, keyingMaterial(keys, ours, sender));
			byte[] key = expand(prk, text("Content-Encoding: aes128gcm\0"), 16);
			byte[] nonce = expand(prk, text("Content-Encoding: nonce\0"), 12);
			Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
			cipher.init(Cipher.ENCRYPT_MODE, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
			byte[] record = cipher.doFinal(join(message, new byte[] { LAST }));
			return join(header(salt, sender), record);
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("every Java has what sealing needs", ex);
		}
	}

	/** RFC 8291, section 3.4: what only the two of us can know. */
	private static byte[] keyingMaterial(PushKeys keys, KeyPair ours, byte[] sender) throws GeneralSecurityException {
		PublicKey receiver = P256.key(keys.p256dh());
		KeyAgreement agreement = KeyAgreement.getInstance("ECDH");
		agreement.init(ours.getPrivate());
		agreement.doPhase(receiver, true);
		byte[] prk = hmac(keys.auth(), agreement.generateSecret());
		return expand(prk, join(text("WebPush: info\0"), keys.p256dh(), sender), 32);
	}

	/**
	 * RFC 8188, section 2.1: salt, record size, and the sender's key as key identifier.
	 */
	private static byte[] header(byte[] salt, byte[] sender) {
		return ByteBuffer.allocate(SALT + Integer.BYTES + 1 + sender.length)
			.put(salt)
			.putInt(RECORD_SIZE)
			.put((byte) sender.length)
			.put(sender)
			.array();
	}

	/** RFC 5869, section 2.3, for a length of one block at most. */
	private static byte[] expand(byte[] prk, byte[] info, int length) throws GeneralSecurityException {
		return Arrays.copyOf(hmac(prk, join(info, new byte[] { 1 })), length);
	}

	/** Also the first step of RFC 5869. */
	private static byte[] hmac(byte[] key, byte[] octets) throws GeneralSecurityException {
		Mac mac = Mac.getInstance("HmacSHA256");
		mac.init(new SecretKeySpec(key, "HmacSHA256"));
		return mac.doFinal(octets);
	}

	private static byte[] join(byte[]... parts) {
		ByteBuffer whole = ByteBuffer.allocate(Arrays.stream(parts).mapToInt((part) -> part.length).sum());
		Arrays.stream(parts).forEach(whole::put);
		return whole.array();
	}

	private static byte[] text(String text) {
		return text.getBytes(StandardCharsets.US_ASCII);
	}

}
