package org.leafward.quick.core;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.plants.Species;

/**
 * The catalogue in drawers that people look into: each species lies in one, the first
 * that fits. A drawer is opened and its species are ticked; a whole drawer can't be,
 * since the dates of its species differ by weeks, and what is right for one hydrangea is
 * wrong for another.
 */
public final class PlantKinds {

	private static final Map<String, Set<String>> DRAWERS = drawers();

	private static final String REST = "Other plants";

	private PlantKinds() {
	}

	/**
	 * A drawer.
	 *
	 * @param title what it holds
	 * @param species its species, by common name
	 */
	public record Kind(String title, List<Species> species) {
	}

	private static Map<String, Set<String>> drawers() {
		Map<String, Set<String>> all = new LinkedHashMap<>();
		all.put("Vegetables and herbs", Set.of("vegetable", "perennial-vegetable", "garlic"));
		all.put("Fruit trees", Set.of("fruit-tree", "stone-fruit"));
		all.put("Berries and grapes",
				Set.of("strawberry", "bramble-floricane", "bramble-primocane", "blueberry", "currant", "grape"));
		all.put("Annual flowers", Set.of("annual"));
		all.put("Bulbs", Set.of("spring-bulb", "tender-bulb", "warm-bulb"));
		all.put("Perennials and grasses", Set.of("perennial", "ornamental-grass-cool", "ornamental-grass-warm"));
		all.put("Lawns", Set.of("turf"));
		all.put("Roses", Set.of("rose"));
		all.put("Hydrangeas", Set.of("hydrangea-old-wood", "hydrangea-new-wood"));
		all.put("Rhododendrons and azaleas", Set.of("rhododendron"));
		all.put("Boxwood and hollies", Set.of("boxwood", "holly"));
		all.put("Shrubs that flower in spring", Set.of("spring-flowering-shrub"));
		all.put("Shrubs that flower in summer", Set.of("summer-flowering-shrub"));
		all.put("Conifers: pines, spruces, yews and their like", Set.of("needled-evergreen"));
		all.put("Houseplants and citrus in pots", Set.of("houseplant", "orchid", "succulent", "citrus"));
		all.put("Other broadleaf evergreens", Set.of("broadleaf-evergreen"));
		all.put("Small flowering trees", Set.of("flowering-tree"));
		all.put("Oaks", Set.of("oak"));
		all.put("Maples", Set.of("maple"));
		all.put("Other shade trees", Set.of("deciduous-shade-tree"));
		return all;
	}

	/**
	 * Puts species into drawers.
	 * @param catalogue all species, by common name
	 * @return the drawers that hold something; what fits none comes last
	 */
	public static List<Kind> of(List<Species> catalogue) {
		Map<String, List<Species>> sorted = new LinkedHashMap<>();
		DRAWERS.keySet().forEach((title) -> sorted.put(title, new ArrayList<>()));
		sorted.put(REST, new ArrayList<>());
		for (Species one : catalogue) {
			String drawer = DRAWERS.entrySet()
				.stream()
				.filter((each) -> one.groups().stream().anyMatch(each.getValue()::contains))
				.map(Map.Entry::getKey)
				.findFirst()
				.orElse(REST);
			sorted.getOrDefault(drawer, new ArrayList<>()).add(one);
		}
		return sorted.entrySet()
			.stream()
			.filter((each) -> !each.getValue().isEmpty())
			.map((each) -> new Kind(each.getKey(), List.copyOf(each.getValue())))
			.toList();
	}

}
