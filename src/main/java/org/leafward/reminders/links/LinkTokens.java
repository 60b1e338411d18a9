package org.leafward.reminders.links;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links.Act;

/**
 * Signed tokens: what it is about, then a seal, as base64url (RFC 4648, section 5). The
 * seal is HMAC-SHA-256 cut to 128 bits (RFC 2104, section 5, allows half). It is made
 * over a purpose too, so that a token of one kind is none of another.
 */
final class LinkTokens {

	/** Octets of a key. */
	static final int KEY_OCTETS = 32;

	private static final String ALGORITHM = "HmacSHA256";

	private static final int SEAL_OCTETS = 16;

	/** A code and an identifier. */
	private static final int HEAD_OCTETS = 17;

	/** No token of ours is longer, in characters. */
	private static final int LONGEST = 80;

	private static final Pattern CHANNEL = Pattern.compile("[a-z]{1,20}");

	private static final byte[] ACT = "leafward act".getBytes(StandardCharsets.US_ASCII);

	private static final byte[] STOP = "leafward stop".getBytes(StandardCharsets.US_ASCII);

	private static final Base64.Encoder ENCODER = Base64.getUrlEncoder().withoutPadding();

	private static final Base64.Decoder DECODER = Base64.getUrlDecoder();

	private final Mac keyed;

	LinkTokens(byte[] key) {
		if (key.length != KEY_OCTETS) {
			throw new IllegalArgumentException("a key has %d octets, not %d".formatted(KEY_OCTETS, key.length));
		}
		try {
			this.keyed = Mac.getInstance(ALGORITHM);
			this.keyed.init(new SecretKeySpec(key, ALGORITHM));
		}
		catch (NoSuchAlgorithmException | InvalidKeyException ex) {
			throw new IllegalStateException("every Java platform has " + ALGORITHM, ex);
		}
	}

	/**
	 * A token that lets somebody act on a reminder.
	 * @param link what it is about
	 * @return 44 characters
	 */
	String of(ActLink link) {
		return sealed(ACT, head(code(link.proposed()), link.reminder()).array());
	}

	/**
	 * A token that lets somebody leave a series.
	 * @param link what it is about
	 * @return 46 to 71 characters, 50 for mail
	 * @throws IllegalArgumentException when the channel is not 1 to 20 lower case letters
	 */
	String of(StopLink link) {
		if (!CHANNEL.matcher(link.channel()).matches()) {
			throw new IllegalArgumentException("'%s' is no code of a channel".formatted(link.channel()));
		}
		byte[] channel = link.channel().getBytes(StandardCharsets.US_ASCII);
		byte[] head = head(code(link.series()), link.person().value()).array();
		byte[] payload = Arrays.copyOf(head, head.length + channel.length);
		System.arraycopy(channel, 0, payload, head.length, channel.length);
		return sealed(STOP, payload);
	}

	/**
	 * Reads a token that lets somebody act.
	 * @param token what stands in an address
	 * @return empty when it is none of ours; all that are none take the same way
	 */
	Optional<ActLink> act(String token) {
		ByteBuffer head = ByteBuffer.wrap(open(ACT, token));
		if (head.remaining() != HEAD_OCTETS) {
			return Optional.empty();
		}
		byte code = head.get();
		UUID reminder = new UUID(head.getLong(), head.getLong());
		return Optional.ofNullable(act(code)).map((act) -> new ActLink(reminder, act));
	}

	/**
	 * Reads a token that lets somebody leave a series.
	 * @param token what stands in an address
	 * @return empty when it is none of ours; all that are none take the same way
	 */
	Optional<StopLink> stop(String token) {
		ByteBuffer head = ByteBuffer.wrap(open(STOP, token));
		if (head.remaining() <= HEAD_OCTETS) {
			return Optional.empty();
		}
		byte code = head.get();
		PersonId person = new PersonId(new UUID(head.getLong(), head.getLong()));
		String channel = StandardCharsets.US_ASCII.decode(head).toString();
		return Optional.ofNullable(series(code)).map((series) -> new StopLink(person, channel, series));
	}

	private static ByteBuffer head(byte code, UUID id) {
		return ByteBuffer.allocate(HEAD_OCTETS)
			.put(code)
			.putLong(id.getMostSignificantBits())
			.putLong(id.getLeastSignificantBits());
	}

	private String sealed(byte[] purpose, byte[] payload) {
		byte[] octets = Arrays.copyOf(payload, payload.length + SEAL_OCTETS);
		System.arraycopy(seal(purpose, payload), 0, octets, payload.length, SEAL_OCTETS);
		return ENCODER.encodeToString(octets);
	}

	/**
	 * What a token is about. What can't be decoded is sealed and compared all the same.
	 * @return no octets when the token is none of ours
	 */
	private byte[] open(byte[] purpose, String token) {
		byte[] octets = octets(token);
		byte[] payload = Arrays.copyOf(octets, Math.max(0, octets.length - SEAL_OCTETS));
		byte[] seal = Arrays.copyOfRange(octets, payload.length, octets.length);
		boolean ours = MessageDigest.isEqual(seal(purpose, payload), seal);
		// The decoder forgives bits past the end; there is one way to write a token.
		boolean plain = MessageDigest.isEqual(ENCODER.encode(octets), token.getBytes(StandardCharsets.UTF_8));
		return (ours & plain) ? payload : new byte[0];
	}

	private static byte[] octets(String token) {
		try {
			return (token.length() <= LONGEST) ? DECODER.decode(token) : new byte[0];
		}
		catch (IllegalArgumentException ex) {
			return new byte[0];
		}
	}

	private byte[] seal(byte[] purpose, byte[] payload) {
		try {
			Mac mac = (Mac) this.keyed.clone();
			mac.update(purpose);
			mac.update((byte) 0);
			return Arrays.copyOf(mac.doFinal(payload), SEAL_OCTETS);
		}
		catch (CloneNotSupportedException ex) {
			throw new IllegalStateException("the platform's own " + ALGORITHM + " can be copied", ex);
		}
	}

	/** Stands in addresses that are out there; never changes. */
	private static byte code(Act act) {
		return (byte) switch (act) {
			case DONE -> 1;
			case LATER -> 2;
			case SKIP -> 3;
		};
	}

	private static @Nullable Act act(byte code) {
		return switch (code) {
			case 1 -> Act.DONE;
			case 2 -> Act.LATER;
			case 3 -> Act.SKIP;
			default -> null;
		};
	}

	/** Stands in addresses that are out there; never changes. */
	private static byte code(Series series) {
		return (byte) switch (series) {
			case MORNING -> 1;
			case OUTLOOK -> 2;
			case TONIGHT -> 3;
			case SINGLE -> 4;
			case ADVISORY -> 5;
		};
	}

	private static @Nullable Series series(byte code) {
		return switch (code) {
			case 1 -> Series.MORNING;
			case 2 -> Series.OUTLOOK;
			case 3 -> Series.TONIGHT;
			case 4 -> Series.SINGLE;
			case 5 -> Series.ADVISORY;
			default -> null;
		};
	}

}
