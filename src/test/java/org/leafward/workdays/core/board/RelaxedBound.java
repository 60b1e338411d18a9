package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * A bound that no plan can exceed, by Lagrangian relaxation; nothing of the search is
 * used. It reads the numbers of a board (who may go where, who can share which work,
 * minutes between sites) and never the worth that a {@code Standing} keeps.
 * <p>
 * <b>Why it is a bound.</b> Let x be a plan that can be carried out; x(j,t) is 1 when
 * task j is done by team t. Write w(j,t) for what j earns with t more than nowhere, S(t)
 * for the sites of t, p(S) for the minutes of the shortest way through S, e(j) for
 * effort. The plan earns, beyond a constant, <pre>
 *   sum over j,t of w(j,t) x(j,t) - sum over t that go out of (team + way * p(S(t))) - sum over called dates of date
 * </pre> For any u(j) &gt;= 0 it holds that sum over t of x(j,t) &lt;= 1, so adding sum
 * over j of u(j) (1 - sum over t of x(j,t)) &gt;= 0 makes the value no smaller. For any
 * l(t,h) &gt;= 0 and each set h of kinds that n(t,h) people of team t share, what they do
 * fits into their minutes: sum over j of h of e(j) x(j,t) &lt;= n(t,h) (minutes(t) -
 * p(S(t))). Adding l(t,h) times the right side less the left makes the value of a team
 * that goes out no smaller either. What is left falls apart by team: with r(j,t) = w(j,t)
 * - u(j) - e(j) * sum of l(t,h) over h with the kind of j, a team earns at most <pre>
 *   V(t) = sum over h of l n minutes + max over S with at most m sites of
 *          (sum over j at sites of S of max(0, r(j,t)) - p(S) (way + sum over h of l n))
 * </pre> where j ranges over the tasks that t admits. Tools, pins and that teams of a day
 * share them are left out, which only lets more plans in. So with D(d) = sum over teams t
 * of d of max(0, V(t) - team), the plan earns at most sum of u plus the sum of max(0,
 * D(d) - date(d)) over those dates for which that is largest, as many as may be called
 * (locked dates cost nothing and are always among them). Whatever u and l are, this is a
 * bound; the descent below only looks for small ones.
 */
public final class RelaxedBound {

	/**
	 * Steps with parts of tasks before whole ones are packed; more of them lead astray.
	 */
	private static final int ROUGH = 3;

	private final Board board;

	private final int tasks;

	private final int sites;

	private final int[][] at;

	private final boolean[][] admits;

	private final double[] u;

	private final double[][] l;

	private final double[] stepU;

	private final double[][] stepL;

	private final int mostSites;

	private final double base;

	private final int unit;

	private boolean whole;

	/** By date: 1 when it is called for sure, -1 when it is not, 0 when that is open. */
	private int[] fixed;

	/** Tasks that are placed for sure, so that their u may have any sign. */
	private final boolean[] sure;

	/** What each date brought the last time. */
	private double[] lastGains = new double[0];

	/** What the last knapsack took. */
	private List<Integer> taken = List.of();

	private RelaxedBound(Board board, boolean pinsKept) {
		this.board = board;
		this.tasks = board.tasks();
		this.sites = board.problem().sites().size();
		this.at = new int[this.sites][];
		this.admits = new boolean[board.slots().size()][this.tasks];
		for (int site = 0; site < this.sites; site++) {
			int here = site;
			this.at[site] = IntStream.range(0, this.tasks).filter((task) -> board.siteOf(task) == here).toArray();
		}
		this.sure = new boolean[this.tasks];
		this.fixed = new int[board.dates()];
		for (int date = 0; date < this.fixed.length; date++) {
			this.fixed[date] = board.date(date).locked() ? 1 : 0;
		}
		double constant = 0;
		for (int task = 0; task < this.tasks; task++) {
			constant -= board.moved(task, -1);
			for (int slot : board.admission(task).slots()) {
				this.admits[slot][task] = true;
			}
			this.sure[task] = pinsKept && board.task(task).pinned() != null && board.admission(task).slots().length > 0;
			if (this.sure[task]) {
				this.fixed[board.slots().get(board.admission(task).slots()[0]).date()] = 1;
			}
		}
		this.base = constant;
		this.u = new double[this.tasks];
		this.stepU = new double[this.tasks];
		this.l = new double[board.slots().size()][];
		this.stepL = new double[board.slots().size()][];
		for (Slot slot : board.slots()) {
			this.l[slot.number()] = new double[slot.shared().kinds().length];
			this.stepL[slot.number()] = new double[slot.shared().kinds().length];
		}
		this.unit = IntStream.range(0, this.tasks)
			.map((task) -> board.task(task).personMinutes())
			.reduce(0, RelaxedBound::divisor);
		this.mostSites = board.problem().rules().mostSites();
		if (this.mostSites > 3) {
			throw new IllegalArgumentException("bounds are for three sites a day at most");
		}
		start();
	}

	/**
	 * The smallest bound that is found: a descent, and then, while that helps, two more
	 * for the date about which it matters most, one with and one without it, and so on. A
	 * plan either calls a date or doesn't, so the larger of both bounds is one.
	 * @param board the problem
	 * @param target points of a plan that is known, which sets how far the descent steps
	 * @param pinsKept whether that plan keeps each pin that is possible, so that only
	 * such plans are better
	 * @param rounds steps of the first descent
	 * @param leaves how many bounds for combinations of dates, 1 and up
	 * @return points that no plan exceeds
	 */
	public static double of(Board board, double target, boolean pinsKept, int rounds, int leaves) {
		RelaxedBound bound = new RelaxedBound(board, pinsKept);
		bound.descend(target, ROUGH);
		bound.whole = true;
		PriorityQueue<Leaf> open = new PriorityQueue<>(Comparator.comparingDouble((Leaf leaf) -> -leaf.bound()));
		open.add(bound.leaf(bound.fixed, target, rounds, Double.POSITIVE_INFINITY));
		int made = 1;
		while (made < leaves && open.element().bound() > target + 0.5) {
			Leaf worst = open.remove();
			bound.take(worst);
			int date = bound.undecided();
			if (date < 0) {
				open.add(worst);
				break;
			}
			for (int side : new int[] { 1, -1 }) {
				int[] fixed = worst.fixed().clone();
				fixed[date] = side;
				bound.take(worst);
				open.add(bound.leaf(fixed, target, Math.max(15, rounds / 4), worst.bound()));
				made++;
			}
		}
		return open.element().bound();
	}

	/** A combination of dates with its bound and the multipliers that prove it. */
	private record Leaf(int[] fixed, double bound, double[] u, double[][] l, double[] gains) {
	}

	private Leaf leaf(int[] dates, double target, int rounds, double parent) {
		this.fixed = dates;
		double best = Math.min(parent, descend(target, rounds));
		evaluate();
		return new Leaf(dates, best, this.u.clone(), copy(this.l), this.lastGains);
	}

	private void take(Leaf leaf) {
		this.fixed = leaf.fixed();
		this.lastGains = leaf.gains();
		System.arraycopy(leaf.u(), 0, this.u, 0, this.u.length);
		for (int i = 0; i < this.l.length; i++) {
			System.arraycopy(leaf.l()[i], 0, this.l[i], 0, this.l[i].length);
		}
	}

	/**
	 * The open date that is nearest to being called or not: its gain is nearest to
	 * nothing, or to that of the last date that may still be called.
	 */
	private int undecided() {
		int left = this.board.mostDates();
		List<Double> gains = new ArrayList<>();
		for (int date = 0; date < this.fixed.length; date++) {
			left -= (this.fixed[date] > 0) ? 1 : 0;
			if (this.fixed[date] == 0) {
				gains.add(this.lastGains[date]);
			}
		}
		gains.sort(Comparator.reverseOrder());
		double edge = (left > 0 && left < gains.size()) ? Math.max(0, (gains.get(left - 1) + gains.get(left)) / 2) : 0;
		int best = -1;
		for (int date = 0; date < this.fixed.length; date++) {
			best = (this.fixed[date] == 0 && !this.board.slotsOn(date).isEmpty()
					&& (best < 0 || Math.abs(this.lastGains[date] - edge) < Math.abs(this.lastGains[best] - edge)))
							? date : best;
		}
		return best;
	}

	private static int divisor(int a, int b) {
		return (b == 0) ? a : divisor(b, a % b);
	}

	private double descend(double target, int rounds) {
		RelaxedBound bound = this;
		double best = Double.POSITIVE_INFINITY;
		double[] bestU = bound.u.clone();
		double[][] bestL = copy(bound.l);
		double pace = 1;
		int stuck = 0;
		for (int round = 0; round < rounds; round++) {
			double now = bound.evaluate();
			if (now < best - 1e-6) {
				stuck = (now < best - 1e-5 * Math.abs(best)) ? 0 : stuck + 1;
				best = now;
				bestU = bound.u.clone();
				bestL = copy(bound.l);
			}
			else {
				stuck++;
			}
			if (stuck > (this.whole ? 4 : 20)) {
				pace *= 0.6;
				stuck = 0;
				System.arraycopy(bestU, 0, bound.u, 0, bestU.length);
				for (int i = 0; i < bestL.length; i++) {
					System.arraycopy(bestL[i], 0, bound.l[i], 0, bestL[i].length);
				}
				bound.evaluate();
				now = best;
			}
			bound.step(pace, now - target);
		}
		System.arraycopy(bestU, 0, bound.u, 0, bestU.length);
		for (int i = 0; i < bestL.length; i++) {
			System.arraycopy(bestL[i], 0, bound.l[i], 0, bestL[i].length);
		}
		return best;
	}

	private static double[][] copy(double[][] of) {
		return Arrays.stream(of).map(double[]::clone).toArray(double[][]::new);
	}

	/** Minutes at the mean price, tasks at a third of what they earn. */
	private void start() {
		double value = 0;
		double effort = 0;
		for (int task = 0; task < this.tasks; task++) {
			value += this.board.value(task);
			effort += this.board.task(task).personMinutes();
		}
		for (Slot slot : this.board.slots()) {
			for (int h = 0; h < this.l[slot.number()].length; h++) {
				boolean all = slot.shared().people()[h] == slot.people();
				this.l[slot.number()][h] = all ? 0.4 * value / Math.max(1, effort) : 0;
			}
		}
		for (int task = 0; task < this.tasks; task++) {
			this.u[task] = 0.3 * this.board.value(task);
		}
	}

	/** The bound at these multipliers, and its subgradient. */
	private double evaluate() {
		Arrays.fill(this.stepU, 1);
		double sum = this.base;
		for (double one : this.u) {
			sum += one;
		}
		double[] gains = new double[this.board.dates()];
		double[] values = new double[this.board.slots().size()];
		int[][] chosen = new int[values.length][];
		for (int date = 0; date < gains.length; date++) {
			for (Slot slot : this.board.slotsOn(date)) {
				values[slot.number()] = team(slot, chosen) - this.board.problem().rules().costs().team();
				gains[date] += Math.max(0, values[slot.number()]);
			}
			gains[date] -= this.board.dateCost(date);
		}
		this.lastGains = gains;
		boolean[] called = called(gains);
		for (int date = 0; date < gains.length; date++) {
			sum += called[date] ? gains[date] : 0;
			for (Slot slot : this.board.slotsOn(date)) {
				Arrays.fill(this.stepL[slot.number()], 0);
				if (called[date] && values[slot.number()] > 0) {
					subgradient(slot, chosen[slot.number()]);
				}
			}
		}
		return sum;
	}

	private boolean[] called(double[] gains) {
		boolean[] called = new boolean[gains.length];
		int left = this.board.mostDates();
		for (int date = 0; date < gains.length; date++) {
			called[date] = this.fixed[date] > 0;
			left -= called[date] ? 1 : 0;
		}
		while (left-- > 0) {
			int best = -1;
			for (int date = 0; date < gains.length; date++) {
				best = (!called[date] && this.fixed[date] == 0 && gains[date] > 0
						&& (best < 0 || gains[date] > gains[best])) ? date : best;
			}
			if (best < 0) {
				break;
			}
			called[best] = true;
		}
		return called;
	}

	private double price(Slot slot, int kind) {
		double price = 0;
		for (int h = 0; h < this.l[slot.number()].length; h++) {
			price += ((slot.shared().kinds()[h] >> kind & 1) != 0) ? this.l[slot.number()][h] : 0;
		}
		return price;
	}

	private double gain(Slot slot, int task, double[] prices) {
		if (!this.admits[slot.number()][task]) {
			return 0;
		}
		double gain = this.board.value(task) + this.board.moved(task, -1) - this.board.moved(task, slot.number());
		return Math.max(0,
				gain - this.u[task] - this.board.task(task).personMinutes() * prices[this.board.kindOf(task)]);
	}

	private double team(Slot slot, int[][] chosen) {
		double[] prices = new double[this.board.kinds()];
		for (int kind = 0; kind < prices.length; kind++) {
			prices[kind] = price(slot, kind);
		}
		double people = 0;
		for (int h = 0; h < this.l[slot.number()].length; h++) {
			people += this.l[slot.number()][h] * slot.shared().people()[h];
		}
		double[] gains = new double[this.sites];
		int[] order = new int[this.sites];
		int count = 0;
		for (int site = 0; site < this.sites; site++) {
			for (int task : this.at[site]) {
				gains[site] += gain(slot, task, prices);
			}
			if (gains[site] > 0) {
				order[count++] = site;
			}
		}
		double way = people + this.board.problem().rules().costs().travelMinute();
		double rough = people * slot.minutes() + sites(gains, order, count, way, slot.number(), chosen);
		return this.whole ? whole(slot, gains, order, count, prices, people, way, chosen) : rough;
	}

	/** The set of kinds that all share who can do anything. */
	private static int all(Slot slot) {
		int all = 0;
		for (int h = 1; h < slot.shared().people().length; h++) {
			all = (slot.shared().people()[h] > slot.shared().people()[all]) ? h : all;
		}
		return all;
	}

	/**
	 * The same without a price for the minutes that all share: what fits into them is
	 * worked out to the task. The prices tell which sites needn't be looked at.
	 */
	private double whole(Slot slot, double[] gains, int[] order, int count, double[] prices, double people, double way,
			int[][] chosen) {
		int all = all(slot);
		double common = this.l[slot.number()][all];
		double[] others = prices.clone();
		for (int kind = 0; kind < others.length; kind++) {
			others[kind] -= ((slot.shared().kinds()[all] >> kind & 1) != 0) ? common : 0;
		}
		double rest = people - common * slot.shared().people()[all];
		int[] few = chosen[slot.number()];
		double best = 0;
		if (few.length > 0) {
			best = knapsack(slot, few, others, rest, all);
		}
		int[] bestSites = (best > 0) ? few : new int[0];
		double constant = people * slot.minutes();
		for (int i = 0; i < count; i++) {
			for (int j = -1; j < ((this.mostSites > 1) ? i : 0); j++) {
				for (int k = -1; k < ((this.mostSites > 2) ? j : 0); k++) {
					int[] some = (j < 0) ? new int[] { order[i] }
							: (k < 0) ? new int[] { order[i], order[j] } : new int[] { order[i], order[j], order[k] };
					double most = constant - way * this.board.tours().minutes(some, some.length);
					for (int site : some) {
						most += gains[site];
					}
					if (most > best) {
						double now = knapsack(slot, some, others, rest, all);
						if (now > best) {
							best = now;
							bestSites = some;
						}
					}
				}
			}
		}
		chosen[slot.number()] = bestSites;
		return best;
	}

	private double knapsack(Slot slot, int[] some, double[] prices, double rest, int all) {
		int net = slot.minutes() - this.board.tours().minutes(some, some.length);
		if (net <= 0) {
			return 0;
		}
		double[] table = new double[slot.shared().people()[all] * net / this.unit + 1];
		this.taken = new ArrayList<>();
		List<boolean[]> took = new ArrayList<>();
		for (int site : some) {
			for (int task : this.at[site]) {
				double gain = gain(slot, task, prices);
				int size = this.board.task(task).personMinutes() / this.unit;
				if (gain > 0 && size < table.length) {
					boolean[] here = new boolean[table.length];
					for (int c = table.length - 1; c >= size; c--) {
						if (table[c - size] + gain > table[c]) {
							table[c] = table[c - size] + gain;
							here[c] = true;
						}
					}
					this.taken.add(task);
					took.add(here);
				}
			}
		}
		int left = table.length - 1;
		for (int i = took.size() - 1; i >= 0; i--) {
			if (took.get(i)[left]) {
				left -= this.board.task(this.taken.get(i)).personMinutes() / this.unit;
			}
			else {
				this.taken.remove(i);
			}
		}
		return rest * net + table[table.length - 1]
				- this.board.problem().rules().costs().travelMinute() * this.board.tours().minutes(some, some.length);
	}

	/** The best few sites together, by trying all of them. */
	private double sites(double[] gains, int[] order, int count, double way, int slot, int[][] chosen) {
		double best = 0;
		int[] few = new int[0];
		int[] trio = new int[3];
		double top = 0;
		for (int i = 0; i < count; i++) {
			top = Math.max(top, gains[order[i]]);
		}
		for (int i = 0; i < count; i++) {
			trio[0] = order[i];
			if (gains[trio[0]] > best) {
				best = gains[trio[0]];
				few = new int[] { trio[0] };
			}
			for (int j = 0; j < i && this.mostSites > 1; j++) {
				trio[1] = order[j];
				double pair = gains[trio[0]] + gains[trio[1]];
				double worth = pair - way * this.board.tours().between(trio[0], trio[1]);
				if (worth > best) {
					best = worth;
					few = new int[] { trio[0], trio[1] };
				}
				for (int k = 0; k < j && this.mostSites > 2 && pair + top > best; k++) {
					trio[2] = order[k];
					if (pair + gains[trio[2]] > best) {
						double three = pair + gains[trio[2]] - way * this.board.tours().minutes(trio, 3);
						if (three > best) {
							best = three;
							few = trio.clone();
						}
					}
				}
			}
		}
		chosen[slot] = few;
		return best;
	}

	private void subgradient(Slot slot, int[] few) {
		double[] prices = new double[this.board.kinds()];
		for (int kind = 0; kind < prices.length; kind++) {
			prices[kind] = price(slot, kind);
		}
		int net = slot.minutes() - this.board.tours().minutes(few, few.length);
		double[] slopes = this.stepL[slot.number()];
		for (int h = 0; h < slopes.length; h++) {
			slopes[h] = (double) slot.shared().people()[h] * net;
		}
		boolean[] takes = new boolean[this.tasks];
		if (this.whole && few.length > 0) {
			int all = all(slot);
			double common = this.l[slot.number()][all];
			double[] others = prices.clone();
			for (int kind = 0; kind < others.length; kind++) {
				others[kind] -= ((slot.shared().kinds()[all] >> kind & 1) != 0) ? common : 0;
			}
			knapsack(slot, few, others, 0, all);
			this.taken.forEach((task) -> takes[task] = true);
			slopes[all] = 0;
		}
		for (int site : few) {
			for (int task : this.at[site]) {
				if (this.whole ? takes[task] : gain(slot, task, prices) > 0) {
					this.stepU[task] -= 1;
					for (int h = 0; h < slopes.length; h++) {
						slopes[h] -= ((slot.shared().kinds()[h] >> this.board.kindOf(task) & 1) != 0)
								? this.board.task(task).personMinutes() : 0;
					}
				}
			}
		}
		if (this.whole && few.length > 0) {
			slopes[all(slot)] = 0;
		}
	}

	/** A step of Polyak's length, in units of points and of the minutes of a team. */
	private void step(double pace, double gap) {
		double scaleU = 100;
		double scaleL = 1;
		double norm = 0;
		for (int task = 0; task < this.tasks; task++) {
			norm += sq(this.stepU[task] * scaleU);
		}
		for (Slot slot : this.board.slots()) {
			for (double one : this.stepL[slot.number()]) {
				norm += sq(one * scaleL * perTeam(slot));
			}
		}
		double length = pace * Math.max(gap, 1) / Math.max(norm, 1e-9);
		for (int task = 0; task < this.tasks; task++) {
			this.u[task] = Math.max(this.sure[task] ? -1e6 : 0,
					this.u[task] - length * this.stepU[task] * scaleU * scaleU);
		}
		for (Slot slot : this.board.slots()) {
			double[] prices = this.l[slot.number()];
			for (int h = 0; h < prices.length; h++) {
				double scale = scaleL * perTeam(slot);
				prices[h] = Math.max(0, prices[h] - length * this.stepL[slot.number()][h] * scale * scale);
			}
		}
	}

	/** So that a price of a minute moves like that of a task. */
	private double perTeam(Slot slot) {
		return 200.0 / (slot.people() * slot.minutes());
	}

	private static double sq(double x) {
		return x * x;
	}

}
