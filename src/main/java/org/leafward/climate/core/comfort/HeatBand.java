package org.leafward.climate.core.comfort;

import java.util.Optional;

/**
 * Bands of the heat index for people who work outside. The words of the National Weather
 * Service hold from 80, 90, 103 and 125 °F on (its table, read in copies); those of OSHA
 * meet at 91, 103 and 115 °F (second hand, without the page at hand). Full sun can add up
 * to 15 °F to an index made for the shade (NWS).
 */
public enum HeatBand {

	/** From 80 °F. */
	CAUTION(80, "caution"),

	/** From 90 °F. */
	EXTREME_CAUTION(90, "extreme caution"),

	/** From 103 °F. */
	DANGER(103, "danger"),

	/** From 125 °F. */
	EXTREME_DANGER(125, "extreme danger");

	private final int from;

	private final String words;

	HeatBand(int from, String words) {
		this.from = from;
		this.words = words;
	}

	/**
	 * The band of the National Weather Service.
	 * @param index heat index, °F
	 * @return empty below 80 °F
	 */
	public static Optional<HeatBand> of(double index) {
		Optional<HeatBand> found = Optional.empty();
		for (HeatBand band : values()) {
			found = (index >= band.from) ? Optional.of(band) : found;
		}
		return found;
	}

	/**
	 * What to do in OSHA's bands.
	 * @param index heat index, °F
	 * @return a sentence
	 */
	public static String work(double index) {
		if (index < 91) {
			return "Keep water at hand and drink before you are thirsty (OSHA: lower band, below 91 °F (33 °C)).";
		}
		if (index < 103) {
			return "Drink every 15 to 20 minutes, rest in the shade, work in pairs; let people who are new get used to the "
					+ "heat (OSHA: 91 °F (33 °C) to 103 °F (39 °C)).";
		}
		return (index <= 115)
				? "Put heavy work off or do it early; drink every 15 to 20 minutes, watch each other (OSHA: 103 °F (39 °C) to 115 °F (46 °C))."
				: "Put the work off (OSHA: above 115 °F (46 °C)).";
	}

	/**
	 * First index of the band.
	 * @return °F
	 */
	public int from() {
		return this.from;
	}

	public String words() {
		return this.words;
	}

}
