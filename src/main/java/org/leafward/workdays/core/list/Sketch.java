package org.leafward.workdays.core.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A site in eight by six squares, seen from the entrance at the lower edge: which things
 * stand in which square.
 *
 * @param numbers numbers of the things by square; squares count by rows from the upper
 * left corner, from 0
 */
public record Sketch(Map<Integer, List<Integer>> numbers) {

	/** Squares from left to right. */
	public static final int COLUMNS = 8;

	/** Squares from top to bottom. */
	public static final int ROWS = 6;

	public Sketch {
		numbers = Map.copyOf(numbers);
	}

	/**
	 * The name of a square: its column as a letter, its row as a number, from the upper
	 * left corner.
	 * @param square 0 to 47
	 * @return for example "C4"
	 */
	public static String name(int square) {
		return "" + (char) ('A' + square % COLUMNS) + (square / COLUMNS + 1);
	}

	/**
	 * The rows from top to bottom.
	 * @return for each square the numbers in it, in words; empty where nothing stands
	 */
	public List<List<String>> rows() {
		List<List<String>> rows = new ArrayList<>();
		for (int row = 0; row < ROWS; row++) {
			List<String> squares = new ArrayList<>();
			for (int column = 0; column < COLUMNS; column++) {
				squares.add(words(this.numbers.getOrDefault(row * COLUMNS + column, List.of())));
			}
			rows.add(squares);
		}
		return rows;
	}

	/** Three in a row and more are said as from–to. */
	private static String words(List<Integer> numbers) {
		StringBuilder words = new StringBuilder();
		int at = 0;
		while (at < numbers.size()) {
			int end = at;
			while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
				end++;
			}
			words.append((at > 0) ? ", " : "").append(numbers.get(at));
			if (end - at >= 2) {
				words.append("–").append(numbers.get(end));
				at = end + 1;
			}
			else {
				at++;
			}
		}
		return words.toString();
	}

}
