package org.leafward.pages;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts things that want a stretch of the width below each other where they would touch,
 * and knows how wide words are. Stretches are percent of the width.
 */
final class Lanes {

	/**
	 * The narrowest picture, px: a phone of 390 px less its margins. What fits there fits
	 * everywhere.
	 */
	static final double NARROWEST = 350;

	/**
	 * Width of a letter at 12.5 px, px. Noto Serif, one of the wider faces, was measured
	 * at 6.0 over "water until the ground freezes"; the rest is air.
	 */
	private static final double LETTER = 6.7;

	private final List<List<double[]>> lanes = new ArrayList<>();

	/** The share of the narrowest picture that some words take, percent. */
	static double width(String words) {
		return width(words, NARROWEST);
	}

	/** The share that some words take of a picture so many px wide, percent. */
	static double width(String words, double picture) {
		return 100 * (words.length() * LETTER + 6) / picture;
	}

	/**
	 * Finds room for a stretch.
	 * @param start percent
	 * @param end percent
	 * @return number of the lane, from 0
	 */
	int place(double start, double end) {
		for (int lane = 0; lane < this.lanes.size(); lane++) {
			if (this.lanes.get(lane).stream().allMatch((taken) -> end <= taken[0] || start >= taken[1])) {
				this.lanes.get(lane).add(new double[] { start, end });
				return lane;
			}
		}
		this.lanes.add(new ArrayList<>(List.of(new double[] { start, end })));
		return this.lanes.size() - 1;
	}

	/** Takes a stretch of a lane. */
	void take(int lane, double start, double end) {
		this.lanes.get(lane).add(new double[] { start, end });
	}

	/** How far to the right of a place its lane is free, percent. */
	double roomAfter(int lane, double place) {
		return this.lanes.get(lane)
			.stream()
			.mapToDouble((taken) -> taken[0])
			.filter((start) -> start >= place)
			.min()
			.orElse(100) - place;
	}

	/** How far to the left of a place its lane is free, percent. */
	double roomBefore(int lane, double place) {
		return place - this.lanes.get(lane)
			.stream()
			.mapToDouble((taken) -> taken[1])
			.filter((end) -> end <= place)
			.max()
			.orElse(0);
	}

	int count() {
		return this.lanes.size();
	}

}
