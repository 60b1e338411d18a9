package org.leafward.care.core.rule;

import java.util.Locale;

/** An amount that is worked out for each planting, in place of the rule's words. */
public enum Computes {

	/** Water that refills the root zone of a bed, by the balance of its water. */
	REFILL,

	/** Water for a tree or shrub that is growing in, by its trunk or its pot. */
	YOUNG_TREE,

	/** Water for a tree that has grown in, by its trunk. */
	TREE,

	/** Water for a pot, by its volume. */
	POT,

	/** Water that carries salts out of a pot, by its volume. */
	FLUSH_POT,

	/** Water that carries salt out of the root zone of a bed. */
	LEACHING,

	/** The cover that a plant needs for a cold night. */
	COVER,

	/** Gypsum, by the latest soil test of the bed. */
	GYPSUM,

	/** Water that carries as much salt out of a bed as its latest soil test found. */
	TESTED_LEACHING;

	/**
	 * The name used in rule packs.
	 * @return lower case with hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
