package org.leafward.register.core;

import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * The flow of a hose by the time that it takes to fill a bucket: volume by time.
 *
 * @param litres what the bucket holds, 0.5 to 1,000 l
 * @param seconds how long the hose takes to fill it, 1 to 3,600 s
 */
public record BucketTest(double litres, double seconds) {

	private static final int SECONDS_PER_MINUTE = 60;

	/**
	 * Checks the bounds.
	 * @throws BadInput at {@code bucket} or {@code seconds}
	 */
	public BucketTest {
		Findings all = new Findings();
		double held = litres;
		double taken = seconds;
		all.check(() -> within("bucket", "a bucket of %s l", held, 0.5, 1000, "measure how much it holds"));
		all.check(() -> within("seconds", "a time of %s s", taken, 1, 3600,
				"take a larger bucket for a strong hose, a smaller one for a weak hose"));
		all.end();
	}

	private static void within(String field, String what, double value, double least, double most, String mend) {
		if (!(value >= least && value <= most)) {
			throw new BadInput((what + " is outside %s to %s").formatted(number(value), number(least), number(most)),
					field, mend);
		}
	}

	private static String number(double value) {
		return (value == Math.rint(value)) ? String.valueOf((long) value) : String.valueOf(value);
	}

	/**
	 * What the hose gives.
	 * @return l/min
	 */
	public double litresPerMinute() {
		return this.litres / this.seconds * SECONDS_PER_MINUTE;
	}

}
