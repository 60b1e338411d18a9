package org.leafward.reminders.channel.push;

import com.zerodeplibs.webpush.MessageEncryptions;
import com.zerodeplibs.webpush.PushMessage;
import com.zerodeplibs.webpush.UserAgentMessageEncryptionKeyInfo;
import com.zerodeplibs.webpush.key.InvalidECPublicKeyException;
import com.zerodeplibs.webpush.key.MalformedUncompressedBytesException;
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

	private Sealing() {
	}

	/**
	 * Checks that something can be sealed for a browser.
	 * @param keys its keys
	 * @throws BadInput if its public key is no point of the curve; to calculate with
	 * such a one could give the server's part of the secret away
	 */
	static void check(PushKeys keys) {
		try {
			info(keys);
		}
		catch (InvalidECPublicKeyException | MalformedUncompressedBytesException ex) {
			throw new BadInput("p256dh is no public key on the curve P-256", "p256dh",
					"send it as the browser's subscription gives it");
		}
	}

	/**
	 * Seals a message under a key and a salt that are made for it.
	 * @param keys the browser's keys
	 * @param message at most {@value #MOST} octets
	 * @return the body of the request to the push service
	 */
	static byte[] seal(PushKeys keys, byte[] message) {
		if (message.length > MOST) {
			throw new IllegalArgumentException("%d octets are more than %d".formatted(message.length, MOST));
		}
		// The library's encryption keeps state, so each message gets its own.
		return MessageEncryptions.of().encrypt(info(keys), PushMessage.of(message)).toBytes();
	}

	private static UserAgentMessageEncryptionKeyInfo info(PushKeys keys) {
		return UserAgentMessageEncryptionKeyInfo.of(keys.p256dh(), keys.auth());
	}

}
