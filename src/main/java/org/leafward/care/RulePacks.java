package org.leafward.care;

import java.util.List;
import java.util.Optional;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;

/** The rule packs in use. Safe for use by threads. */
public interface RulePacks {

	/**
	 * Looks whether newer versions were published.
	 * @return the packs in use from now on; these never change
	 */
	RulePacks latest();

	/**
	 * All packs.
	 * @return by id
	 */
	List<RulePack> all();

	/**
	 * One rule.
	 * @param reference {@code pack/rule}
	 * @return empty when there is no such rule
	 */
	Optional<Rule> find(String reference);

	/**
	 * Tasks that fall into a hold-off from the same work.
	 * @return each pair of rules once; where it is not settled, the hold-off goes before
	 */
	List<Contradiction> contradictions();

	/**
	 * The phases and events that rules hang on.
	 * @return as config/phenology has them
	 */
	Phenology phenology();

	/**
	 * A fingerprint of the packs and the phenology, the same on any machine for the same
	 * files.
	 * @return SHA-256 over file names and contents, 64 hexadecimal digits
	 */
	String fingerprint();

}
