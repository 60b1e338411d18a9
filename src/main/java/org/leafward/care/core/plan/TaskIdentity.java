package org.leafward.care.core.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;
import org.leafward.care.TaskId;

/**
 * Identifiers of tasks: name-based UUIDs (RFC 9562 version 5, SHA-1), so that any machine
 * gives the same one to the same subject, rule, season and occurrence, for ever. Never
 * change the name space or the shape of the name.
 */
public final class TaskIdentity {

	/** Leafward's own name space, drawn once at random. */
	private static final UUID NAME_SPACE = UUID.fromString("6f1c2ad2-94c5-4c0f-9a35-5a0b9d1f7e42");

	private TaskIdentity() {
	}

	/**
	 * The identifier of a task.
	 * @param subject the planting, or the site, that it is for
	 * @param rule {@code pack/rule}
	 * @param season year of the season
	 * @param occurrence 0 for a single window, else counted from 1
	 * @return the same for the same arguments
	 */
	public static TaskId of(UUID subject, String rule, int season, int occurrence) {
		return new TaskId(named(subject + "|" + rule + "|" + season + "|" + occurrence));
	}

	/**
	 * A version 5 UUID in Leafward's name space.
	 * @param name any text
	 * @return the same for the same text
	 */
	public static UUID named(String name) {
		return named(NAME_SPACE, name);
	}

	static UUID named(UUID space, String name) {
		try {
			MessageDigest sha1 = MessageDigest.getInstance("SHA-1");
			sha1.update(bytes(space.getMostSignificantBits()));
			sha1.update(bytes(space.getLeastSignificantBits()));
			byte[] hash = sha1.digest(name.getBytes(StandardCharsets.UTF_8));
			hash[6] = (byte) (hash[6] & 0x0f | 0x50);
			hash[8] = (byte) (hash[8] & 0x3f | 0x80);
			return new UUID(number(hash, 0), number(hash, 8));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-1", ex);
		}
	}

	private static byte[] bytes(long number) {
		byte[] bytes = new byte[8];
		for (int i = 0; i < 8; i++) {
			bytes[i] = (byte) (number >>> (56 - 8 * i));
		}
		return bytes;
	}

	private static long number(byte[] bytes, int from) {
		long number = 0;
		for (int i = from; i < from + 8; i++) {
			number = number << 8 | bytes[i] & 0xff;
		}
		return number;
	}

}
