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
import java.util.function.Function;

/** The species catalogue, held in memory. Immutable. */
public final class Catalogue {

	private static final int MOST = 1000;

	private final Map<SpeciesId, Species> byId = new LinkedHashMap<>();

	private final SortedMap<String, String> groups;

	private final SortedMap<String, String> traits;

	private final SortedMap<String, String> troubles;

	private final NameSearch names;

	private final String fingerprint;

	/**
	 * Creates a catalogue without troubles.
	 * @param species the species, each with an id of its own
	 * @param groups name and words of each plant group
	 * @param traits name and words of each trait
	 */
	public Catalogue(Collection<Species> species, Map<String, String> groups, Map<String, String> traits) {
		this(species, groups, traits, Map.of());
	}

	/**
	 * Creates a catalogue.
	 * @param species the species, each with an id of its own
	 * @param groups name and words of each plant group
	 * @param traits name and words of each trait
	 * @param troubles name and words of each disease, pest and disorder
	 */
	public Catalogue(Collection<Species> species, Map<String, String> groups, Map<String, String> traits,
			Map<String, String> troubles) {
		this(species, groups, traits, troubles, "");
	}

	Catalogue(Collection<Species> species, Map<String, String> groups, Map<String, String> traits,
			Map<String, String> troubles, String fingerprint) {
		this(species, groups, traits, troubles, fingerprint, (one) -> List.of());
	}

	private Catalogue(Collection<Species> species, Map<String, String> groups, Map<String, String> traits,
			Map<String, String> troubles, String fingerprint, Function<Species, List<String>> further) {
		this.fingerprint = fingerprint;
		species.stream()
			.sorted(Comparator.comparing((Species one) -> one.commonName().toLowerCase(Locale.ROOT))
				.thenComparing((one) -> one.id().value()))
			.forEach((one) -> this.byId.put(one.id(), one));
		this.groups = new TreeMap<>(groups);
		this.traits = new TreeMap<>(traits);
		this.troubles = new TreeMap<>(troubles);
		this.names = new NameSearch(this.byId.values(), further);
	}

	/**
	 * The same catalogue, in which species are found by further names as well.
	 * @param further names besides those of the species, such as those of other languages
	 * @return for {@link #search} and {@link #called}; all else is the same
	 */
	public Catalogue alsoFoundBy(Function<Species, List<String>> further) {
		return new Catalogue(this.byId.values(), this.groups, this.traits, this.troubles, this.fingerprint, further);
	}

	/**
	 * Species that have exactly this name, without regard to case, accents and
	 * punctuation.
	 * @param name common, botanical or otherwise
	 * @return by name; some names are those of several
	 */
	public List<Species> called(String name) {
		return this.names.called(name);
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
	 * A fingerprint of the files that it was read from, the same on any machine for the
	 * same files.
	 * @return SHA-256 over file names and contents, 64 hexadecimal digits; empty when it
	 * was read from none
	 */
	public String fingerprint() {
		return this.fingerprint;
	}

	/**
	 * Every species.
	 * @return by common name, then id
	 */
	public List<Species> all() {
		return List.copyOf(this.byId.values());
	}

	/**
	 * Finds species by any of their names, common, botanical and former ones, without
	 * regard to case and accents: the name itself first, then names that begin with the
	 * text, names with a word that begins with it, names that contain it, and last names
	 * that are a slip away (one in a word of five letters or more, two from nine); within
	 * each by common name.
	 * @param text what was typed; blank finds everything
	 * @param limit most that are wanted, 1 to 1000
	 * @return never null
	 */
	public List<Species> search(String text, int limit) {
		List<Species> found = this.names.find(text);
		return found.subList(0, Math.min(found.size(), Math.max(1, Math.min(limit, MOST))));
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

	/**
	 * The diseases, pests and disorders that species can be susceptible to.
	 * @return name to words for readers, by name
	 */
	public SortedMap<String, String> troubles() {
		return Collections.unmodifiableSortedMap(this.troubles);
	}

}
