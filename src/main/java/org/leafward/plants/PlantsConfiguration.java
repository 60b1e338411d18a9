package org.leafward.plants;

import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Loads the catalogue when the server starts. */
@Configuration(proxyBeanMethods = false)
class PlantsConfiguration {

	@Bean
	PlantWords plantWords(KnowledgeFiles files, KnowledgeReader reader) {
		return new PlantWords(files, reader, new CatalogueReader(reader).read(files.of("plants")));
	}

	@Bean
	Catalogue catalogue(KnowledgeFiles files, KnowledgeReader reader, PlantWords words) {
		return new CatalogueReader(reader).read(files.of("plants")).alsoFoundBy(words::allNamesOf);
	}

}
