package org.leafward.care.pack;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.SpeciesId;

/**
 * Reads entries that are written by species.
 *
 * @param known the catalogue
 * @param concerned ids of the species that the rule is for
 * @param complaints gathers what is wrong
 */
record BySpecies(KnownPlants known, Set<String> concerned, Complaints complaints) {

	<T> Map<SpeciesId, T> read(@Nullable Map<String, T> written, boolean all, String path) {
		if (written == null) {
			return Map.of();
		}
		Map<SpeciesId, T> read = new HashMap<>();
		written.forEach((species, value) -> {
			if (!this.known.species().contains(species)) {
				this.complaints.add(path + "/" + species, "there is no species '%s'".formatted(species),
						"use one of the catalogue (config/plants), or add it there");
			}
			else if (!this.concerned.contains(species)) {
				this.complaints.add(path + "/" + species, "the rule is not for '%s'".formatted(species),
						"remove the entry, or let the rule concern that species");
			}
			read.put(new SpeciesId(species), value);
		});
		Set<String> missing = new TreeSet<>(this.concerned);
		missing.removeAll(written.keySet());
		if (all && !missing.isEmpty()) {
			this.complaints.add(path, "species of the rule are without an entry: " + few(missing),
					"add an entry for each of them, or let the rule concern fewer species");
		}
		return read;
	}

	private static String few(Set<String> names) {
		String some = names.stream().limit(5).collect(Collectors.joining(", "));
		return (names.size() > 5) ? some + " and %d more".formatted(names.size() - 5) : some;
	}

}
