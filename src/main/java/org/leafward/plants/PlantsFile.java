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
 * @param species species it lists
 */
record PlantsFile(String title, @Nullable Map<String, String> groups, @Nullable Map<String, String> traits,
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
	 * @param sources where the traits come from
	 */
	record Entry(String name, String common, @Nullable List<String> alsoCalled, List<String> groups,
			@Nullable List<String> traits, @Nullable Zones zones, @Nullable List<FactSource> sources) {
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
