package org.leafward.plants.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.FactSource;
import org.leafward.plants.Habits;
import org.leafward.plants.Species;
import org.leafward.plants.Tolerance;
import org.leafward.plants.ZoneRange;

/**
 * A species in the API.
 *
 * @param id identifier
 * @param botanicalName accepted botanical name
 * @param commonName usual English name
 * @param synonyms other names
 * @param groups plant groups, most particular first
 * @param traits traits, sorted
 * @param zones USDA hardiness zones; null where not known
 * @param blooms when it blooms, such as early-spring; null where that doesn't matter
 * @param bloomsOn old-wood, new-wood or both; null for plants without wood
 * @param light the light it wants, such as part-shade; null where not known
 * @param tolerance what it bears
 * @param susceptibleTo names of troubles, the most usual first
 * @param caution what whoever plants it must know; null when there is nothing
 * @param sources where facts come from; those without a source are common knowledge
 */
record SpeciesView(String id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
		List<String> traits, @Nullable ZoneRange zones, @Nullable String blooms, @Nullable String bloomsOn,
		@Nullable String light, Bears tolerance, List<String> susceptibleTo, @Nullable String caution,
		List<FactSource> sources) {

	/**
	 * What an established plant bears: low, moderate or high; null where not known.
	 *
	 * @param drought drought
	 * @param soilSalt salt in the soil
	 * @param saltSpray salt spray on leaves and buds
	 */
	record Bears(@Nullable String drought, @Nullable String soilSalt, @Nullable String saltSpray) {
	}

	static SpeciesView of(Species species) {
		Habits habits = species.habits();
		Tolerance tolerance = habits.tolerance();
		return new SpeciesView(species.id().value(), species.botanicalName(), species.commonName(), species.synonyms(),
				species.groups(), species.traits().stream().sorted().toList(), species.zones(), code(habits.blooms()),
				code(habits.bloomsOn()), code(habits.light()),
				new Bears(code(tolerance.drought()), code(tolerance.soilSalt()), code(tolerance.saltSpray())),
				habits.troubles(), habits.caution(), species.sources());
	}

	private static @Nullable String code(@Nullable Enum<?> constant) {
		return (constant != null) ? constant.name().toLowerCase(Locale.ROOT).replace('_', '-') : null;
	}

}
