package org.leafward.lookalikes;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * A version of a file of the key that a specialist published.
 *
 * @param file name of the file, for example {@code pairs.yaml}
 * @param version counted from 1 for each file; the file that comes with the server is 0
 * @param content the file as written, at most {@value #LONGEST} characters
 * @param note what was changed and why, 1 to {@value #LONGEST_NOTE} characters
 * @param by who; null when they are gone, or it was an operator
 * @param at when
 */
public record KeyVersion(String file, int version, String content, String note, @Nullable PersonId by, Instant at) {

	/** Characters of the longest file. */
	public static final int LONGEST = 262_144;

	/** Characters of the longest note. */
	public static final int LONGEST_NOTE = 500;

}
