package org.leafward.amounts.water;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.BadInput;

/**
 * Soil as far as watering goes, by its texture. Intake rates are final ones of level,
 * bare ground, the middle of the ranges sand above 20, sandy and silty soils 10 to 20,
 * loams 5 to 10, clayey soils 1 to 5 mm/h (Hillel, at second hand, from slides of a
 * course on soil water).
 */
public enum Ground {

	/** Sand. */
	SAND(TextureClass.SAND, 25, 1),

	/** Sandy loam. */
	SANDY_LOAM(TextureClass.SANDY_LOAM, 15, 1),

	/** Loam. */
	LOAM(TextureClass.LOAM, 7.5, 1),

	/** Silt loam. */
	SILT_LOAM(TextureClass.SILT_LOAM, 10, 1),

	/** Clay loam. */
	CLAY_LOAM(TextureClass.CLAY_LOAM, 5, 2),

	/** Clay. */
	CLAY(TextureClass.CLAY, 3, 3);

	/** Where the rates come from. */
	static final String SOURCE = "Final intake rates by texture (Hillel), at second hand, in slides of a course";

	private final TextureClass texture;

	private final double intake;

	private final int rounds;

	Ground(TextureClass texture, double intake, int rounds) {
		this.texture = texture;
		this.intake = intake;
		this.rounds = rounds;
	}

	/**
	 * The soil with a name.
	 * @param words for example "clay loam"; case, hyphens and underscores don't matter
	 * @return the soil
	 * @throws BadInput when there is none of that name
	 */
	public static Ground of(String words) {
		String wanted = words.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
		return Arrays.stream(values())
			.filter((ground) -> ground.name().equals(wanted))
			.findFirst()
			.orElseThrow(() -> new BadInput("soil '%s' is unknown".formatted(words), "soil",
					"write one of: " + Arrays.stream(values()).map(Ground::words).collect(Collectors.joining(", "))));
	}

	/**
	 * The name for readers.
	 * @return for example "clay loam"
	 */
	public String words() {
		return this.texture.words();
	}

	/**
	 * Water that plants can take from a metre of it.
	 * @return mm/m, FAO-56, table 19, the middle of the range
	 */
	public double availablePerMetre() {
		return this.texture.availablePerMetre();
	}

	/**
	 * Water that it takes in once it is wet.
	 * @return mm/h
	 */
	public double intake() {
		return this.intake;
	}

	/**
	 * Rounds in which to water when it isn't known how fast the water comes: two or three
	 * on clay soils (Texas A&amp;M AgriLife Water University, read), one elsewhere.
	 * @return 1 to 3
	 */
	public int usualRounds() {
		return this.rounds;
	}

}
