package org.leafward.care.core.rule;

/** How well a source backs a rule. */
public enum Grade {

	/** The figures were read in the named source. */
	READ_IN_SOURCE("read-in-source", "figures read in the source"),

	/** Widely followed; no single source was read for it. */
	COMMON_PRACTICE("common-practice", "common practice"),

	/** Written from memory; check before printing. */
	FROM_MEMORY("from-memory", "from memory");

	private final String code;

	private final String words;

	Grade(String code, String words) {
		this.code = code;
		this.words = words;
	}

	/**
	 * The word used in rule packs.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	/**
	 * What a source of this grade is called when it stands in an explanation.
	 * @return for example "Published source"
	 */
	public String heading() {
		return switch (this) {
			case READ_IN_SOURCE -> "Published source";
			case COMMON_PRACTICE -> "Common practice, no single source";
			case FROM_MEMORY -> "From memory, to be checked";
		};
	}

	public String words() {
		return this.words;
	}

}
