package org.leafward.care.pack;

import org.leafward.care.RulePacks;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.CatalogueFixture;

/** The packs that come with the server, for tests in other packages. */
public final class ConfiguredPacks {

	private ConfiguredPacks() {
	}

	/**
	 * Reads them.
	 * @return packs and phenology as config/ has them
	 */
	public static RulePacks read() {
		return new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), CatalogueFixture.configured());
	}

}
