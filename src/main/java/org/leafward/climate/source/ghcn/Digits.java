package org.leafward.climate.source.ghcn;

/** Whole numbers out of bytes, without making strings. */
final class Digits {

	/** Stands for bytes that are no number. */
	static final int NONE = Integer.MIN_VALUE;

	private static final int MOST = 9;

	private Digits() {
	}

	/**
	 * Reads a number with optional sign, and blanks before it.
	 * @param line bytes
	 * @param from first byte
	 * @param to byte after the last
	 * @return the number, or {@link #NONE}
	 */
	static int read(byte[] line, int from, int to) {
		int at = from;
		while (at < to && line[at] == ' ') {
			at++;
		}
		boolean minus = at < to && line[at] == '-';
		if (minus) {
			at++;
		}
		if (at == to || to - at > MOST) {
			return NONE;
		}
		int number = 0;
		for (; at < to; at++) {
			if (line[at] < '0' || line[at] > '9') {
				return NONE;
			}
			number = number * 10 + line[at] - '0';
		}
		return minus ? -number : number;
	}

	static boolean all(byte[] line, int from, int to) {
		for (int at = from; at < to; at++) {
			if (line[at] < '0' || line[at] > '9') {
				return false;
			}
		}
		return to > from;
	}

}
