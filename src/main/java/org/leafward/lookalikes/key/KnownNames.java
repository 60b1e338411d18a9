package org.leafward.lookalikes.key;

import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.leafward.plants.Catalogue;

/**
 * The names of other modules that a key may use.
 *
 * @param groups plant groups
 * @param traits traits of plants
 * @param troubles diseases, pests and disorders of the catalogue
 * @param genera botanical genera of the catalogue
 * @param rules whether there is a care rule {@code pack/rule}
 */
public record KnownNames(Set<String> groups, Set<String> traits, Set<String> troubles, Set<String> genera,
		Predicate<String> rules) {

	/**
	 * Those of a catalogue.
	 * @param catalogue the catalogue
	 * @param rules whether there is a care rule
	 * @return the names
	 */
	public static KnownNames of(Catalogue catalogue, Predicate<String> rules) {
		return new KnownNames(catalogue.groups().keySet(), catalogue.traits().keySet(), catalogue.troubles().keySet(),
				catalogue.all()
					.stream()
					.map((one) -> one.botanicalName().replaceFirst("[ ×].*", ""))
					.collect(Collectors.toSet()),
				rules);
	}

}
