package org.leafward.language;

/**
 * How to speak to a reader.
 *
 * @param language in which language
 * @param units with which units
 */
public record Speech(Language language, Units units) {

	/** For those who never chose. */
	public static final Speech USUAL = new Speech(Language.ENGLISH, Units.BOTH);

}
