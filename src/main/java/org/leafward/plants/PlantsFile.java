package org.leafward.plants;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A file of config/plants as written.
 *
 * @param title for readers
 * @param groups groups it defines
 * @param traits traits it defines
 * @param troubles diseases, pests and disorders it defines
 * @param references publications it defines
 * @param species species it lists
 */
record PlantsFile(String title, @Nullable Map<String, String> groups, @Nullable Map<String, String> traits,
		@Nullable Map<String, String> troubles, @Nullable Map<String, Reference> references,
		@Nullable List<Entry> species) {

	/**
	 * A species as written.
	 *
	 * @param name botanical name
	 * @param common common name
	 * @param alsoCalled other names
	 * @param groups plant groups
	 * @param traits traits
	 * @param zones hardiness
	 * @param blooms bloom time
	 * @param bloomsOn old or new wood
	 * @param light light it wants
	 * @param tolerance what it bears
	 * @param susceptibleTo troubles
	 * @param caution for whoever plants it
	 * @param sources where facts come from
	 */
	record Entry(String name, String common, @Nullable List<String> alsoCalled, List<String> groups,
			@Nullable List<String> traits, @Nullable Zones zones, @Nullable String blooms, @Nullable String bloomsOn,
			@Nullable String light, @Nullable Bears tolerance, @Nullable List<String> susceptibleTo,
			@Nullable String caution, @Nullable List<Fact> sources) {
	}

	/**
	 * Tolerances as written.
	 *
	 * @param drought of drought
	 * @param soilSalt of salt in the soil
	 * @param saltSpray of salt spray
	 */
	record Bears(@Nullable String drought, @Nullable String soilSalt, @Nullable String saltSpray) {
	}

	/**
	 * A fact with its source as written.
	 *
	 * @param fact in a few words
	 * @param reference name of the publication
	 */
	record Fact(String fact, String reference) {
	}

	/**
	 * A publication as written.
	 *
	 * @param title its title
	 * @param publisher who published it
	 * @param address web address
	 */
	record Reference(String title, String publisher, String address) {
	}

	/**
	 * Hardiness zones as written.
	 *
	 * @param from coldest
	 * @param to warmest
	 */
	record Zones(int from, int to) {
	}

}
