package org.leafward.care.core.check;

import java.util.OptionalInt;

/**
 * A temperature through the year as one cosine wave, fitted to its four seasonal means.
 * The mean of a wave over a quarter of its length is sin(π/4)/(π/4) of the wave at the
 * middle of that quarter, so the fit divides by that.
 *
 * @param mean mean of the year, °F
 * @param winter part of the wave that is highest in the middle of January, °F; negative
 * in the north
 * @param spring part of the wave that is highest in the middle of April, °F
 */
record YearCurve(double mean, double winter, double spring) {

	private static final double QUARTER = Math.sin(Math.PI / 4) / (Math.PI / 4);

	/** The middle of the months December to February, in days of the year. */
	private static final double MID_WINTER = 15.5;

	/** The day on which the search for warming begins. */
	private static final int COLDEST = 15;

	/** 1 August, which parts spring from fall. */
	private static final int MIDSUMMER = 213;

	/**
	 * Fits a curve.
	 * @param djf mean of December to February, °F
	 * @param mam mean of March to May, °F
	 * @param jja mean of June to August, °F
	 * @param son mean of September to November, °F
	 * @return the curve
	 */
	static YearCurve of(double djf, double mam, double jja, double son) {
		return new YearCurve((djf + mam + jja + son) / 4, (djf - jja) / 2 / QUARTER, (mam - son) / 2 / QUARTER);
	}

	static YearCurve between(YearCurve one, YearCurve other) {
		return new YearCurve((one.mean + other.mean) / 2, (one.winter + other.winter) / 2,
				(one.spring + other.spring) / 2);
	}

	/** The temperature, °F, on a day of the season, 1 for 1 January. */
	double on(double day) {
		double angle = 2 * Math.PI * (day - MID_WINTER) / 365;
		return this.mean + this.winter * Math.cos(angle) + this.spring * Math.sin(angle);
	}

	/**
	 * First day after midwinter at or above a temperature; empty when always or never.
	 */
	OptionalInt warmsTo(double degrees, int delay) {
		for (int day = COLDEST; day < MIDSUMMER; day++) {
			if (on(day) >= degrees) {
				return (day > COLDEST) ? OptionalInt.of(day + delay) : OptionalInt.empty();
			}
		}
		return OptionalInt.empty();
	}

	/** First day after midsummer at or below a temperature; empty when never. */
	OptionalInt coolsTo(double degrees, int delay) {
		for (int day = MIDSUMMER; day < 365 + COLDEST; day++) {
			if (on(day) <= degrees) {
				return OptionalInt.of(day + delay);
			}
		}
		return OptionalInt.empty();
	}

}
