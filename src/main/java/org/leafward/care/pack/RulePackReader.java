package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.check.Contradictions;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;

/** Reads rule packs and checks them against the catalogue. */
final class RulePackReader {

	static final String SCHEMA = "schema/rulepack-1.json";

	private final KnowledgeReader reader;

	private final KnownPlants known;

	private final Phenology phenology;

	RulePackReader(KnowledgeReader reader, KnownPlants known, Phenology phenology) {
		this.reader = reader;
		this.known = known;
		this.phenology = phenology;
	}

	/** A pack and where to complain about it. */
	private record Sheet(RulePack pack, Complaints complaints) {
	}

	/**
	 * What came of reading.
	 *
	 * @param packs the packs in the order of the files
	 * @param contradictions tasks that fall into hold-offs
	 */
	record Packs(List<RulePack> packs, List<Contradiction> contradictions) {
	}

	/**
	 * Reads all packs and compares their rules.
	 * @param files the files
	 * @return the packs and their contradictions
	 * @throws BrokenKnowledge with every problem of every file
	 */
	Packs read(List<KnowledgeFile> files) {
		List<Problem> problems = new ArrayList<>();
		List<Sheet> sheets = new ArrayList<>();
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
				sheets.add(new Sheet(new RulePack(draft.pack(), draft.version(), draft.title(), draft.region(),
						rules(draft, complaints)), complaints));
			}
		}
		List<RulePack> packs = sheets.stream().map(Sheet::pack).toList();
		List<Contradiction> contradictions = List.of();
		// Rules are only compared once all of them were readable.
		if (problems.isEmpty() && sheets.stream().allMatch((sheet) -> sheet.complaints.problems().isEmpty())) {
			contradictions = Contradictions.among(packs, this.known.bySpecies().values(), this.phenology);
			compare(sheets, packs, contradictions);
		}
		sheets.forEach((sheet) -> problems.addAll(sheet.complaints.problems()));
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return new Packs(packs, contradictions);
	}

	private static void compare(List<Sheet> sheets, List<RulePack> packs, List<Contradiction> contradictions) {
		Map<String, Rule> rules = new HashMap<>();
		packs.forEach((pack) -> pack.rules().forEach((rule) -> rules.put(pack.reference(rule), rule)));
		for (Sheet sheet : sheets) {
			for (int i = 0; i < sheet.pack.rules().size(); i++) {
				Rule rule = sheet.pack.rules().get(i);
				String path = "/rules/" + i;
				for (String reference : rule.despite()) {
					despite(rule, reference, rules.get(reference), path + "/despite", sheet.complaints);
				}
				String own = sheet.pack.reference(rule);
				contradictions.stream()
					.filter((one) -> one.task().equals(own) && one.never() && !one.settled())
					.forEach((one) -> sheet.complaints.add(path + "/id",
							"nothing is ever left of this task (%s): it lies inside the hold-off %s"
								.formatted((one.example() != null) ? one.example().value() : "site", one.holdOff()),
							"move one of the two, except those plants from one, or name the hold-off under 'despite'"));
			}
		}
	}

	private static void despite(Rule rule, String reference, @Nullable Rule holdOff, String path,
			Complaints complaints) {
		if (holdOff == null) {
			complaints.add(path, "there is no rule '%s'".formatted(reference),
					"write pack and rule of a hold-off, such as trees/oak-no-pruning");
		}
		else if (holdOff.kind() != TaskKind.HOLD_OFF || holdOff.work() != rule.work()) {
			complaints.add(path, "'%s' is no hold-off from %s".formatted(reference, rule.work().words()),
					"name a hold-off with work: %s, or remove it".formatted(rule.work().code()));
		}
	}

	private List<Rule> rules(PackDraft draft, Complaints complaints) {
		RuleReader ruleReader = new RuleReader(this.known, KnownPhases.of(this.phenology), complaints);
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
