package org.leafward.care.core.plan;

import java.time.LocalDate;

/**
 * Numbers that stand for what an explanation says, so that a change is seen without
 * putting it into words. Two explanations of equal numbers are taken for the same; one in
 * 2^64 would be wrong, and only in its words.
 */
final class Basis {

	private Basis() {
	}

	static long mix(long basis, long value) {
		long mixed = (basis ^ value) * 0x9E3779B97F4A7C15L;
		return mixed ^ (mixed >>> 29);
	}

	static long mix(long basis, LocalDate day) {
		return mix(basis, day.toEpochDay());
	}

}
