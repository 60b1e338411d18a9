package org.leafward.lookalikes;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.leafward.care.RulePacks;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.key.KeyReader;
import org.leafward.lookalikes.key.KnownNames;
import org.leafward.lookalikes.store.KeyTable;
import org.leafward.plants.Catalogue;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * The key in force: the files of config/lookalikes, and in place of each that a
 * specialist changed its newest published version. What another node publishes is noticed
 * by one number.
 */
@Service
public class PublishedKeys implements LookalikeKeys {

	private static final Logger LOG = LoggerFactory.getLogger(PublishedKeys.class);

	/** How long a page may show what another node has replaced. */
	private static final Duration GLANCE = Duration.ofSeconds(1);

	private final KeyTable table;

	private final Clock clock;

	private final KeyReader lenient;

	private final KeyReader strict;

	/** By name, without the folder. */
	private final Map<String, String> files = new TreeMap<>();

	private volatile Shelf shelf;

	private volatile Instant looked = Instant.MIN;

	/**
	 * What is in use.
	 *
	 * @param key the key
	 * @param contents each file as written
	 * @param unusable why the newest versions can't be used; empty when they can
	 * @param seen the number of the database when it was read
	 */
	private record Shelf(Key key, Map<String, String> contents, String unusable, long seen) {
	}

	PublishedKeys(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue, RulePacks packs, KeyTable table,
			Clock clock) {
		this.table = table;
		this.clock = clock;
		// A care rule that somebody took out of its pack must not keep the server from
		// starting; a new version of the key has to do without it.
		this.lenient = new KeyReader(reader, KnownNames.of(catalogue, (rule) -> true));
		this.strict = new KeyReader(reader, KnownNames.of(catalogue, (rule) -> packs.find(rule).isPresent()));
		for (KnowledgeFile file : files.of(KeyReader.FOLDER)) {
			this.files.put(file.name().substring(KeyReader.FOLDER.length() + 1),
					new String(file.content(), StandardCharsets.UTF_8));
		}
		this.shelf = load();
	}

	private Shelf load() {
		long seen = this.table.latest();
		Map<String, String> contents = new TreeMap<>(this.files);
		this.table.newest().forEach((one) -> contents.put(one.file(), one.content()));
		try {
			return new Shelf(this.lenient.read(files(contents)), contents, "", seen);
		}
		catch (BrokenKnowledge ex) {
			if (contents.equals(this.files)) {
				throw ex;
			}
			LOG.error("What is stored of the look-alike key can't be used; the files are: {}", ex.getMessage());
			return new Shelf(this.lenient.read(files(this.files)), Map.copyOf(this.files),
					String.valueOf(ex.getMessage()), seen);
		}
	}

	private static List<KnowledgeFile> files(Map<String, String> contents) {
		return contents.entrySet()
			.stream()
			.map((one) -> KnowledgeFile.of(KeyReader.FOLDER + "/" + one.getKey(), one.getValue()))
			.toList();
	}

	private Shelf look(boolean now) {
		Instant time = this.clock.instant();
		if (!now && time.isBefore(this.looked.plus(GLANCE)) && !time.isBefore(this.looked)) {
			return this.shelf;
		}
		if (this.table.latest() != this.shelf.seen) {
			synchronized (this) {
				if (this.table.latest() != this.shelf.seen) {
					this.shelf = load();
					LOG.info("The look-alike key was read again, as something was published");
				}
			}
		}
		this.looked = time;
		return this.shelf;
	}

	@Override
	public Key current() {
		return look(false).key;
	}

	/**
	 * The files of the key as they are in force.
	 * @return content by name, by name
	 */
	public Map<String, String> contents() {
		return new TreeMap<>(look(true).contents);
	}

	/**
	 * The file that comes with the server.
	 * @param file name of the file
	 * @return empty when it comes with none of that name
	 */
	public Optional<String> ofServer(String file) {
		return Optional.ofNullable(this.files.get(file));
	}

	/**
	 * Why what was published last can't be used.
	 * @return empty when it can
	 */
	public String unusable() {
		return look(false).unusable;
	}

	/**
	 * Reads the key with another content of a file.
	 * @param file name of the file
	 * @param content the file as written
	 * @return the key as it would be
	 * @throws BrokenKnowledge with every problem by line
	 */
	public Key with(String file, String content) {
		Map<String, String> contents = contents();
		contents.put(file, content);
		return this.strict.read(files(contents));
	}

}
