package org.leafward.lookalikes.core;

/** How far what the key says of a cause is backed. */
public enum Trust {

	/** What tells the cause apart was read in the named source. */
	READ_IN_SOURCE("read-in-source", "read in the source"),

	/** Widely followed; no single source was read for it. */
	COMMON_PRACTICE("common-practice", "common practice, no single source"),

	/** Written from memory; check before printing. */
	FROM_MEMORY("from-memory", "from memory, to be checked");

	private final String code;

	private final String words;

	Trust(String code, String words) {
		this.code = code;
		this.words = words;
	}

	/**
	 * The word used in config/lookalikes.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

}
