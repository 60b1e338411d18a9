package org.leafward.care.core.rule;

/**
 * The day on which a kept soil test was sampled, when it asks for something. Where the
 * latest test of a bed doesn't, or there is none, there is no task.
 *
 * @param finding what it asks for
 * @param lastPart whether the day is that of the last part of the gypsum, half a year
 * after each part before
 * @param days days after it
 */
public record SoilTestAnchor(SoilFinding finding, boolean lastPart, Days days) implements Anchor {

	/** Days between two parts of the gypsum. */
	public static final int HALF_YEAR = 182;

	@Override
	public String words() {
		return this.days
			.words((this.lastPart ? "the last part, half a year after each before, of what is due from " : "")
					+ "the day of a soil test that asks for " + this.finding.words());
	}

	@Override
	public String movable() {
		return "soil test";
	}

}
