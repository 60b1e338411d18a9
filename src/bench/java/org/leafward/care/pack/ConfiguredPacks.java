package org.leafward.care.pack;

import java.util.List;
import org.leafward.care.core.rule.RulePack;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.CatalogueFixture;

/** The packs that come with the server. */
public final class ConfiguredPacks {

	private static final List<RulePack> ALL = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(),
			CatalogueFixture.configured())
		.all();

	private ConfiguredPacks() {
	}

	public static List<RulePack> all() {
		return ALL;
	}

}
