package org.leafward.climate.core.water;

/**
 * Part of the reference evapotranspiration that established landscape plants need to look
 * acceptable, by the classes of ANSI/ASABE S623. The standard itself could not be read;
 * each figure says where it comes from. None of them is for best growth or yield.
 */
public enum PlantFactor {

	/** Bluegrass, ryegrass, fescue. */
	COOL_SEASON_TURF("cool-season turf", 0.8, 0.8, Evidence.PAGE, "county water-balance exhibit citing CIMIS"),

	/** Bermuda, zoysia, buffalo grass. */
	WARM_SEASON_TURF("warm-season turf", 0.6, 0.6, Evidence.SECOND_HAND, "notes quoting a page of UC Davis"),

	/** The dry figure is also that of the county exhibit citing CIMIS. */
	TREES("trees", 0.5, 0.7, Evidence.PAGE, "abstract 18790 of the ASHS conference 2014"),

	/** Woody shrubs and ground covers. */
	SHRUBS_AND_GROUND_COVERS("shrubs and ground covers", 0.5, 0.7, Evidence.MEMORY,
			"ANSI/ASABE S623; the dry figure also in a county exhibit citing CIMIS"),

	/** Climbers. */
	VINES("vines", 0.5, 0.5, Evidence.SECOND_HAND, "notes quoting a page of UC Agriculture and Natural Resources"),

	/** Herbaceous perennials. */
	PERENNIALS("herbaceous perennials", 0.5, 0.7, Evidence.MEMORY, "ANSI/ASABE S623"),

	/** Bedding plants. */
	ANNUAL_FLOWERS("annual flowers", 0.8, 0.8, Evidence.MEMORY, "ANSI/ASABE S623"),

	/** Plants of deserts. */
	DESERT_PLANTS("desert-adapted plants", 0.3, 0.3, Evidence.SECOND_HAND,
			"notes quoting a page of UC Agriculture and Natural Resources"),

	/** Fruit trees that drop their leaves. */
	HOME_FRUIT("deciduous home fruit", 0.8, 0.8, Evidence.PAGE, "county water-balance exhibit citing CIMIS"),

	/** Vegetables; the source gives 0.8 to 1.0, the upper end is taken. */
	HOME_VEGETABLES("home vegetables", 1.0, 1.0, Evidence.MEMORY, "ANSI/ASABE S623");

	private final String words;

	private final double dry;

	private final double humid;

	private final Evidence evidence;

	private final String source;

	PlantFactor(String words, double dry, double humid, Evidence evidence, String source) {
		this.words = words;
		this.dry = dry;
		this.humid = humid;
		this.evidence = evidence;
		this.source = source;
	}

	/**
	 * The factor.
	 * @param humid whether summers are humid
	 * @return 0.3 to 1.0
	 */
	public double value(boolean humid) {
		return humid ? this.humid : this.dry;
	}

	public String words() {
		return this.words;
	}

	public Evidence evidence() {
		return this.evidence;
	}

	public String source() {
		return this.source;
	}

}
