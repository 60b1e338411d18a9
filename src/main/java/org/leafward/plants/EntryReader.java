package org.leafward.plants;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns an entry of config/plants into a species. */
final class EntryReader {

	private EntryReader() {
	}

	/**
	 * The species that an entry describes.
	 * @param entry as written, with zones in order; references that are not in the
	 * vocabulary are left out
	 * @param vocabulary the names it may use
	 * @return never null
	 */
	static Species species(PlantsFile.Entry entry, Vocabulary vocabulary) {
		PlantsFile.Zones zones = entry.zones();
		return new Species(new SpeciesId(slug(entry.name())), entry.name(), entry.common(), orEmpty(entry.alsoCalled()),
				entry.groups(), Set.copyOf(orEmpty(entry.traits())),
				(zones != null) ? new ZoneRange(zones.from(), zones.to()) : null, habits(entry),
				orEmpty(entry.sources()).stream().flatMap((fact) -> source(fact, vocabulary)).toList());
	}

	private static Habits habits(PlantsFile.Entry entry) {
		return new Habits(constant(BloomTime.class, entry.blooms()), constant(BloomsOn.class, entry.bloomsOn()),
				constant(Light.class, entry.light()), tolerance(entry.tolerance()), orEmpty(entry.susceptibleTo()),
				entry.caution());
	}

	private static Tolerance tolerance(PlantsFile.@Nullable Bears bears) {
		return (bears == null) ? Tolerance.UNKNOWN : new Tolerance(constant(Tolerance.Level.class, bears.drought()),
				constant(Tolerance.Level.class, bears.soilSalt()), constant(Tolerance.Level.class, bears.saltSpray()));
	}

	private static Stream<FactSource> source(PlantsFile.Fact fact, Vocabulary vocabulary) {
		return Stream.ofNullable(vocabulary.references().get(fact.reference()))
			.map((found) -> new FactSource(fact.fact(), found.title(), found.publisher(), found.address()));
	}

	private static <E extends Enum<E>> @Nullable E constant(Class<E> kind, @Nullable String written) {
		return (written != null) ? Enum.valueOf(kind, written.toUpperCase(Locale.ROOT).replace('-', '_')) : null;
	}

	/** "Buxus sinica var. insularis" becomes "buxus-sinica-var-insularis". */
	static String slug(String name) {
		String plain = Normalizer.normalize(name.replace('\u00d7', 'x'), Normalizer.Form.NFD)
			.replaceAll("\\p{M}", "")
			.toLowerCase(Locale.ROOT);
		return plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
	}

	static <T> List<T> orEmpty(@Nullable List<T> list) {
		return (list != null) ? list : List.of();
	}

}
