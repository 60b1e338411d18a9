package org.leafward.care.core.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A set of rules that belong together.
 *
 * @param id lower case with hyphens
 * @param version counted up by its author with every change
 * @param title for readers
 * @param region where its advice holds, in a sentence
 * @param rules in the order written
 * @param changed for rules by id, the version of the pack in which the rule last changed
 */
public record RulePack(String id, int version, String title, String region, List<Rule> rules,
		Map<String, Integer> changed) {

	public RulePack {
		rules = List.copyOf(rules);
		changed = Map.copyOf(changed);
	}

	/**
	 * A pack of which no earlier version is known.
	 * @param id lower case with hyphens
	 * @param version its version
	 * @param title for readers
	 * @param region where its advice holds
	 * @param rules in the order written
	 */
	public RulePack(String id, int version, String title, String region, List<Rule> rules) {
		this(id, version, title, region, rules, Map.of());
	}

	/**
	 * The same pack with what is known of its history.
	 * @param versions by rule, the version in which it last changed
	 * @return the pack
	 */
	public RulePack withChanged(Map<String, Integer> versions) {
		return new RulePack(this.id, this.version, this.title, this.region, this.rules, versions);
	}

	/**
	 * The version in which a rule last changed. Tasks name it, so that those of other
	 * rules stay as they are when the pack goes up.
	 * @param rule a rule of this pack
	 * @return the version of the pack where nothing earlier is known
	 */
	public int versionOf(Rule rule) {
		return this.changed.getOrDefault(rule.id(), this.version);
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
