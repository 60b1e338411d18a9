package org.leafward.care.pack;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PackVersion;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.store.PackTable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The rule packs in use: of each pack the newest version, be it a file or published. The
 * files are noted in the database at the start, so that their history is known as well.
 * What another node publishes is noticed by one number.
 */
@Service
public class PublishedRulePacks implements RulePacks {

	private static final Logger LOG = LoggerFactory.getLogger(PublishedRulePacks.class);

	/** How long a page may show what another node has replaced. */
	private static final Duration GLANCE = Duration.ofSeconds(1);

	private final KnowledgeReader reader;

	private final Catalogue catalogue;

	private final PackTable table;

	private final Clock clock;

	/** By id of the pack. */
	private final Map<String, OfFile> files = new LinkedHashMap<>();

	private final List<KnowledgeFile> phases;

	private final LoadedRulePacks ofFiles;

	private volatile Shelf shelf;

	private volatile Instant looked = Instant.MIN;

	PublishedRulePacks(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue, PackTable table, Clock clock,
			PlatformTransactionManager transactions) {
		this.reader = reader;
		this.catalogue = catalogue;
		this.table = table;
		this.clock = clock;
		this.phases = files.of("phenology");
		List<KnowledgeFile> found = files.of("rulepacks");
		this.ofFiles = new LoadedRulePacks(found, this.phases, reader, catalogue, Map.of());
		for (KnowledgeFile file : found) {
			String content = new String(file.content(), StandardCharsets.UTF_8);
			PackText text = PackText.of(content, reader);
			PackDraft draft = text.draft();
			if (draft != null) {
				this.files.put(draft.pack(), new OfFile(file, content, text, draft.version()));
			}
		}
		new TransactionTemplate(transactions).executeWithoutResult((status) -> {
			table.lock();
			this.files.forEach(this::note);
		});
		this.shelf = load(null);
		this.shelf.packs.log();
	}

	/** A pack that came as a file. */
	private record OfFile(KnowledgeFile file, String content, PackText text, int version) {
	}

	/**
	 * What is in use.
	 *
	 * @param packs the packs
	 * @param contents each pack as written, by id
	 * @param unusable packs whose newest version can't be read here, and why
	 * @param seen the number of the database when it was read
	 */
	private record Shelf(LoadedRulePacks packs, Map<String, String> contents, Map<String, String> unusable, long seen) {
	}

	/**
	 * Notes a file that is new. One that was edited without a higher version takes the
	 * place of the same version, unless that was published.
	 */
	private void note(String pack, OfFile file) {
		PackVersion newest = this.table.newest(pack).orElse(null);
		boolean higher = newest == null || file.version > newest.version();
		boolean edited = newest != null && file.version == newest.version()
				&& newest.origin() == PackVersion.Origin.FILE && !newest.content().equals(file.content);
		if (!higher && !edited) {
			return;
		}
		PackText before = this.table.before(pack, file.version)
			.map((one) -> PackText.of(one.content(), this.reader))
			.orElse(null);
		this.table.write(new PackVersion(pack, file.version, PackVersion.Origin.FILE, file.content,
				"From the file " + file.file.name(), file.text.changedSince(before), "the server", null,
				this.clock.instant().truncatedTo(ChronoUnit.SECONDS)));
	}

	private Shelf load(@Nullable Shelf before) {
		long seen = this.table.latest();
		Map<String, PackVersion> stored = new TreeMap<>();
		this.table.newest()
			.stream()
			// A file that is gone takes its pack with it, until somebody publishes it.
			.filter((one) -> one.origin() == PackVersion.Origin.WORKSHOP || this.files.containsKey(one.pack()))
			.forEach((one) -> stored.put(one.pack(), one));
		Map<String, Map<String, Integer>> changed = this.table.changed();
		try {
			return shelf(stored, changed, Map.of(), seen);
		}
		catch (BrokenKnowledge ex) {
			LOG.error("What is stored of the rule packs can't be used: {}", ex.getMessage());
			Map<String, String> unusable = new TreeMap<>();
			ex.problems().forEach((problem) -> unusable.putIfAbsent(problem.file().split(",")[0], problem.words()));
			if (before != null) {
				return new Shelf(before.packs, before.contents, unusable, seen);
			}
			return new Shelf(this.ofFiles, contents(Map.of()), unusable, seen);
		}
	}

	private Shelf shelf(Map<String, PackVersion> stored, Map<String, Map<String, Integer>> changed,
			Map<String, String> unusable, long seen) {
		LoadedRulePacks packs = new LoadedRulePacks(files(stored), this.phases, this.reader, this.catalogue, changed);
		return new Shelf(packs, contents(stored), unusable, seen);
	}

	private Map<String, String> contents(Map<String, PackVersion> stored) {
		Map<String, String> contents = new TreeMap<>();
		this.files.forEach((pack, file) -> contents.put(pack, file.content));
		stored.forEach((pack, one) -> contents.put(pack, one.content()));
		return contents;
	}

	private List<KnowledgeFile> files(Map<String, PackVersion> stored) {
		Map<String, KnowledgeFile> all = new TreeMap<>();
		this.files.forEach((pack, file) -> all.put(pack, file.file));
		stored.forEach((pack, one) -> {
			OfFile file = this.files.get(pack);
			if (file == null || !file.content.equals(one.content())) {
				all.put(pack, KnowledgeFile.of("%s, version %d".formatted(pack, one.version()), one.content()));
			}
		});
		return List.copyOf(all.values());
	}

	private Shelf look(boolean now) {
		Instant time = this.clock.instant();
		if (!now && time.isBefore(this.looked.plus(GLANCE)) && !time.isBefore(this.looked)) {
			return this.shelf;
		}
		if (this.table.latest() != this.shelf.seen) {
			synchronized (this) {
				if (this.table.latest() != this.shelf.seen) {
					this.shelf = load(this.shelf);
					LOG.info("The rule packs were read again, as something was published");
				}
			}
		}
		this.looked = time;
		return this.shelf;
	}

	@Override
	public RulePacks latest() {
		return look(true).packs;
	}

	@Override
	public List<RulePack> all() {
		return look(false).packs.all();
	}

	@Override
	public Optional<Rule> find(String reference) {
		return look(false).packs.find(reference);
	}

	@Override
	public List<Contradiction> contradictions() {
		return look(false).packs.contradictions();
	}

	@Override
	public Phenology phenology() {
		return look(false).packs.phenology();
	}

	@Override
	public String fingerprint() {
		return look(false).packs.fingerprint();
	}

	/**
	 * What can't be used of the stored versions.
	 * @return the problem, by pack; empty when all is well
	 */
	public Map<String, String> unusable() {
		return look(false).unusable;
	}

	/**
	 * The version of the file of a pack.
	 * @param pack id of the pack
	 * @return empty when it has none here
	 */
	public Optional<Integer> versionOfFile(String pack) {
		return Optional.ofNullable(this.files.get(pack)).map(OfFile::version);
	}

	/**
	 * Reads a draft together with all other packs.
	 * @param pack id of the pack
	 * @param content the pack as written
	 * @param version the version that it would get
	 * @param changed the rules that differ from the newest version
	 * @return the packs as they would be
	 * @throws BrokenKnowledge with every problem; those of the draft are in the file that
	 * is called like the pack
	 */
	public RulePacks with(String pack, String content, int version, List<String> changed) {
		Shelf now = look(true);
		Map<String, KnowledgeFile> all = new TreeMap<>();
		now.contents.forEach((id, text) -> all.put(id, KnowledgeFile.of("the pack " + id, text)));
		all.put(pack, KnowledgeFile.of(pack, content));
		Map<String, Map<String, Integer>> versions = new HashMap<>(this.table.changed());
		Map<String, Integer> own = new HashMap<>(versions.getOrDefault(pack, Map.of()));
		changed.forEach((rule) -> own.put(rule, version));
		versions.put(pack, own);
		return new LoadedRulePacks(new ArrayList<>(all.values()), this.phases, this.reader, this.catalogue, versions);
	}

}
