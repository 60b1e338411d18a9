package org.leafward.climate.core.drought;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * A gamma distribution fitted to amounts of rain by Thom's approximation of the greatest
 * likelihood (Thom 1958, Monthly Weather Review 86:117-122, at second hand), as McKee,
 * Doesken and Kleist have it for their index.
 *
 * @param shape above 0
 * @param scale in the unit of the amounts, above 0
 */
public record GammaFit(double shape, double scale) {

	/** Fewest amounts above zero that are fitted; our choice. */
	static final int FEWEST = 10;

	/**
	 * Fits amounts.
	 * @param amounts each above 0
	 * @return empty when there are fewer than ten, or all are the same
	 */
	public static Optional<GammaFit> of(double[] amounts) {
		if (amounts.length < FEWEST) {
			return Optional.empty();
		}
		double mean = Arrays.stream(amounts).average().orElseThrow();
		double difference = Math.log(mean) - Arrays.stream(amounts).map(Math::log).average().orElseThrow();
		return (difference > 1e-9) ? Optional.of(of(mean, difference)) : Optional.empty();
	}

	/**
	 * Fits from two sums.
	 * @param mean mean of the amounts
	 * @param difference the logarithm of their mean less the mean of their logarithms,
	 * above 0
	 * @return the distribution
	 */
	static GammaFit of(double mean, double difference) {
		double shape = (1 + Math.sqrt(1 + 4 * difference / 3)) / (4 * difference);
		return new GammaFit(shape, mean / shape);
	}

	/**
	 * The chance of an amount no greater.
	 * @param amount in the unit of the fitted ones
	 * @return 0 to 1
	 */
	public double cumulative(double amount) {
		return GammaDistribution.of(this.shape, this.scale).cumulativeProbability(amount);
	}

}
