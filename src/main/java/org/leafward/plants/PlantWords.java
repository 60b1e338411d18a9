package org.leafward.plants;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.language.Language;
import org.leafward.language.PhraseSource;

/** Common names of species and groups in other languages than English. */
public class PlantWords implements PhraseSource {

	private static final String SCHEMA = "schema/plant-words-1.json";

	private static final Logger LOG = LoggerFactory.getLogger(PlantWords.class);

	private final Catalogue catalogue;

	private final Map<Language, Map<SpeciesId, List<String>>> names = new EnumMap<>(Language.class);

	private final Map<Language, Map<String, String>> groups = new EnumMap<>(Language.class);

	/**
	 * Reads the files in {@code messages/<code>/plants}.
	 * @param files finds the files
	 * @param reader reads them
	 * @param catalogue the species
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public PlantWords(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue) {
		this.catalogue = catalogue;
		List<Problem> problems = new ArrayList<>();
		for (Language language : Language.values()) {
			if (language == Language.ENGLISH) {
				continue;
			}
			Map<SpeciesId, List<String>> species = new HashMap<>();
			Map<String, String> words = new HashMap<>();
			for (KnowledgeFile file : files.of("messages/" + language.code() + "/plants")) {
				Reading<PlantWordsFile> reading = reader.read(file, SCHEMA, PlantWordsFile.class);
				problems.addAll(reading.problems());
				if (reading.value() != null) {
					take(reading.value(), species, words);
				}
			}
			this.names.put(language, species);
			this.groups.put(language, words);
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	/**
	 * Names of what isn't in the catalogue are passed over: an operator may have taken a
	 * file of species away, and the names that come with the server still hold them.
	 */
	private void take(PlantWordsFile file, Map<SpeciesId, List<String>> species, Map<String, String> words) {
		Map<String, SpeciesId> known = this.catalogue.all()
			.stream()
			.collect(Collectors.toMap((one) -> one.id().value(), Species::id));
		Set<String> strange = new TreeSet<>();
		file.species().forEach((id, names) -> {
			SpeciesId found = known.get(id);
			if (found != null) {
				List<String> all = new ArrayList<>(List.of(names.common()));
				Optional.ofNullable(names.alsoCalled()).ifPresent(all::addAll);
				species.put(found, List.copyOf(all));
			}
			else {
				strange.add(id);
			}
		});
		Optional.ofNullable(file.groups()).ifPresent((groups) -> groups.forEach((id, name) -> {
			if (this.catalogue.groups().containsKey(id)) {
				words.put(id, name);
			}
			else {
				strange.add(id);
			}
		}));
		if (!strange.isEmpty()) {
			LOG.info("There are names of what isn't in the catalogue: {}", strange);
		}
	}

	/**
	 * The usual name.
	 * @param species the species
	 * @param language any
	 * @return the English one where there is no other
	 */
	public String commonName(Species species, Language language) {
		List<String> found = namesOf(species, language);
		return found.isEmpty() ? species.commonName() : found.get(0);
	}

	/**
	 * All names in a language, the usual one first.
	 * @param species the species
	 * @param language any but English
	 * @return empty where none is known
	 */
	public List<String> namesOf(Species species, Language language) {
		return this.names.getOrDefault(language, Map.of()).getOrDefault(species.id(), List.of());
	}

	/**
	 * Its names in all languages but English.
	 * @param species the species
	 * @return may be empty
	 */
	List<String> allNamesOf(Species species) {
		return this.names.values()
			.stream()
			.flatMap((names) -> names.getOrDefault(species.id(), List.of()).stream())
			.toList();
	}

	@Override
	public Map<String, String> texts(Language language) {
		Map<String, String> texts = new HashMap<>();
		this.groups.getOrDefault(language, Map.of())
			.forEach((id, name) -> texts.put(this.catalogue.groups().get(id), name));
		for (Species one : this.catalogue.all()) {
			List<String> found = namesOf(one, language);
			if (!found.isEmpty()) {
				texts.put(one.commonName(), found.get(0));
			}
		}
		return texts;
	}

	/** As the server started. */
	@Override
	public Object version() {
		return this.catalogue.fingerprint();
	}

}
