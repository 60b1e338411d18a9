package org.leafward.quick.core;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.plants.Species;
import org.springframework.modulith.NamedInterface;

/**
 * The catalogue in drawers that people look into: each species lies in one, the first
 * that fits. A drawer is opened and its species are ticked; a whole drawer can't be,
 * since the dates of its species differ by weeks, and what is right for one hydrangea is
 * wrong for another.
 */
@NamedInterface("drawers")
public final class PlantKinds {

	private static final List<Drawer> DRAWERS = drawers();

	private static final Drawer REST = new Drawer("other", "Other plants", Set.of());

	private PlantKinds() {
	}

	/**
	 * A drawer.
	 *
	 * @param code its name in addresses, lower case with hyphens; never changed, as
	 * subscriptions hold it
	 * @param title what it holds
	 * @param species its species, by common name
	 */
	public record Kind(String code, String title, List<Species> species) {
	}

	private record Drawer(String code, String title, Set<String> groups) {
	}

	private static List<Drawer> drawers() {
		List<Drawer> all = new ArrayList<>();
		all.add(new Drawer("vegetables", "Vegetables and herbs", Set.of("vegetable", "perennial-vegetable", "garlic")));
		all.add(new Drawer("fruit-trees", "Fruit trees", Set.of("fruit-tree", "stone-fruit")));
		all.add(new Drawer("berries", "Berries and grapes",
				Set.of("strawberry", "bramble-floricane", "bramble-primocane", "blueberry", "currant", "grape")));
		all.add(new Drawer("annuals", "Annual flowers", Set.of("annual")));
		all.add(new Drawer("bulbs", "Bulbs", Set.of("spring-bulb", "tender-bulb", "warm-bulb")));
		all.add(new Drawer("perennials", "Perennials and grasses",
				Set.of("perennial", "ornamental-grass-cool", "ornamental-grass-warm")));
		all.add(new Drawer("lawns", "Lawns", Set.of("turf")));
		all.add(new Drawer("roses", "Roses", Set.of("rose")));
		all.add(new Drawer("hydrangeas", "Hydrangeas", Set.of("hydrangea-old-wood", "hydrangea-new-wood")));
		all.add(new Drawer("rhododendrons", "Rhododendrons and azaleas", Set.of("rhododendron")));
		all.add(new Drawer("boxwood", "Boxwood and hollies", Set.of("boxwood", "holly")));
		all.add(new Drawer("spring-shrubs", "Shrubs that flower in spring", Set.of("spring-flowering-shrub")));
		all.add(new Drawer("summer-shrubs", "Shrubs that flower in summer", Set.of("summer-flowering-shrub")));
		all.add(new Drawer("conifers", "Conifers: pines, spruces, yews and their like", Set.of("needled-evergreen")));
		all.add(new Drawer("houseplants", "Houseplants and citrus in pots",
				Set.of("houseplant", "orchid", "succulent", "citrus")));
		all.add(new Drawer("evergreens", "Other broadleaf evergreens", Set.of("broadleaf-evergreen")));
		all.add(new Drawer("small-trees", "Small flowering trees", Set.of("flowering-tree")));
		all.add(new Drawer("oaks", "Oaks", Set.of("oak")));
		all.add(new Drawer("maples", "Maples", Set.of("maple")));
		all.add(new Drawer("shade-trees", "Other shade trees", Set.of("deciduous-shade-tree")));
		return List.copyOf(all);
	}

	/**
	 * Puts species into drawers.
	 * @param catalogue all species, by common name
	 * @return the drawers that hold something; what fits none comes last
	 */
	public static List<Kind> of(List<Species> catalogue) {
		Map<Drawer, List<Species>> sorted = new LinkedHashMap<>();
		DRAWERS.forEach((drawer) -> sorted.put(drawer, new ArrayList<>()));
		sorted.put(REST, new ArrayList<>());
		for (Species one : catalogue) {
			Drawer drawer = DRAWERS.stream()
				.filter((each) -> one.groups().stream().anyMatch(each.groups()::contains))
				.findFirst()
				.orElse(REST);
			sorted.getOrDefault(drawer, new ArrayList<>()).add(one);
		}
		return sorted.entrySet()
			.stream()
			.filter((each) -> !each.getValue().isEmpty())
			.map((each) -> new Kind(each.getKey().code(), each.getKey().title(), List.copyOf(each.getValue())))
			.toList();
	}

}
