package org.leafward.calendars;

/** How somebody answered an invitation (RFC 5545, section 3.2.12). */
public enum Answer {

	/** Nothing yet. */
	NONE("NEEDS-ACTION"),

	/** They come. */
	YES("ACCEPTED"),

	/** They may come. */
	MAYBE("TENTATIVE"),

	/** They don't come. */
	NO("DECLINED");

	private final String code;

	Answer(String code) {
		this.code = code;
	}

	/**
	 * The value of PARTSTAT.
	 * @return in capitals
	 */
	public String code() {
		return this.code;
	}

}
