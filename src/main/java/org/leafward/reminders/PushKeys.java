package org.leafward.reminders;

import java.util.Arrays;
import java.util.Base64;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/**
 * What a message to a browser is sealed with (RFC 8291, section 2).
 *
 * @param p256dh the browser's public key, a point of P-256 in uncompressed form: 65
 * octets
 * @param auth a secret of the browser: 16 octets
 */
public record PushKeys(byte[] p256dh, byte[] auth) {

	private static final int POINT = 65;

	private static final int SECRET = 16;

	private static final int LONGEST = 200;

	public PushKeys {
		p256dh = p256dh.clone();
		auth = auth.clone();
	}

	/**
	 * Reads what a browser gives out. Whether the point lies on the curve is not looked
	 * at.
	 * @param p256dh base64url, with or without padding
	 * @param auth base64url, with or without padding
	 * @return the keys
	 * @throws BadInput if one of them can't be read or has another length
	 */
	public static PushKeys of(@Nullable String p256dh, @Nullable String auth) {
		Findings findings = new Findings();
		var point = findings.read(() -> octets("p256dh", p256dh, POINT));
		var secret = findings.read(() -> octets("auth", auth, SECRET));
		return findings.give(() -> new PushKeys(point.get(), secret.get()));
	}

	private static byte[] octets(String field, @Nullable String value, int length) {
		String text = Given.text(field, value);
		byte[] octets = new byte[0];
		try {
			// No more is decoded than could be right.
			octets = Base64.getUrlDecoder().decode((text.length() > LONGEST) ? "" : text);
		}
		catch (IllegalArgumentException ex) {
			// Its length is refused below.
		}
		if (octets.length != length) {
			throw new BadInput("%s is not %d octets in base64url".formatted(field, length), field,
					"send it as the browser's subscription gives it");
		}
		return octets;
	}

	@Override
	public byte[] p256dh() {
		return this.p256dh.clone();
	}

	@Override
	public byte[] auth() {
		return this.auth.clone();
	}

	@Override
	public boolean equals(@Nullable Object other) {
		return other instanceof PushKeys keys && Arrays.equals(this.p256dh, keys.p256dh)
				&& Arrays.equals(this.auth, keys.auth);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(this.p256dh);
	}

	@Override
	public String toString() {
		return "PushKeys[…]";
	}

}
