package org.leafward.advisories.core.watch;

import org.leafward.advisories.Bilingual;
import org.leafward.measure.BadInput;
import org.leafward.measure.NumberWords;

/**
 * A limit of a condition, which specialists may move for their counties.
 *
 * @param name its name within the condition
 * @param label what it limits
 * @param value the usual value
 * @param unit in which it is written
 * @param lowest lowest value that may be set
 * @param highest highest value that may be set
 * @param source where the value is published, or "common practice, no source"
 */
public record Threshold(String name, Bilingual label, double value, ThresholdUnit unit, double lowest, double highest,
		String source) {

	public Threshold {
		if (!(lowest <= value && value <= highest)) {
			throw new BadInput("%s is outside %s to %s".formatted(plain(value), plain(lowest), plain(highest)), "value",
					"give a value between lowest and highest, or move these");
		}
	}

	/**
	 * Checks another value.
	 * @param other in the same unit
	 * @return the value
	 * @throws BadInput when it is out of bounds
	 */
	public double checked(double other) {
		if (!(this.lowest <= other && other <= this.highest)) {
			throw new BadInput("%s %s is outside %s to %s"
				.formatted(plain(other), this.unit.words(), plain(this.lowest), plain(this.highest))
				.replace("  ", " "), "value", "give a value between the two");
		}
		return other;
	}

	/**
	 * A value with its unit.
	 * @param other in this unit
	 * @return for example "28 °F"
	 */
	public String words(double other) {
		return (plain(other) + " " + this.unit.words()).strip();
	}

	private static String plain(double number) {
		return ((number == Math.rint(number)) ? String.valueOf((long) number) : NumberWords.fixed(number, 1))
			.replace('-', '\u2212');
	}

}
