package org.leafward.care.pack;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.leafward.care.RulePacks;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.springframework.stereotype.Service;

/** The rule packs as they were when the server started. */
@Service
class LoadedRulePacks implements RulePacks {

	private final List<RulePack> packs;

	private final Map<String, Rule> rules = new LinkedHashMap<>();

	private final Phenology phenology;

	private final String fingerprint;

	LoadedRulePacks(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue) {
		List<KnowledgeFile> found = files.of("rulepacks");
		List<KnowledgeFile> phases = files.of("phenology");
		KnownPlants known = KnownPlants.of(catalogue);
		this.phenology = new PhenologyReader(reader, known).read(phases);
		this.packs = new RulePackReader(reader, known, KnownPhases.of(this.phenology)).read(found)
			.stream()
			.sorted(Comparator.comparing(RulePack::id))
			.toList();
		this.packs.forEach((pack) -> pack.rules().forEach((rule) -> this.rules.put(pack.reference(rule), rule)));
		this.fingerprint = fingerprint(Stream.concat(found.stream(), phases.stream()).toList());
	}

	@Override
	public List<RulePack> all() {
		return this.packs;
	}

	@Override
	public Optional<Rule> find(String reference) {
		return Optional.ofNullable(this.rules.get(reference));
	}

	@Override
	public Phenology phenology() {
		return this.phenology;
	}

	@Override
	public String fingerprint() {
		return this.fingerprint;
	}

	private static String fingerprint(List<KnowledgeFile> files) {
		try {
			MessageDigest digest = MessageDigest.getInstance("SHA-256");
			for (KnowledgeFile file : files) {
				digest.update(file.name().getBytes(StandardCharsets.UTF_8));
				digest.update((byte) 0);
				digest.update(file.content());
				digest.update((byte) 0);
			}
			return HexFormat.of().formatHex(digest.digest());
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
