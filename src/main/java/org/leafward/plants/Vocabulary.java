package org.leafward.plants;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * The names that species can use, over all files of config/plants.
 *
 * @param groups plant groups with words for readers
 * @param traits traits with words for readers
 * @param troubles diseases, pests and disorders with words for readers
 * @param references publications
 */
record Vocabulary(Map<String, String> groups, Map<String, String> traits, Map<String, String> troubles,
		Map<String, PlantsFile.Reference> references) {

	/**
	 * Puts together what the files define; where two define the same name, the later one
	 * counts.
	 * @param files the files, by name
	 * @return never null
	 */
	static Vocabulary of(List<PlantsFile> files) {
		Map<String, String> groups = new TreeMap<>();
		Map<String, String> traits = new TreeMap<>();
		Map<String, String> troubles = new TreeMap<>();
		Map<String, PlantsFile.Reference> references = new LinkedHashMap<>();
		for (PlantsFile file : files) {
			groups.putAll(Objects.requireNonNullElse(file.groups(), Map.of()));
			traits.putAll(Objects.requireNonNullElse(file.traits(), Map.of()));
			troubles.putAll(Objects.requireNonNullElse(file.troubles(), Map.of()));
			references.putAll(Objects.requireNonNullElse(file.references(), Map.of()));
		}
		return new Vocabulary(groups, traits, troubles, Collections.unmodifiableMap(references));
	}

}
