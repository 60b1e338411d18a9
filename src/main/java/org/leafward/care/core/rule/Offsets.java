package org.leafward.care.core.rule;

/** Words for a number of days before or after something. */
final class Offsets {

	private Offsets() {
	}

	static String words(int days, String event) {
		if (days == 0) {
			return "on " + event;
		}
		int count = Math.abs(days);
		return count + ((count == 1) ? " day " : " days ") + ((days < 0) ? "before " : "after ") + event;
	}

}
