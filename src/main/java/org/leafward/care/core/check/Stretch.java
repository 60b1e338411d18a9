package org.leafward.care.core.check;

/**
 * Days of a season, both ends included.
 *
 * @param from first day, 1 for 1 January
 * @param to last day; before {@code from} when there is none
 */
record Stretch(int from, int to) {

	int days() {
		return Math.max(0, this.to - this.from + 1);
	}

	Stretch shifted(int by) {
		return new Stretch(this.from + by, this.to + by);
	}

	int shared(Stretch other) {
		return new Stretch(Math.max(this.from, other.from), Math.min(this.to, other.to)).days();
	}

	/** The longer side that is left outside the other. */
	Stretch without(Stretch other) {
		if (shared(other) == 0) {
			return this;
		}
		Stretch before = new Stretch(this.from, other.from - 1);
		Stretch after = new Stretch(other.to + 1, this.to);
		return (before.days() >= after.days()) ? before : after;
	}

}
