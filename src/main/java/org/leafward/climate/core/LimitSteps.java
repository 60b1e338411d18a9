package org.leafward.climate.core;

import java.util.Arrays;

/**
 * The dates of an event in each season of a period, for every limit at once: as the limit
 * rises, a season's date stays for a while and then jumps. Only the jumps are kept, a
 * dozen or two for a season, so that a place at any height is answered without the daily
 * record. Never changes.
 */
final class LimitSteps {

	/** Stands for a season that was seen without the event. */
	private static final short NONE = Short.MIN_VALUE;

	private final short[] starts;

	private final short[] days;

	private final int[] ends;

	private final boolean[] leftOut;

	private final Window window;

	private LimitSteps(Window window, short[] starts, short[] days, int[] ends, boolean[] leftOut) {
		this.window = window;
		this.starts = starts;
		this.days = days;
		this.ends = ends;
		this.leftOut = leftOut;
	}

	Window window() {
		return this.window;
	}

	/** About how much memory they take. */
	long bytes() {
		return 200 + 4L * this.starts.length + 5L * this.ends.length;
	}

	/**
	 * Limits that are kept, both ends included. Few of those that a record could answer
	 * are ever asked for.
	 *
	 * @param low lowest limit
	 * @param high highest limit
	 */
	record Window(int low, int high) {

		static final Window ALL = new Window(Short.MIN_VALUE, Short.MAX_VALUE);

		boolean has(int limit) {
			return limit >= this.low && limit <= this.high;
		}

		Window with(Window other) {
			return new Window(Math.min(this.low, other.low), Math.max(this.high, other.high));
		}

	}

	/**
	 * The sample for a limit.
	 * @param limit in the unit of the steps, inside the window
	 * @return dates in days as {@link org.leafward.measure.SeasonDay} counts them
	 */
	Sample at(int limit) {
		double[] dates = new double[this.ends.length];
		int dated = 0;
		int out = 0;
		int begin = 0;
		for (int season = 0; season < this.ends.length; season++) {
			int step = lastAtOrBelow(limit, begin, this.ends[season]);
			if (step < begin) {
				out += this.leftOut[season] ? 1 : 0;
			}
			else if (this.days[step] != NONE) {
				dates[dated++] = this.days[step];
			}
			begin = this.ends[season];
		}
		return new Sample(Arrays.copyOf(dates, dated), this.ends.length - dated - out, out);
	}

	private int lastAtOrBelow(int limit, int begin, int end) {
		int low = begin;
		int high = end;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (this.starts[middle] <= limit) {
				low = middle + 1;
			}
			else {
				high = middle;
			}
		}
		return low - 1;
	}

	/** Collects the seasons in order. Not for use by several threads. */
	static final class Builder {

		private short[] starts = new short[256];

		private short[] days = new short[256];

		private int size;

		private final int[] ends;

		private final boolean[] leftOut;

		private final Window window;

		private int season;

		private int begin;

		/**
		 * Begins.
		 * @param seasons how many will come
		 * @param window limits to keep
		 */
		Builder(int seasons, Window window) {
			this.window = window;
			this.ends = new int[seasons];
			this.leftOut = new boolean[seasons];
		}

		/**
		 * Adds a step to the season.
		 * @param limit from which the date holds, up to the next step; higher than the
		 * one before
		 * @param day as {@link org.leafward.measure.SeasonDay} counts
		 */
		void step(int limit, int day) {
			if (limit > this.window.high) {
				return;
			}
			if (limit <= this.window.low) {
				// Holds at the lower end, so those before it don't.
				this.size = this.begin;
			}
			if (this.size == this.starts.length) {
				this.starts = Arrays.copyOf(this.starts, 2 * this.size);
				this.days = Arrays.copyOf(this.days, 2 * this.size);
			}
			this.starts[this.size] = narrow(limit);
			this.days[this.size++] = narrow(day);
		}

		/**
		 * Adds a step from which on the event doesn't come.
		 * @param limit as in {@link #step}
		 */
		void stepWithout(int limit) {
			step(limit, NONE);
		}

		/**
		 * Ends the season.
		 * @param untold whether days are missing, so that nothing can be told for limits
		 * below the lowest step; else the event didn't come there
		 */
		void endSeason(boolean untold) {
			this.ends[this.season] = this.size;
			this.begin = this.size;
			this.leftOut[this.season++] = untold;
		}

		LimitSteps build() {
			return new LimitSteps(this.window, Arrays.copyOf(this.starts, this.size),
					Arrays.copyOf(this.days, this.size), this.ends, this.leftOut);
		}

		private static short narrow(int value) {
			short narrow = (short) value;
			if (narrow != value) {
				throw new IllegalArgumentException("%d is out of range".formatted(value));
			}
			return narrow;
		}

	}

}
