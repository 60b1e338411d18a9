package org.leafward.care.core.diff;

import java.util.ArrayList;
import java.util.List;

/**
 * The difference between two texts, line by line: the longest common subsequence of lines
 * stays, the others go or come.
 */
public final class LineDiff {

	/** Lines that are shown around a change. */
	private static final int AROUND = 3;

	/**
	 * Beyond so many pairs of lines everything between the first and last change is
	 * replaced.
	 */
	private static final long MOST_PAIRS = 4_000_000;

	private LineDiff() {
	}

	/** What became of a line. */
	public enum Change {

		/** It stays. */
		SAME,

		/** It goes. */
		GONE,

		/** It comes. */
		NEW,

		/** Lines that stay are left out here. */
		LEFT_OUT

	}

	/**
	 * A line.
	 *
	 * @param change what became of it
	 * @param text the line without its end
	 */
	public record Line(Change change, String text) {
	}

	/**
	 * Compares.
	 * @param before the old text
	 * @param after the new text
	 * @return the lines that differ with three lines around them; empty when none differ
	 */
	public static List<Line> between(String before, String after) {
		List<String> old = before.lines().toList();
		List<String> young = after.lines().toList();
		return old.equals(young) ? List.of() : around(all(old, young));
	}

	private static List<Line> all(List<String> old, List<String> young) {
		int head = 0;
		while (head < Math.min(old.size(), young.size()) && old.get(head).equals(young.get(head))) {
			head++;
		}
		int tail = 0;
		while (tail < Math.min(old.size(), young.size()) - head
				&& old.get(old.size() - 1 - tail).equals(young.get(young.size() - 1 - tail))) {
			tail++;
		}
		List<Line> lines = new ArrayList<>();
		old.subList(0, head).forEach((line) -> lines.add(new Line(Change.SAME, line)));
		middle(old.subList(head, old.size() - tail), young.subList(head, young.size() - tail), lines);
		old.subList(old.size() - tail, old.size()).forEach((line) -> lines.add(new Line(Change.SAME, line)));
		return lines;
	}

	private static void middle(List<String> old, List<String> young, List<Line> lines) {
		int[][] common = ((long) old.size() * young.size() <= MOST_PAIRS) ? common(old, young) : new int[0][];
		int i = 0;
		int j = 0;
		while (i < old.size() || j < young.size()) {
			if (common.length > 0 && i < old.size() && j < young.size() && old.get(i).equals(young.get(j))) {
				lines.add(new Line(Change.SAME, old.get(i++)));
				j++;
			}
			else if (i < old.size()
					&& (common.length == 0 || j == young.size() || common[i + 1][j] >= common[i][j + 1])) {
				lines.add(new Line(Change.GONE, old.get(i++)));
			}
			else {
				lines.add(new Line(Change.NEW, young.get(j++)));
			}
		}
	}

	/** Length of the longest common subsequence of what is left from each pair on. */
	private static int[][] common(List<String> old, List<String> young) {
		int[][] length = new int[old.size() + 1][young.size() + 1];
		for (int i = old.size() - 1; i >= 0; i--) {
			for (int j = young.size() - 1; j >= 0; j--) {
				length[i][j] = old.get(i).equals(young.get(j)) ? length[i + 1][j + 1] + 1
						: Math.max(length[i + 1][j], length[i][j + 1]);
			}
		}
		return length;
	}

	private static List<Line> around(List<Line> all) {
		boolean[] shown = new boolean[all.size()];
		for (int i = 0; i < all.size(); i++) {
			if (all.get(i).change() != Change.SAME) {
				for (int j = Math.max(0, i - AROUND); j <= Math.min(all.size() - 1, i + AROUND); j++) {
					shown[j] = true;
				}
			}
		}
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < all.size(); i++) {
			if (shown[i]) {
				lines.add(all.get(i));
			}
			else if (i == 0 || shown[i - 1]) {
				lines.add(new Line(Change.LEFT_OUT, "…"));
			}
		}
		return lines;
	}

}
