package org.leafward.plants;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
		List<Problem> problems = new ArrayList<>();
		List<Reading<PlantsFile>> readings = new ArrayList<>();
		Map<String, String> groups = new LinkedHashMap<>();
		Map<String, String> traits = new LinkedHashMap<>();
		for (KnowledgeFile file : files) {
			Reading<PlantsFile> reading = this.reader.read(file, SCHEMA, PlantsFile.class);
			problems.addAll(reading.problems());
			readings.add(reading);
			if (reading.value() != null) {
				groups.putAll(Objects.requireNonNullElse(reading.value().groups(), Map.of()));
				traits.putAll(Objects.requireNonNullElse(reading.value().traits(), Map.of()));
			}
		}
		Map<SpeciesId, Species> species = new LinkedHashMap<>();
		// Names are only looked up once every file that may define them was readable.
		if (problems.isEmpty()) {
			for (Reading<PlantsFile> reading : readings) {
				problems.addAll(add(reading, groups.keySet(), traits.keySet(), species));
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return new Catalogue(species.values(), groups, traits);
	}

	private static List<Problem> add(Reading<PlantsFile> reading, Set<String> groups, Set<String> traits,
			Map<SpeciesId, Species> species) {
		List<Problem> problems = new ArrayList<>();
		List<PlantsFile.Entry> entries = (reading.value() != null) ? orEmpty(reading.value().species()) : List.of();
		for (int i = 0; i < entries.size(); i++) {
			PlantsFile.Entry entry = entries.get(i);
			String path = "/species/" + i;
			unknown(problems, reading.places(), path + "/groups", entry.groups(), groups, "group");
			unknown(problems, reading.places(), path + "/traits", orEmpty(entry.traits()), traits, "trait");
			Species one = species(entry);
			if (one == null) {
				problems.add(reading.places()
					.problem(path + "/zones", "the zones end before they begin", "write the coldest zone as 'from'"));
			}
			else if (species.putIfAbsent(one.id(), one) != null) {
				problems.add(reading.places()
					.problem(path + "/name", "'%s' is in the catalogue twice".formatted(entry.name()),
							"remove one of the two entries"));
			}
		}
		return problems;
	}

	private static void unknown(List<Problem> problems, Places places, String path, List<String> written,
			Set<String> known, String what) {
		for (int i = 0; i < written.size(); i++) {
			if (!known.contains(written.get(i))) {
				problems.add(places.problem(path + "/" + i, "there is no %s '%s'".formatted(what, written.get(i)),
						"use one that is defined under '%ss', or define it there".formatted(what)));
			}
		}
	}

	private static @Nullable Species species(PlantsFile.Entry entry) {
		PlantsFile.Zones zones = entry.zones();
		if (zones != null && zones.to() < zones.from()) {
			return null;
		}
		return new Species(new SpeciesId(slug(entry.name())), entry.name(), entry.common(), orEmpty(entry.alsoCalled()),
				entry.groups(), Set.copyOf(orEmpty(entry.traits())),
				(zones != null) ? new ZoneRange(zones.from(), zones.to()) : null, orEmpty(entry.sources()));
	}

	/** "Buxus sinica var. insularis" becomes "buxus-sinica-var-insularis". */
	static String slug(String name) {
		String plain = Normalizer.normalize(name.replace('\u00d7', 'x'), Normalizer.Form.NFD)
			.replaceAll("\\p{M}", "")
			.toLowerCase(Locale.ROOT);
		return plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
	}

	private static <T> List<T> orEmpty(@Nullable List<T> list) {
		return (list != null) ? list : List.of();
	}

}
