package org.leafward.care.pack;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The words of a pack in another language, as written.
 *
 * @param pack id of the pack
 * @param ofVersion the version that was translated
 * @param title the pack's title
 * @param rules by id of the rule
 */
record RuleWordsFile(String pack, int ofVersion, String title, Map<String, Words> rules) {

	/**
	 * The words of a rule.
	 *
	 * @param title what to do or leave
	 * @param what how
	 * @param amount how much
	 * @param why the reason
	 * @param otherwise what goes wrong without it
	 * @param caution what can hurt someone
	 * @param amountBySpecies how much by id of the species
	 * @param steps the steps of a ramp
	 */
	record Words(String title, String what, @Nullable String amount, String why, @Nullable String otherwise,
			@Nullable String caution, @Nullable Map<String, String> amountBySpecies, @Nullable List<Step> steps) {
	}

	/**
	 * A step of a ramp.
	 *
	 * @param place where the plants are
	 * @param text what to do
	 */
	record Step(String place, String text) {
	}

}
