package org.leafward.plants;

import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;

/** Catalogues for tests. */
public final class CatalogueFixture {

	private CatalogueFixture() {
	}

	/**
	 * The catalogue that comes with the server.
	 * @return read anew
	 */
	public static Catalogue configured() {
		return new CatalogueReader(new KnowledgeReader()).read(new KnowledgeFiles("").of("plants"));
	}

}
