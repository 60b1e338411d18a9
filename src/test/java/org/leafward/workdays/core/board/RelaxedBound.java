package org.leafward.workdays.core.board;

import java.util.Comparator;
import java.util.PriorityQueue;
import org.leafward.workdays.core.board.OutingPrices.Mix;
import org.leafward.workdays.core.board.Relaxation.Prices;

/**
 * A bound that no plan can exceed: {@link Relaxation} at prices that make it small. They
 * are found by column generation: teams say what they would do at some prices, and the
 * best mix of all that was said has new ones.
 */
public final class RelaxedBound {

	/**
	 * Part of the best prices so far in those that are tried next: those of a mix jump
	 * about (Wentges, 1997, by memory).
	 */
	private static final double CALM = 0.8;

	/** A date that is called less in parts than this is called or not. */
	private static final double PART = 0.01;

	/**
	 * A bound that is so near to the best mix, of its points, can't be made much smaller.
	 */
	private static final double NEAR = 0.0003;

	private final Board board;

	private final Relaxation relaxation;

	private final OutingPrices outings;

	private final double goal;

	private final int rounds;

	private RelaxedBound(Board board, Relaxation relaxation, OutingPrices outings, double goal, int rounds) {
		this.board = board;
		this.relaxation = relaxation;
		this.outings = outings;
		this.goal = goal;
		this.rounds = rounds;
	}

	/**
	 * The smallest bound that is found: one for all dates, and then, as long as a date is
	 * called in parts, two more for the one that is nearest to a half, with and without
	 * it, and so on. A plan either calls a date or doesn't, so the larger of both bounds
	 * is one.
	 * @param board the problem
	 * @param pinsKept whether only such plans are of interest that keep each pin that is
	 * possible
	 * @param goal a bound that is small enough
	 * @param rounds how often prices are asked for a combination of dates, 1 and up
	 * @param leaves how many combinations of dates, 1 and up
	 * @return points that no plan exceeds
	 */
	public static double of(Board board, boolean pinsKept, double goal, int rounds, int leaves) {
		Relaxation relaxation = new Relaxation(board, pinsKept);
		try (OutingPrices outings = new OutingPrices(board, relaxation)) {
			return new RelaxedBound(board, relaxation, outings, goal, rounds).smallest(leaves);
		}
	}

	private double smallest(int leaves) {
		PriorityQueue<Leaf> open = new PriorityQueue<>(Comparator.comparingDouble((Leaf leaf) -> -leaf.bound()));
		open.add(leaf(this.relaxation.fixed(), this.relaxation.prices(), Double.POSITIVE_INFINITY));
		int made = 1;
		while (made < leaves && open.element().bound() > this.goal) {
			Leaf worst = open.element();
			int date = inParts(worst.called());
			if (date < 0) {
				break;
			}
			open.remove();
			for (int side : new int[] { 1, -1 }) {
				int[] fixed = worst.fixed().clone();
				fixed[date] = side;
				if (possible(fixed)) {
					open.add(leaf(fixed, worst.prices(), worst.bound()));
					made++;
				}
			}
		}
		return open.element().bound();
	}

	/** A combination of dates with its bound, and the prices that prove it. */
	private record Leaf(int[] fixed, double bound, Prices prices, double[] called) {
	}

	private boolean possible(int[] fixed) {
		int called = 0;
		for (int one : fixed) {
			called += (one > 0) ? 1 : 0;
		}
		return called <= this.board.mostDates();
	}

	private static int inParts(double[] called) {
		int half = -1;
		for (int date = 0; date < called.length; date++) {
			half = (Math.abs(called[date] - 0.5) < 0.5 - PART
					&& (half < 0 || Math.abs(called[date] - 0.5) < Math.abs(called[half] - 0.5))) ? date : half;
		}
		return half;
	}

	private Leaf leaf(int[] fixed, Prices start, double parent) {
		double best = Double.POSITIVE_INFINITY;
		Prices found = start;
		Prices next = start;
		double[] called = new double[fixed.length];
		for (int round = 0; round < this.rounds; round++) {
			double now = this.relaxation.at(next, fixed);
			boolean news = false;
			if (now < best) {
				best = now;
				found = this.relaxation.prices();
			}
			for (Slot slot : this.board.slots()) {
				news |= fixed[slot.date()] >= 0 && this.outings.add(this.relaxation.outing(slot));
			}
			Mix mix = this.outings.best(fixed).orElse(null);
			if (mix == null) {
				break;
			}
			called = mix.called();
			if (best <= this.goal || best - mix.points() < NEAR * best) {
				break;
			}
			next = between(news ? CALM : 0, found, mix.prices());
		}
		return new Leaf(fixed, Math.min(best, parent), found, called);
	}

	private static Prices between(double part, Prices best, Prices mix) {
		return new Prices(between(part, best.tasks(), mix.tasks()), between(part, best.minutes(), mix.minutes()),
				between(part, best.tools(), mix.tools()));
	}

	private static double[][] between(double part, double[][] best, double[][] mix) {
		double[][] between = new double[best.length][];
		for (int i = 0; i < between.length; i++) {
			between[i] = between(part, best[i], mix[i]);
		}
		return between;
	}

	private static double[] between(double part, double[] best, double[] mix) {
		double[] between = new double[best.length];
		for (int i = 0; i < between.length; i++) {
			between[i] = part * best[i] + (1 - part) * mix[i];
		}
		return between;
	}

}
