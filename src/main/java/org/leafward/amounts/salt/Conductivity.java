package org.leafward.amounts.salt;

import org.leafward.amounts.Quantity;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * Electrical conductivity of a soil, as a laboratory gives it.
 *
 * @param measured dS/m, the same as mmhos/cm, 0 to 100
 * @param extract how it was measured
 * @param soil texture, which decides how far a dilution is below the saturated paste
 */
public record Conductivity(double measured, Extract extract, TextureClass soil) {

	/** Where the lines from dilution to paste come from. */
	static final String SOURCE = "lines for extracts of coarse, medium and fine soil in table 2 of PLoS ONE 13(6), "
			+ "e0198290 (2018), read in an excerpt of the page of that table, which quotes them from another paper; which textures "
			+ "are coarse, medium and fine is our choice";

	public Conductivity {
		Quantity.within("ec", "electrical conductivity", measured, 0, 100);
	}

	/**
	 * Conductivity of the saturated paste, ECe.
	 * @return dS/m, 0 or more
	 */
	public double saturated() {
		return (this.extract == Extract.SATURATED_PASTE) ? this.measured : Math.max(0, switch (this.soil) {
			case SAND, LOAMY_SAND, SANDY_LOAM -> 2.79 * this.measured + 0.71;
			case LOAM, SILT_LOAM, SILT -> 2.35 * this.measured - 0.36;
			case CLAY_LOAM, SILTY_CLAY_LOAM, SILTY_CLAY, CLAY -> 2.16 * this.measured + 0.03;
		});
	}

	/**
	 * How it came about.
	 * @return a step
	 */
	public Explanation explanation() {
		Explanation step = Explanation.of("Salt in the soil, as saturated paste", words(saturated()));
		return (this.extract == Extract.SATURATED_PASTE) ? step.withDetail("As the laboratory gives it.")
				: step
					.withDetail("Measured " + words(this.measured) + " in " + this.extract.words() + ", moved by the "
							+ "line for " + this.soil.words() + ". A saturated paste from the laboratory is better.")
					.withSource(SOURCE);
	}

	/**
	 * A conductivity in words.
	 * @param siemens dS/m
	 * @return for example "4.0 dS/m"
	 */
	public static String words(double siemens) {
		return NumberWords.fixed(siemens, 1) + " dS/m";
	}

}
