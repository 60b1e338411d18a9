package org.leafward.lookalikes.key;

import java.util.function.Predicate;
import org.leafward.care.RulePacks;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.lookalikes.core.Key;
import org.leafward.plants.CatalogueFixture;

/** The key that comes with the server, for tests in other packages. */
public final class ConfiguredKey {

	private static final Key KEY = read((rule) -> true);

	private ConfiguredKey() {
	}

	/**
	 * The key, read once.
	 * @return as config/ has it
	 */
	public static Key get() {
		return KEY;
	}

	static Key readWithRules() {
		RulePacks packs = ConfiguredPacks.read();
		return read((rule) -> packs.find(rule).isPresent());
	}

	private static Key read(Predicate<String> rules) {
		return new KeyReader(new KnowledgeReader(), KnownNames.of(CatalogueFixture.configured(), rules))
			.read(new KnowledgeFiles("").of(KeyReader.FOLDER));
	}

}
