package org.leafward.plants;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The species catalogue, held in memory. Immutable. */
public final class Catalogue {

	private static final int MOST = 1000;

	private final Map<SpeciesId, Species> byId = new LinkedHashMap<>();

	private final SortedMap<String, String> groups;

	private final SortedMap<String, String> traits;

	/**
	 * Creates a catalogue.
	 * @param species the species, each with an id of its own
	 * @param groups name and words of each plant group
	 * @param traits name and words of each trait
	 */
	public Catalogue(Collection<Species> species, Map<String, String> groups, Map<String, String> traits) {
		species.stream()
			.sorted(Comparator.comparing((Species one) -> fold(one.commonName()))
				.thenComparing((one) -> one.id().value()))
			.forEach((one) -> this.byId.put(one.id(), one));
		this.groups = new TreeMap<>(groups);
		this.traits = new TreeMap<>(traits);
	}

	/**
	 * One species.
	 * @param id its identifier
	 * @return empty when the catalogue doesn't have it
	 */
	public Optional<Species> find(SpeciesId id) {
		return Optional.ofNullable(this.byId.get(id));
	}

	/**
	 * Every species.
	 * @return by common name, then id
	 */
	public List<Species> all() {
		return List.copyOf(this.byId.values());
	}

	/**
	 * Finds species by any of their names, without regard to case: names that begin with
	 * the text first, then names with a word that begins with it, then names that contain
	 * it; within each by common name.
	 * @param text what was typed; blank finds everything
	 * @param limit most that are wanted, 1 to 1000
	 * @return never null
	 */
	public List<Species> search(String text, int limit) {
		String wanted = fold(text.strip());
		return this.byId.values()
			.stream()
			.filter((species) -> rank(species, wanted) < 3)
			.sorted(Comparator.comparingInt((species) -> rank(species, wanted)))
			.limit(Math.max(1, Math.min(limit, MOST)))
			.toList();
	}

	/**
	 * The plant groups that rules can address.
	 * @return name to words for readers, by name
	 */
	public SortedMap<String, String> groups() {
		return Collections.unmodifiableSortedMap(this.groups);
	}

	/**
	 * The traits that rules can address.
	 * @return name to words for readers, by name
	 */
	public SortedMap<String, String> traits() {
		return Collections.unmodifiableSortedMap(this.traits);
	}

	private static int rank(Species species, String wanted) {
		return Stream.concat(Stream.of(species.commonName(), species.botanicalName()), species.synonyms().stream())
			.mapToInt((name) -> rank(fold(name), wanted))
			.min()
			.orElse(3);
	}

	private static int rank(String name, String wanted) {
		if (name.startsWith(wanted)) {
			return 0;
		}
		if (name.contains(" " + wanted)) {
			return 1;
		}
		return name.contains(wanted) ? 2 : 3;
	}

	private static String fold(String text) {
		return text.toLowerCase(Locale.ROOT);
	}

}
