package org.leafward.care;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A version of a rule pack.
 *
 * @param pack id of the pack
 * @param version its version
 * @param origin where it came from
 * @param content the pack as written, YAML
 * @param note what was changed and why, 1 to 500 characters
 * @param changed rules that were added, changed or taken out in it
 * @param by who published it
 * @param person their identifier; null for the operator and for files
 * @param at when
 */
public record PackVersion(String pack, int version, Origin origin, String content, String note, List<String> changed,
		String by, @Nullable UUID person, Instant at) {

	/** Longest content, characters. */
	public static final int LONGEST = 256 * 1024;

	/** Longest note, characters. */
	public static final int LONGEST_NOTE = 500;

	/** Where a version came from. */
	public enum Origin {

		/** A file of the server or of the operator's folder. */
		FILE,

		/** Published by a specialist. */
		WORKSHOP

	}

	public PackVersion {
		changed = List.copyOf(changed);
	}

}
