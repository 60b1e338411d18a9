package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;

/** Reads rule packs and checks them against the catalogue. */
final class RulePackReader {

	private static final String SCHEMA = "schema/rulepack-1.json";

	private final KnowledgeReader reader;

	private final KnownPlants known;

	private final KnownPhases phases;

	RulePackReader(KnowledgeReader reader, KnownPlants known, KnownPhases phases) {
		this.reader = reader;
		this.known = known;
		this.phases = phases;
	}

	/**
	 * Reads all packs.
	 * @param files the files
	 * @return the packs in the order of the files
	 * @throws BrokenKnowledge with every problem of every file
	 */
	List<RulePack> read(List<KnowledgeFile> files) {
		List<Problem> problems = new ArrayList<>();
		List<RulePack> packs = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		for (KnowledgeFile file : files) {
			Reading<PackDraft> reading = this.reader.read(file, SCHEMA, PackDraft.class);
			problems.addAll(reading.problems());
			PackDraft draft = reading.value();
			if (draft != null) {
				Complaints complaints = new Complaints(reading.places());
				if (!ids.add(draft.pack())) {
					complaints.add("/pack", "another file already has the pack '%s'".formatted(draft.pack()),
							"give this pack an id of its own");
				}
				packs.add(new RulePack(draft.pack(), draft.version(), draft.title(), draft.region(),
						rules(draft, complaints)));
				problems.addAll(complaints.problems());
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return packs;
	}

	private List<Rule> rules(PackDraft draft, Complaints complaints) {
		RuleReader ruleReader = new RuleReader(this.known, this.phases, complaints);
		List<Rule> rules = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		for (int i = 0; i < draft.rules().size(); i++) {
			PackDraft.RuleDraft written = draft.rules().get(i);
			String path = "/rules/" + i;
			if (!ids.add(written.id())) {
				complaints.add(path + "/id", "the pack already has a rule '%s'".formatted(written.id()),
						"give this rule an id of its own");
			}
			Rule rule = ruleReader.read(written, path);
			if (rule != null) {
				rules.add(rule);
			}
		}
		return rules;
	}

}
