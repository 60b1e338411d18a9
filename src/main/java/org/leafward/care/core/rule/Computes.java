package org.leafward.care.core.rule;

import java.util.Locale;

/** An amount that is worked out for each planting, in place of the rule's words. */
public enum Computes {

	/** Water that refills the root zone, or what a tree or a pot takes. */
	WATER,

	/** Water that carries salt out of the root zone. */
	LEACHING;

	/**
	 * The name used in rule packs.
	 * @return lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

}
