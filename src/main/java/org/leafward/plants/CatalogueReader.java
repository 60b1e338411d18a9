package org.leafward.plants;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Places;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;

/** Puts the files of config/plants together into one catalogue. */
class CatalogueReader {

	private static final String SCHEMA = "schema/plants-1.json";

	private final KnowledgeReader reader;

	CatalogueReader(KnowledgeReader reader) {
		this.reader = reader;
	}

	/**
	 * Reads the files.
	 * @param files all files of the kind
	 * @return the catalogue
	 * @throws BrokenKnowledge with every problem of every file
	 */
	Catalogue read(List<KnowledgeFile> files) {
		List<Reading<PlantsFile>> readings = files.stream()
			.map((file) -> this.reader.read(file, SCHEMA, PlantsFile.class))
			.toList();
		List<Problem> problems = new ArrayList<>();
		readings.forEach((reading) -> problems.addAll(reading.problems()));
		Vocabulary vocabulary = Vocabulary
			.of(readings.stream().map(Reading::value).filter(Objects::nonNull).map(Objects::requireNonNull).toList());
		Map<SpeciesId, Species> species = new LinkedHashMap<>();
		// Names are only looked up once every file that may define them was readable.
		if (problems.isEmpty()) {
			for (Reading<PlantsFile> reading : readings) {
				problems.addAll(add(reading, vocabulary, species));
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return new Catalogue(species.values(), vocabulary.groups(), vocabulary.traits(), vocabulary.troubles(),
				KnowledgeFile.fingerprint(files, ""));
	}

	private static List<Problem> add(Reading<PlantsFile> reading, Vocabulary vocabulary,
			Map<SpeciesId, Species> species) {
		List<Problem> problems = new ArrayList<>();
		PlantsFile file = reading.value();
		List<PlantsFile.Entry> entries = (file != null && file.species() != null) ? file.species() : List.of();
		for (int i = 0; i < entries.size(); i++) {
			PlantsFile.Entry entry = entries.get(i);
			String path = "/species/" + i;
			problems.addAll(unknown(reading.places(), path, entry, vocabulary));
			PlantsFile.Zones zones = entry.zones();
			if (zones != null && zones.to() < zones.from()) {
				problems.add(reading.places()
					.problem(path + "/zones", "the zones end before they begin", "write the coldest zone as 'from'"));
			}
			else {
				Species one = EntryReader.species(entry, vocabulary);
				if (species.putIfAbsent(one.id(), one) != null) {
					problems.add(reading.places()
						.problem(path + "/name", "'%s' is in the catalogue twice".formatted(entry.name()),
								"remove one of the two entries"));
				}
			}
		}
		return problems;
	}

	private static List<Problem> unknown(Places places, String path, PlantsFile.Entry entry, Vocabulary vocabulary) {
		List<Problem> problems = new ArrayList<>();
		unknown(problems, places, path + "/groups/%d", entry.groups(), vocabulary.groups().keySet(), "group");
		unknown(problems, places, path + "/traits/%d", EntryReader.orEmpty(entry.traits()),
				vocabulary.traits().keySet(), "trait");
		unknown(problems, places, path + "/susceptible-to/%d", EntryReader.orEmpty(entry.susceptibleTo()),
				vocabulary.troubles().keySet(), "trouble");
		unknown(problems, places, path + "/sources/%d/reference",
				EntryReader.orEmpty(entry.sources()).stream().map(PlantsFile.Fact::reference).toList(),
				vocabulary.references().keySet(), "reference");
		return problems;
	}

	private static void unknown(Collection<Problem> problems, Places places, String path, List<String> written,
			Set<String> known, String what) {
		for (int i = 0; i < written.size(); i++) {
			if (!known.contains(written.get(i))) {
				problems.add(places.problem(path.formatted(i), "there is no %s '%s'".formatted(what, written.get(i)),
						"use one that is defined under '%ss', or define it there".formatted(what)));
			}
		}
	}

}
