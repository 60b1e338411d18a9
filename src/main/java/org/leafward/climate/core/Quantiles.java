package org.leafward.climate.core;

/** Empirical quantiles. */
public final class Quantiles {

	private Quantiles() {
	}

	/**
	 * The quantile at rank 1 + (n - 1) p, linear between order statistics: type 7 of
	 * Hyndman and Fan (1996), The American Statistician 50:361-365.
	 * @param sorted the values, ascending, at least one
	 * @param p 0 to 1
	 * @return between the lowest and the highest value
	 */
	public static double type7(double[] sorted, double p) {
		if (sorted.length == 0 || !(p >= 0 && p <= 1)) {
			throw new IllegalArgumentException("no quantile %s of %d values".formatted(p, sorted.length));
		}
		double index = (sorted.length - 1) * p;
		int below = (int) Math.floor(index);
		int above = Math.min(below + 1, sorted.length - 1);
		return sorted[below] + (index - below) * (sorted[above] - sorted[below]);
	}

}
