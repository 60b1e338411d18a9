package org.leafward.care.core.rule;

import java.util.List;
import java.util.Optional;

/**
 * A set of rules that belong together.
 *
 * @param id lower case with hyphens
 * @param version counted up by its author with every change
 * @param title for readers
 * @param region where its advice holds, in a sentence
 * @param rules in the order written
 */
public record RulePack(String id, int version, String title, String region, List<Rule> rules) {

	public RulePack {
		rules = List.copyOf(rules);
	}

	/**
	 * The name of a rule that is unique among packs.
	 * @param rule a rule of this pack
	 * @return {@code pack/rule}
	 */
	public String reference(Rule rule) {
		return this.id + "/" + rule.id();
	}

	public Optional<Rule> find(String ruleId) {
		return this.rules.stream().filter((rule) -> rule.id().equals(ruleId)).findFirst();
	}

}
