package org.leafward.climate.core.water;

/**
 * How deep plants root and how much of the water there they can use without stress.
 * Source: FAO Irrigation and Drainage Paper 56, table 22, the rows that gardens have.
 */
public enum RootedCrop {

	// Small vegetables.
	BROCCOLI(0.4, 0.6, 0.45), BRUSSELS_SPROUTS(0.4, 0.6, 0.45), CABBAGE(0.5, 0.8, 0.45), CARROTS(0.5, 1.0, 0.35),
	CAULIFLOWER(0.4, 0.7, 0.45), CELERY(0.3, 0.5, 0.20), GARLIC(0.3, 0.5, 0.30), LETTUCE(0.3, 0.5, 0.30),
	ONIONS_DRY(0.3, 0.6, 0.30), ONIONS_GREEN(0.3, 0.6, 0.30), ONIONS_SEED(0.3, 0.6, 0.35), SPINACH(0.3, 0.5, 0.20),
	RADISHES(0.3, 0.5, 0.30),

	// The tomato family.
	EGGPLANT(0.7, 1.2, 0.45), SWEET_PEPPERS(0.5, 1.0, 0.30), TOMATO(0.7, 1.5, 0.40),

	// The cucumber family.
	CANTALOUPE(0.9, 1.5, 0.45), CUCUMBER_FRESH_MARKET(0.7, 1.2, 0.50), CUCUMBER_MACHINE_HARVEST(0.7, 1.2, 0.50),
	WINTER_SQUASH(1.0, 1.5, 0.35), ZUCCHINI(0.6, 1.0, 0.50), SWEET_MELONS(0.8, 1.5, 0.40), WATERMELON(0.8, 1.5, 0.40),

	// Roots and tubers.
	BEETS_TABLE(0.6, 1.0, 0.50), PARSNIP(0.5, 1.0, 0.40), POTATO(0.4, 0.6, 0.35), SWEET_POTATO(1.0, 1.5, 0.65),
	TURNIP(0.5, 1.0, 0.50), SUGAR_BEET(0.7, 1.2, 0.55),

	// Legumes.
	BEANS_GREEN(0.5, 0.7, 0.45), BEANS_DRY_AND_PULSES(0.6, 0.9, 0.45), BEANS_LIMA_LARGE_VINES(0.8, 1.2, 0.45),
	CHICK_PEA(0.6, 1.0, 0.50), FABABEAN_FRESH(0.5, 0.7, 0.45), GROUNDNUT(0.5, 1.0, 0.50), PEAS_FRESH(0.6, 1.0, 0.35),
	DRY_PEAS(0.6, 1.0, 0.40), SOYBEANS(0.6, 1.3, 0.50),

	// Perennial vegetables.
	ARTICHOKES(0.6, 0.9, 0.45), ASPARAGUS(1.2, 1.8, 0.45), MINT(0.4, 0.8, 0.40), STRAWBERRIES(0.2, 0.3, 0.20),

	// Oil crops.
	SUNFLOWER(0.8, 1.5, 0.45),

	// Cereals.
	MAIZE_GRAIN(1.0, 1.7, 0.55), MAIZE_SWEET(0.8, 1.2, 0.50),

	// Turf.
	TURF_GRASS_COOL_SEASON(0.5, 1.0, 0.40), TURF_GRASS_WARM_SEASON(0.5, 1.0, 0.50),

	// Grapes and berries.
	BERRIES(0.6, 1.2, 0.50), GRAPES_TABLE_OR_RAISIN(1.0, 2.0, 0.35), GRAPES_WINE(1.0, 2.0, 0.45), HOPS(1.0, 1.2, 0.50),

	// Fruit trees.
	ALMONDS(1.0, 2.0, 0.40), APPLES_CHERRIES_PEARS(1.0, 2.0, 0.50), STONE_FRUIT(1.0, 2.0, 0.50),
	AVOCADO(0.5, 1.0, 0.70), CITRUS(1.2, 1.5, 0.50), CONIFER_TREES(1.0, 1.5, 0.70), KIWI(0.7, 1.3, 0.35),
	OLIVES(1.2, 1.7, 0.65), PISTACHIOS(1.0, 1.5, 0.40), WALNUT_ORCHARD(1.7, 2.4, 0.50);

	private final double shallowest;

	private final double deepest;

	private final double fraction;

	RootedCrop(double shallowest, double deepest, double fraction) {
		this.shallowest = shallowest;
		this.deepest = deepest;
		this.fraction = fraction;
	}

	/**
	 * Lower end of the greatest depth of effective roots, for planning irrigation.
	 * @return m
	 */
	public double shallowest() {
		return this.shallowest;
	}

	/**
	 * Upper end of it, in deep open soil without irrigation.
	 * @return m
	 */
	public double deepest() {
		return this.deepest;
	}

	/**
	 * Part p of the available water that can be used without stress where the plants lose
	 * 5 mm a day.
	 * @return 0.20 to 0.70
	 */
	public double fraction() {
		return this.fraction;
	}

}
