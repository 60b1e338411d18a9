package org.leafward.climate.core.heat;

/**
 * Methods that turn the minimum and the maximum of a day into degree-days.
 * <p>
 * Sine: Baskerville and Emin (1969), Ecology 50:514-517, and Allen (1976), Environmental
 * Entomology 5:388-396; neither was at hand, the formulas agree with the results of the
 * UC IPM calculator. Triangle: a straight line instead of the sine (Lindsey and Newman
 * 1956, from memory). The double methods take half of the day with its own minimum and
 * half with the next one's.
 * <p>
 * With A(t) for the mean warmth above t over the day, a horizontal cut-off gives A(lower)
 * - A(upper); an intermediate one A(lower) - 2 A(upper), at least zero; a vertical one
 * the horizontal value less (upper - lower) times the part of the day above upper.
 */
public enum DegreeDays {

	/** The mean of minimum and maximum above the threshold. */
	SIMPLE_AVERAGE(false) {

		@Override
		double warmth(double low, double high, double threshold) {
			return Math.max(0, (low + high) / 2 - threshold);
		}

		@Override
		double part(double low, double high, double threshold) {
			return ((low + high) / 2 > threshold) ? 1 : 0;
		}

	},

	/** One sine wave through minimum and maximum. */
	SINGLE_SINE(false) {

		@Override
		double warmth(double low, double high, double threshold) {
			return sineWarmth(low, high, threshold);
		}

		@Override
		double part(double low, double high, double threshold) {
			return sinePart(low, high, threshold);
		}

	},

	/** Half a sine wave up to the maximum, another half down to the next minimum. */
	DOUBLE_SINE(true) {

		@Override
		double warmth(double low, double high, double threshold) {
			return sineWarmth(low, high, threshold);
		}

		@Override
		double part(double low, double high, double threshold) {
			return sinePart(low, high, threshold);
		}

	},

	/** A straight line up to the maximum and back to the same minimum. */
	SINGLE_TRIANGLE(false) {

		@Override
		double warmth(double low, double high, double threshold) {
			return lineWarmth(low, high, threshold);
		}

		@Override
		double part(double low, double high, double threshold) {
			return linePart(low, high, threshold);
		}

	},

	/** A straight line up to the maximum, another one down to the next minimum. */
	DOUBLE_TRIANGLE(true) {

		@Override
		double warmth(double low, double high, double threshold) {
			return lineWarmth(low, high, threshold);
		}

		@Override
		double part(double low, double high, double threshold) {
			return linePart(low, high, threshold);
		}

	},

	/**
	 * Growing degree units of corn, °F: minimum and maximum are first brought into 50 to
	 * 86 °F, their mean less 50 counts. So a day gives 0 to 36. Not the same as a sine
	 * with a horizontal cut-off.
	 */
	CORN_86_50(false) {

		@Override
		double warmth(double low, double high, double threshold) {
			return (Math.max(low, threshold) + Math.max(high, threshold)) / 2 - threshold;
		}

		@Override
		double part(double low, double high, double threshold) {
			throw new IllegalStateException("corn units have a horizontal cut-off");
		}

	};

	private final boolean nextLow;

	DegreeDays(boolean nextLow) {
		this.nextLow = nextLow;
	}

	/**
	 * Whether the method looks at the minimum of the next day too.
	 * @return true for the double methods
	 */
	public boolean needsNextLow() {
		return this.nextLow;
	}

	/**
	 * The degree-days of a day. Temperatures and thresholds have the same unit, °C or °F;
	 * {@link #CORN_86_50} takes °F and {@link HeatThresholds#CORN}.
	 * @param low minimum
	 * @param high maximum; a maximum below the minimum, which some records have, counts
	 * as the minimum
	 * @param nextLow minimum of the next day; single methods don't look at it
	 * @param thresholds between which heat counts
	 * @return degree-days in that unit, 0 or more; NaN when a temperature that is needed
	 * is NaN
	 * @throws IllegalArgumentException when corn's thresholds are others than its own
	 */
	public double of(double low, double high, double nextLow, HeatThresholds thresholds) {
		if (this == CORN_86_50 && !thresholds.equals(HeatThresholds.CORN)) {
			throw new IllegalArgumentException("corn units have the thresholds 50 and 86 °F");
		}
		if (!this.nextLow) {
			return cut(warmth(low, Math.max(low, high), thresholds.lower()), upper(low, high, thresholds),
					partAbove(low, high, thresholds), thresholds);
		}
		return cut(
				(warmth(low, Math.max(low, high), thresholds.lower())
						+ warmth(nextLow, Math.max(nextLow, high), thresholds.lower())) / 2,
				(upper(low, high, thresholds) + upper(nextLow, high, thresholds)) / 2,
				(partAbove(low, high, thresholds) + partAbove(nextLow, high, thresholds)) / 2, thresholds);
	}

	private double upper(double low, double high, HeatThresholds thresholds) {
		return (thresholds.cutOff() == CutOff.NONE) ? 0 : warmth(low, Math.max(low, high), thresholds.upper());
	}

	private double partAbove(double low, double high, HeatThresholds thresholds) {
		return (thresholds.cutOff() == CutOff.VERTICAL) ? part(low, Math.max(low, high), thresholds.upper()) : 0;
	}

	private static double cut(double lower, double upper, double part, HeatThresholds thresholds) {
		return switch (thresholds.cutOff()) {
			case NONE -> lower;
			case HORIZONTAL -> Math.max(0, lower - upper);
			case INTERMEDIATE -> Math.max(0, lower - 2 * upper);
			case VERTICAL -> Math.max(0, lower - upper - (thresholds.upper() - thresholds.lower()) * part);
		};
	}

	/** Mean warmth above a threshold over the day. */
	abstract double warmth(double low, double high, double threshold);

	/** Part of the day above a threshold, 0 to 1. */
	abstract double part(double low, double high, double threshold);

	private static double sineWarmth(double low, double high, double threshold) {
		double mean = (low + high) / 2;
		if (low >= threshold || Double.isNaN(mean)) {
			return mean - threshold;
		}
		if (high <= threshold) {
			return 0;
		}
		double swing = (high - low) / 2;
		double angle = Math.asin((threshold - mean) / swing);
		return ((mean - threshold) * (Math.PI / 2 - angle) + swing * Math.cos(angle)) / Math.PI;
	}

	private static double sinePart(double low, double high, double threshold) {
		if (low >= threshold) {
			return 1;
		}
		return (high <= threshold) ? 0 : 0.5 - Math.asin((threshold - (low + high) / 2) / ((high - low) / 2)) / Math.PI;
	}

	private static double lineWarmth(double low, double high, double threshold) {
		double mean = (low + high) / 2;
		if (low >= threshold || Double.isNaN(mean)) {
			return mean - threshold;
		}
		double above = high - threshold;
		return (above <= 0) ? 0 : above * above / (2 * (high - low));
	}

	private static double linePart(double low, double high, double threshold) {
		if (low >= threshold) {
			return 1;
		}
		return (high <= threshold) ? 0 : (high - threshold) / (high - low);
	}

}
