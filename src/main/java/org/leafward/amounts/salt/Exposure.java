package org.leafward.amounts.salt;

/** How de-icing salt reaches plants, and what is done about it. */
public enum Exposure {

	/** Beds along walks and drives that somebody salts by hand. */
	WALK("along a walk or drive",
			"Shovel first, then use as little as works, and sand or grit where grip is enough. Mark the beds with "
					+ "stakes, so that salted snow isn’t piled on them.",
			"Leach the soil once it has thawed.",
			"University of Illinois Extension, Deicing salt and plants, 2025, read; marking beds from memory",
			"Purdue Landscape Report, Salt in the landscape, read"),

	/** Beds and tree pits along salted roads: meltwater and ploughed snow. */
	ROAD("along a salted road",
			"Lead meltwater away from the bed with a low ridge or kerb, keep ploughed snow off it, and plant what "
					+ "bears salt in the first metres.",
			"Leach the soil once it has thawed and the road is salted no more; test it where plants suffer each year.",
			"common practice, from memory", "common practice, from memory"),

	/** Twigs and needles in the spray of traffic. */
	SPRAY("in the spray of a road",
			"Before the ground freezes put up burlap on stakes on the side of the road, 30 cm (1 ft) taller than the "
					+ "plants and clear of their leaves. Keep sight lines at drives open.",
			"Leaching doesn’t help leaves: rinse them with clear water until it runs off, on a thaw day above 4 °C "
					+ "(40 °F), early enough to dry before it freezes.",
			"screens: a botanical garden’s newspaper column, read; their height from memory",
			"A&L Great Lakes Laboratories, Salt injury in landscapes, read; the temperature from memory");

	private final String words;

	private final String before;

	private final String after;

	private final String sourceBefore;

	private final String sourceAfter;

	Exposure(String words, String before, String after, String sourceBefore, String sourceAfter) {
		this.words = words;
		this.before = before;
		this.after = after;
		this.sourceBefore = sourceBefore;
		this.sourceAfter = sourceAfter;
	}

	public String words() {
		return this.words;
	}

	/**
	 * What helps before winter.
	 * @return sentences
	 */
	public String before() {
		return this.before;
	}

	/**
	 * What helps after the thaw.
	 * @return sentences
	 */
	public String after() {
		return this.after;
	}

	public String sourceBefore() {
		return this.sourceBefore;
	}

	public String sourceAfter() {
		return this.sourceAfter;
	}

}
