package org.leafward.register;

import java.util.Locale;

/** What a site has that calls for care of its own. */
public enum SiteFeature {

	/** Irrigation pipes or a hose bib with a vacuum breaker. */
	IRRIGATION("irrigation"),

	/** Volunteers work here together. */
	VOLUNTEERS("volunteers at work");

	private final String words;

	SiteFeature(String words) {
		this.words = words;
	}

	/**
	 * The name used in rule packs and the API.
	 * @return lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	public String words() {
		return this.words;
	}

}
