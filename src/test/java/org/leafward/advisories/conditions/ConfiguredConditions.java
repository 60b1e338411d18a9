package org.leafward.advisories.conditions;

import java.util.List;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;

/** The conditions that come with the server. */
public final class ConfiguredConditions {

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	private static final Conditions CONDITIONS = new Conditions(new KnowledgeFiles(""), new KnowledgeReader(),
			CATALOGUE);

	private ConfiguredConditions() {
	}

	public static List<WatchCondition> all() {
		return CONDITIONS.all();
	}

	public static Catalogue catalogue() {
		return CATALOGUE;
	}

	/**
	 * A condition.
	 * @param code its name
	 * @return the condition, which is there
	 */
	public static WatchCondition get(String code) {
		return CONDITIONS.find(code).orElseThrow();
	}

}
