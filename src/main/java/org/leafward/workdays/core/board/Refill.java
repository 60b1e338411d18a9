package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * Fills teams with what is nowhere, site by site: the site that brings most goes first,
 * its tasks by what they earn for a minute. What is there already stays.
 */
public final class Refill {

	private final Standing standing;

	private final Board board;

	/** Tasks by slot and site, the ones that earn most for a minute first. */
	private final int[][][] tasks;

	/** By site: at most so much is gained there; 0 when it was looked at. */
	private final long[] most;

	/**
	 * Prepares filling, as often as one likes.
	 * @param standing the board, with whatever is placed on it now and later
	 */
	public Refill(Standing standing) {
		this.standing = standing;
		this.board = standing.board();
		int sites = this.board.problem().sites().size();
		this.most = new long[sites];
		List<List<List<Integer>>> lists = new ArrayList<>();
		for (int slot = 0; slot < this.board.slots().size(); slot++) {
			List<List<Integer>> here = new ArrayList<>();
			for (int site = 0; site < sites; site++) {
				here.add(new ArrayList<>());
			}
			lists.add(here);
		}
		for (int task : order(this.board)) {
			for (int slot : this.board.admission(task).slots()) {
				lists.get(slot).get(this.board.siteOf(task)).add(task);
			}
		}
		this.tasks = lists.stream()
			.map((here) -> here.stream()
				.map((some) -> some.stream().mapToInt(Integer::intValue).toArray())
				.toArray(int[][]::new))
			.toArray(int[][][]::new);
	}

	/**
	 * Tasks that some slot admits, those that earn most for a minute first.
	 * @param board the board
	 * @return numbers of tasks
	 */
	static int[] order(Board board) {
		List<Integer> all = new ArrayList<>();
		for (int task = 0; task < board.tasks(); task++) {
			if (board.admission(task).slots().length > 0) {
				all.add(task);
			}
		}
		all.sort(Comparator
			.comparingDouble((Integer task) -> -(double) board.value(task) / board.task(task).personMinutes())
			.thenComparing(Comparator.naturalOrder()));
		return all.stream().mapToInt(Integer::intValue).toArray();
	}

	/**
	 * Fills what is free on a date.
	 * @param date number of the date, called or not
	 * @param noise by what the gain of each site is multiplied, so that a search tries
	 * other sites as well; always 1 for the greedy choice
	 */
	public void date(int date, DoubleSupplier noise) {
		for (Slot slot : this.board.slotsOn(date)) {
			slot(slot.number(), noise);
		}
	}

	/**
	 * Fills what is free in a slot.
	 * @param slot number of the slot
	 * @param noise as for a date
	 */
	public void slot(int slot, DoubleSupplier noise) {
		int sites = this.tasks[slot].length;
		double[] noises = new double[sites];
		boolean more = true;
		while (more) {
			long before = this.standing.points();
			boolean empty = this.standing.stopCount(slot) == 0;
			// A team that goes out is paid for by all of its sites, a date by all of its
			// teams; whether they are worth it is seen when they are full.
			long ahead = empty ? this.board.problem().rules().costs().team()
					+ this.board.dateCost(this.board.slots().get(slot).date()) : 0;
			// On a date that is called already that is more than it takes, so that a
			// further team is tried rather too often than too seldom: plans are better.
			long extra = empty ? this.board.dateCost(this.board.slots().get(slot).date()) - this.standing.toCall(slot)
					: 0;
			for (int site = 0; site < sites; site++) {
				long most = most(slot, site);
				this.most[site] = (most > 0) ? most + extra : 0;
				noises[site] = (this.most[site] > 0) ? noise.getAsDouble() : 0;
			}
			double most = 0;
			int best = -1;
			int next = next(noises, most);
			while (next >= 0) {
				int[] put = site(slot, next);
				long gain = this.standing.points() - before + ahead;
				if (put.length > 0 && gain > 0 && gain * noises[next] > most) {
					most = gain * noises[next];
					best = next;
				}
				for (int task : put) {
					this.standing.put(task, -1);
				}
				this.most[next] = 0;
				next = next(noises, most);
			}
			more = best >= 0 && site(slot, best).length > 0;
		}
	}

	/**
	 * What a site brings if all that is nowhere fits and the way is free; nothing where
	 * the team would go to too many sites.
	 */
	private long most(int slot, int site) {
		if (this.standing.stopCount(slot) >= this.board.problem().rules().mostSites()
				&& !this.standing.isAt(slot, site)) {
			return 0;
		}
		long sum = 0;
		for (int task : this.tasks[slot][site]) {
			if (this.standing.slotOf(task) < 0) {
				sum += this.board.value(task) + this.board.moved(task, -1) - this.board.moved(task, slot);
			}
		}
		return sum;
	}

	/** The site that may bring most; -1 when none may bring more than is known. */
	private int next(double[] noises, double known) {
		int best = -1;
		double most = known;
		for (int site = 0; site < noises.length; site++) {
			if (this.most[site] * noises[site] > most) {
				most = this.most[site] * noises[site];
				best = site;
			}
		}
		return best;
	}

	private int[] site(int slot, int site) {
		int[] here = this.tasks[slot][site];
		int[] put = new int[here.length];
		int count = 0;
		long over = this.standing.overload();
		for (int task : here) {
			if (this.standing.slotOf(task) < 0) {
				this.standing.put(task, slot);
				if (this.standing.overload() > over) {
					this.standing.put(task, -1);
				}
				else {
					put[count++] = task;
				}
			}
		}
		return Arrays.copyOf(put, count);
	}

	/** Puts each task that is nowhere where it gains most, if it gains. */
	public void fit() {
		for (int task : order(this.board)) {
			best(task, true);
		}
	}

	/**
	 * Puts tasks that are nowhere to teams that are at their site anyway.
	 * @param loose numbers of tasks, in the order in which they are tried
	 */
	public void join(Iterable<Integer> loose) {
		for (int task : loose) {
			best(task, false);
		}
	}

	private void best(int task, boolean anywhere) {
		if (this.standing.slotOf(task) >= 0) {
			return;
		}
		int best = -1;
		long most = this.standing.points();
		long over = this.standing.overload();
		for (int slot : this.board.admission(task).slots()) {
			if (anywhere || this.standing.isAt(slot, this.board.siteOf(task))) {
				this.standing.put(task, slot);
				if (this.standing.overload() <= over && this.standing.points() > most) {
					most = this.standing.points();
					best = slot;
				}
				this.standing.put(task, -1);
			}
		}
		this.standing.put(task, best);
	}

}
