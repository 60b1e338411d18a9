package org.leafward.care.pack;

import java.util.List;
import org.leafward.care.RulePacks;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.PlantWords;

/** The phrasebooks that come with the server, for tests in other packages. */
public final class SpokenPacks {

	private SpokenPacks() {
	}

	/**
	 * Reads one.
	 * @param language any
	 * @param packs the rules whose words it knows
	 * @return the book as config/ has it
	 */
	public static Phrasebook book(Language language, RulePacks packs) {
		return books(packs).of(language);
	}

	/**
	 * Reads all.
	 * @param packs the rules whose words they know
	 * @return the books as config/ has them
	 */
	public static Phrasebooks books(RulePacks packs) {
		KnowledgeFiles files = new KnowledgeFiles("");
		KnowledgeReader reader = new KnowledgeReader();
		return new Phrasebooks(files, reader, List.of(new PlantWords(files, reader, CatalogueFixture.configured()),
				new RuleWords(files, reader, packs)));
	}

}
