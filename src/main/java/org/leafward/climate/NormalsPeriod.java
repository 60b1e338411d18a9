package org.leafward.climate;

import org.leafward.measure.BadInput;

/** The seasons from which dates are drawn; each station gives those that it covers. */
public enum NormalsPeriod {

	/** The latest 30 seasons of each record. */
	LATEST_30("latest-30", "the latest 30 seasons"),

	/** The current standard normals (WMO). */
	NORMALS_1991_2020("1991-2020", "the normals period 1991 to 2020"),

	/** The latest 15 seasons: closer to today's climate, but less sure. */
	LATEST_15("latest-15", "the latest 15 seasons"),

	/** The whole record. */
	ALL("all", "all seasons on record");

	private final String code;

	private final String words;

	NormalsPeriod(String code, String words) {
		this.code = code;
		this.words = words;
	}

	/**
	 * The name used in addresses.
	 * @return for example {@code latest-30}
	 */
	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

	/**
	 * Reads a period.
	 * @param text its {@link #code}
	 * @return the period
	 * @throws BadInput when it is none
	 */
	public static NormalsPeriod parse(String text) {
		for (NormalsPeriod period : values()) {
			if (period.code.equalsIgnoreCase(text.strip())) {
				return period;
			}
		}
		throw new BadInput("period '%s' is unknown".formatted(text), "period",
				"write one of: latest-30, 1991-2020, latest-15, all");
	}

}
