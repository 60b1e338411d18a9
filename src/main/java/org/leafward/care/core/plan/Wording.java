package org.leafward.care.core.plan;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskText;

/**
 * The words of tasks under a name made from them: thousands of tasks share one.
 *
 * @param name the first half of the SHA-256 of the words, which the database can work out
 * as well
 * @param text the words
 */
public record Wording(UUID name, TaskText text) {

	private static final char END = 31;

	/**
	 * Names words.
	 * @param text the words
	 * @return the same name for the same words
	 */
	public static Wording of(TaskText text) {
		String words = text.title() + END + text.what() + END + plain(text.amount()) + END + text.why() + END
				+ plain(text.otherwise()) + END + plain(text.caution());
		ByteBuffer hash = ByteBuffer.wrap(sha256().digest(words.getBytes(StandardCharsets.UTF_8)));
		return new Wording(new UUID(hash.getLong(), hash.getLong()), text);
	}

	private static String plain(@Nullable String words) {
		return (words != null) ? words : "";
	}

	static MessageDigest sha256() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
