package org.leafward.climate.core.drought;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The Standardized Precipitation Index (McKee, Doesken and Kleist 1993, 8th Conference on
 * Applied Climatology; WMO-No. 1090, 2012; both at second hand): the chance of a sum of
 * rain no greater than the one that fell, by a gamma distribution with a chance of no
 * rain at all, put on the scale of the normal distribution.
 *
 * @param dry chance of no rain, 0 to 1
 * @param rain distribution of the sums above zero
 */
public record PrecipitationIndex(double dry, GammaFit rain) {

	/** Beyond it a few dozen years can tell nothing, so the index stops there. */
	public static final double BOUND = 3;

	/**
	 * Fits the index to the sums of past years.
	 * @param sums mm over the same days of each year, 0 or more
	 * @return empty when too few years had any rain, or all had the same
	 */
	public static Optional<PrecipitationIndex> of(double[] sums) {
		double[] wet = Arrays.stream(sums).filter((sum) -> sum > 0).toArray();
		return GammaFit.of(wet)
			.map((fit) -> new PrecipitationIndex((double) (sums.length - wet.length) / sums.length, fit));
	}

	/**
	 * The chance of a sum no greater.
	 * @param sum mm, 0 or more
	 * @return 0 to 1
	 */
	public double probability(double sum) {
		return this.dry + (1 - this.dry) * this.rain.cumulative(sum);
	}

	/**
	 * The index.
	 * @param sum mm, 0 or more
	 * @return standard deviations, -3 (dry) to 3 (wet)
	 */
	public double of(double sum) {
		return standard(probability(sum));
	}

	/**
	 * The normal deviate of a probability.
	 * @param probability 0 to 1
	 * @return -3 to 3
	 */
	static double standard(double probability) {
		double deviate = NormalDistribution.of(0, 1).inverseCumulativeProbability(probability);
		return Math.max(-BOUND, Math.min(BOUND, deviate));
	}

}
