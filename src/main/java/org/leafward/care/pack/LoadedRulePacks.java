package org.leafward.care.pack;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Rule packs as they were when they were read. Never changes. */
class LoadedRulePacks implements RulePacks {

	private static final Logger LOG = LoggerFactory.getLogger(LoadedRulePacks.class);

	private final List<RulePack> packs;

	private final Map<String, Rule> rules = new LinkedHashMap<>();

	private final Phenology phenology;

	private final List<Contradiction> contradictions;

	private final String fingerprint;

	LoadedRulePacks(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue) {
		this(files.of("rulepacks"), files.of("phenology"), reader, catalogue, Map.of());
	}

	/**
	 * Reads packs.
	 * @param found the packs
	 * @param phases the phenology
	 * @param reader reads both
	 * @param catalogue the species there are
	 * @param changed by pack and rule, the version in which the rule last changed
	 */
	LoadedRulePacks(List<KnowledgeFile> found, List<KnowledgeFile> phases, KnowledgeReader reader, Catalogue catalogue,
			Map<String, Map<String, Integer>> changed) {
		KnownPlants known = KnownPlants.of(catalogue);
		this.phenology = new PhenologyReader(reader, known).read(phases);
		RulePackReader.Packs read = new RulePackReader(reader, known, this.phenology).read(found);
		this.contradictions = List.copyOf(read.contradictions());
		this.packs = read.packs()
			.stream()
			.map((pack) -> pack.withChanged(changed.getOrDefault(pack.id(), Map.of())))
			.sorted(Comparator.comparing(RulePack::id))
			.toList();
		this.packs.forEach((pack) -> pack.rules().forEach((rule) -> this.rules.put(pack.reference(rule), rule)));
		this.fingerprint = fingerprint(Stream.concat(found.stream(), phases.stream()).toList(), changed);
	}

	@Override
	public RulePacks latest() {
		return this;
	}

	@Override
	public List<RulePack> all() {
		return this.packs;
	}

	@Override
	public Optional<Rule> find(String reference) {
		return Optional.ofNullable(this.rules.get(reference));
	}

	/** Lists the contradictions for the operator. */
	void log() {
		List<Contradiction> open = this.contradictions.stream().filter((one) -> !one.settled()).toList();
		LOG.info("{} task(s) fall into hold-offs, {} of them go before", this.contradictions.size(),
				this.contradictions.size() - open.size());
		open.forEach((one) -> LOG.info("{}", one.words()));
	}

	@Override
	public List<Contradiction> contradictions() {
		return this.contradictions;
	}

	@Override
	public Phenology phenology() {
		return this.phenology;
	}

	@Override
	public String fingerprint() {
		return this.fingerprint;
	}

	private static String fingerprint(List<KnowledgeFile> files, Map<String, Map<String, Integer>> changed) {
		Map<String, Map<String, Integer>> sorted = new TreeMap<>();
		changed.forEach((pack, versions) -> sorted.put(pack, new TreeMap<>(versions)));
		return KnowledgeFile.fingerprint(files, sorted.toString());
	}

}
