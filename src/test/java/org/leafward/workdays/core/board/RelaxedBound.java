package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

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
 * </pre> where j ranges over the tasks that t admits. Scarce tools: for any m(d,g) &gt;=
 * 0 and each called date d, the teams with tool g are c(g) at most, so adding m(d,g)
 * (c(g) - teams with g) makes the value no smaller; a team pays m(d,g) for each tool that
 * it takes, and V(t) is the largest over all sets of tools of what it earns by tasks that
 * need no other. So with D(d) = sum over g of m c + sum over teams t of d of max(0, V(t)
 * - team), the plan earns at most sum of u plus the sum of max(0, D(d) - date(d)) over
 * those dates for which that is largest, as many as may be called (locked dates cost
 * nothing and are always among them). A task that is placed for sure has a u of any sign.
 * Whatever u, l and m are, this is a bound; the descent below only looks for small ones.
 */
public final class RelaxedBound {

	/**
	 * Steps with parts of tasks before whole ones are packed; more of them lead astray.
	 */
	private static final int ROUGH = 3;

	/** Tools that are priced; of more the others are taken to be no matter. */
	private static final int TOOLS = 3;

	/** Points by which the price of a task moves as easily as that of a team's minute. */
	private static final double UNIT = 100;

	/** Of a steep step, which is made smaller after some that helped nothing. */
	private static final double FIRST_PACE = 1.5;

	private static final double SLOWER = 0.85;

	private static final int PATIENCE = 6;

	/** Part of a turn against the direction before that is taken back. */
	private static final double DEFLECTION = 1.5;

	/** Steep steps of the first descent; all others are along the mean. */
	private static final int STEEP = 100;

	/** Of a step along the mean. */
	private static final double MEAN_PACE = 0.1;

	private static final double MEAN_SLOWER = 0.66;

	private static final int MEAN_PATIENCE = 5;

	/** Part of the newest slope in the mean, at most. */
	private static final double NEWEST = 0.3;

	/** A date that is called so little more or less than half is undecided. */
	private static final double HALF = 0.45;

	/** Steps for a combination of dates after the first. */
	private static final int FURTHER = 50;

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

	private final int[] limits;

	private boolean whole;

	/** By date: 1 when it is called for sure, -1 when it is not, 0 when that is open. */
	private int[] fixed;

	/** Tasks that are placed for sure, so that their u may have any sign. */
	private final boolean[] sure;

	/** What each date brought the last time. */
	private double[] lastGains = new double[0];

	/** By date: 1 when the last time called it, else 0. */
	private double[] lastCalled = new double[0];

	/** By date: how much of it the mean of many steps calls. */
	private double[] shares = new double[0];

	/** By date: what a team pays for a tool. */
	private final double[][] m;

	private final double[][] stepM;

	/**
	 * By slot: the sites that the last evaluation chose, and the tools that were paid.
	 */
	private final int[][] chosen;

	private final int[] paid;

	/** At most so much needn't be made smaller. */
	private double goal;

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
		this.limits = board.tools();
		int tools = Math.min(TOOLS, this.limits.length);
		this.m = new double[board.dates()][tools];
		this.stepM = new double[board.dates()][tools];
		this.chosen = new int[board.slots().size()][0];
		this.paid = new int[this.chosen.length];
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
	 * @param points points of a plan that is known, which sets how far the descent steps
	 * @param pinsKept whether that plan keeps each pin that is possible, so that only
	 * such plans are better
	 * @param goal a bound that is small enough, at least the points
	 * @param rounds steps of the first descent
	 * @param leaves how many bounds for combinations of dates, 1 and up
	 * @return points that no plan exceeds
	 */
	public static double of(Board board, double points, boolean pinsKept, double goal, int rounds, int leaves) {
		RelaxedBound bound = new RelaxedBound(board, pinsKept);
		bound.goal = Math.max(goal, points + 0.5);
		bound.descend(points, ROUGH, 0);
		bound.whole = true;
		PriorityQueue<Leaf> open = new PriorityQueue<>(Comparator.comparingDouble((Leaf leaf) -> -leaf.bound()));
		open.add(bound.leaf(bound.fixed, points, Math.min(rounds, STEEP), rounds - STEEP, Double.POSITIVE_INFINITY));
		int made = 1;
		while (made < leaves && open.element().bound() > bound.goal) {
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
				open.add(bound.leaf(fixed, points, 0, FURTHER, worst.bound()));
				made++;
			}
		}
		return open.element().bound();
	}

	/** Prices of tasks, of minutes and of tools. */
	private record Prices(double[] u, double[][] l, double[][] m) {
	}

	/** A combination of dates with its bound and the prices that prove it. */
	private record Leaf(int[] fixed, double bound, Prices prices, double[] gains, double[] shares) {
	}

	private Leaf leaf(int[] dates, double points, int steep, int mean, double parent) {
		this.fixed = dates;
		double best = Math.min(parent, descend(points, steep, mean));
		evaluate();
		return new Leaf(dates, best, prices(), this.lastGains, this.shares.clone());
	}

	private void take(Leaf leaf) {
		this.fixed = leaf.fixed();
		this.lastGains = leaf.gains();
		this.shares = leaf.shares().clone();
		set(leaf.prices());
	}

	private Prices prices() {
		return new Prices(this.u.clone(), copy(this.l), copy(this.m));
	}

	private void set(Prices prices) {
		System.arraycopy(prices.u(), 0, this.u, 0, this.u.length);
		set(prices.l(), this.l);
		set(prices.m(), this.m);
	}

	private static void set(double[][] from, double[][] to) {
		for (int i = 0; i < to.length; i++) {
			System.arraycopy(from[i], 0, to[i], 0, to[i].length);
		}
	}

	/**
	 * The open date of which nearest to a half is called, in the mean of many steps.
	 * Where none is in parts, the one that is nearest to being called or not: its gain is
	 * nearest to nothing, or to that of the last date that may still be called.
	 */
	private int undecided() {
		int half = -1;
		for (int date = 0; date < this.shares.length; date++) {
			half = (this.fixed[date] == 0 && Math.abs(this.shares[date] - 0.5) < HALF
					&& (half < 0 || Math.abs(this.shares[date] - 0.5) < Math.abs(this.shares[half] - 0.5))) ? date
							: half;
		}
		if (half >= 0) {
			return half;
		}
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

	/**
	 * Looks for small bounds: steep steps first, as they get near soon, and then steps in
	 * the mean of many directions, as those don't stop at an edge.
	 */
	private double descend(double points, int steep, int mean) {
		double best = (steep > 0) ? steep(points, steep) : Double.POSITIVE_INFINITY;
		return (mean > 0 && best > this.goal) ? Math.min(best, mean(points, mean)) : best;
	}

	/**
	 * Steps of Polyak's length along subgradients that don't turn back on the one before,
	 * as two that cancel each other get nowhere (Camerini, Fratta and Maffioli, 1975, by
	 * memory).
	 */
	private double steep(double points, int rounds) {
		double best = Double.POSITIVE_INFINITY;
		Prices found = prices();
		double[] before = new double[0];
		double pace = FIRST_PACE;
		int stuck = 0;
		for (int round = 0; round < rounds && best > this.goal; round++) {
			double now = evaluate();
			if (now < best - 1e-6) {
				stuck = (now < best - 1e-5 * Math.abs(best)) ? 0 : stuck + 1;
				best = now;
				found = prices();
			}
			else {
				stuck++;
			}
			if (stuck > PATIENCE) {
				pace *= SLOWER;
				stuck = 0;
				set(found);
				evaluate();
				now = best;
				before = new double[0];
			}
			double[] way = slope();
			double turn = (before.length > 0) ? -DEFLECTION * product(way, before) / product(before, before) : 0;
			if (turn > 0) {
				add(way, 1, before, turn);
			}
			move(flat(), way, pace * Math.max(now - points, 1) / Math.max(product(way, way), 1e-9));
			before = way;
		}
		set(found);
		return best;
	}

	/**
	 * Steps from the smallest bound so far along a mean of subgradients, which tends to
	 * nothing where the bound is smallest (the volume algorithm of Barahona and Anbil,
	 * 2000, by memory).
	 */
	private double mean(double points, int rounds) {
		double best = evaluate();
		Prices found = prices();
		double[] at = flat();
		double[] mean = slope();
		if (this.shares.length == 0) {
			this.shares = this.lastCalled.clone();
		}
		double pace = MEAN_PACE;
		double most = NEWEST;
		double checked = best;
		int stuck = 0;
		for (int round = 1; round <= rounds && best > this.goal; round++) {
			double norm = 0;
			for (int i = 0; i < mean.length; i++) {
				// A price of nothing can't go down.
				norm += (at[i] <= 0 && mean[i] > 0 && !(i < this.tasks && this.sure[i])) ? 0 : mean[i] * mean[i];
			}
			move(at, mean, pace * Math.max(best - points, 1) / Math.max(norm, 1e-9));
			double now = evaluate();
			double[] slope = slope();
			double along = product(slope, mean);
			double own = product(mean, mean);
			double apart = product(slope, slope) - 2 * along + own;
			double part = (apart > 1e-12) ? (own - along) / apart : most;
			part = Math.max(most / 10, Math.min(part, most));
			add(mean, 1 - part, slope, part);
			add(this.shares, 1 - part, this.lastCalled, part);
			if (now < best - 1e-7) {
				best = now;
				found = prices();
				at = flat();
				stuck = 0;
				pace = Math.min(2, pace * ((along > 0) ? 2 : 1.05));
			}
			else if (++stuck >= MEAN_PATIENCE) {
				stuck = 0;
				pace = Math.max(pace * MEAN_SLOWER, 0.0005);
			}
			if (round % 50 == 0) {
				most = (checked - best < 0.001 * (best - points)) ? Math.max(most / 2, 1e-4) : most;
				checked = best;
			}
		}
		set(found);
		return best;
	}

	private static double product(double[] a, double[] b) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			sum += a[i] * b[i];
		}
		return sum;
	}

	/** Makes the first one a sum of both. */
	private static void add(double[] a, double parts, double[] b, double others) {
		for (int i = 0; i < a.length; i++) {
			a[i] = parts * a[i] + others * b[i];
		}
	}

	/** In units of points and of the minutes of a team. */
	private double[] slope() {
		DoubleStream.Builder slopes = DoubleStream.builder();
		Arrays.stream(this.stepU).forEach((one) -> slopes.add(one * UNIT));
		for (Slot slot : this.board.slots()) {
			Arrays.stream(this.stepL[slot.number()]).forEach((one) -> slopes.add(one * perTeam(slot)));
		}
		Arrays.stream(this.stepM).flatMapToDouble(Arrays::stream).forEach((one) -> slopes.add(one * UNIT));
		return slopes.build().toArray();
	}

	private double[] flat() {
		DoubleStream.Builder prices = DoubleStream.builder();
		Arrays.stream(this.u).forEach((one) -> prices.add(one / UNIT));
		for (Slot slot : this.board.slots()) {
			Arrays.stream(this.l[slot.number()]).forEach((one) -> prices.add(one / perTeam(slot)));
		}
		Arrays.stream(this.m).flatMapToDouble(Arrays::stream).forEach((one) -> prices.add(one / UNIT));
		return prices.build().toArray();
	}

	private void move(double[] from, double[] way, double length) {
		int at = 0;
		for (int task = 0; task < this.tasks; task++, at++) {
			this.u[task] = Math.max(this.sure[task] ? -1e6 : 0, (from[at] - length * way[at]) * UNIT);
		}
		for (Slot slot : this.board.slots()) {
			double[] prices = this.l[slot.number()];
			for (int h = 0; h < prices.length; h++, at++) {
				prices[h] = Math.max(0, (from[at] - length * way[at]) * perTeam(slot));
			}
		}
		for (double[] date : this.m) {
			for (int tool = 0; tool < date.length; tool++, at++) {
				date[tool] = Math.max(0, (from[at] - length * way[at]) * UNIT);
			}
		}
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

	/** The bound at these prices, and its subgradient. */
	private double evaluate() {
		Arrays.fill(this.stepU, 1);
		double sum = this.base;
		for (double one : this.u) {
			sum += one;
		}
		double[] values = new double[this.board.slots().size()];
		this.board.slots()
			.parallelStream()
			.filter((slot) -> this.fixed[slot.date()] >= 0)
			.forEach((slot) -> values[slot.number()] = team(slot) - this.board.problem().rules().costs().team());
		double[] gains = new double[this.board.dates()];
		for (int date = 0; date < gains.length; date++) {
			for (int tool = 0; tool < this.m[date].length; tool++) {
				gains[date] += this.m[date][tool] * this.limits[tool];
			}
			for (Slot slot : this.board.slotsOn(date)) {
				gains[date] += Math.max(0, values[slot.number()]);
			}
			gains[date] -= this.board.dateCost(date);
		}
		this.lastGains = gains;
		boolean[] called = called(gains);
		this.lastCalled = IntStream.range(0, gains.length).mapToDouble((date) -> called[date] ? 1 : 0).toArray();
		for (int date = 0; date < gains.length; date++) {
			sum += called[date] ? gains[date] : 0;
			for (int tool = 0; tool < this.m[date].length; tool++) {
				this.stepM[date][tool] = called[date] ? this.limits[tool] : 0;
			}
			for (Slot slot : this.board.slotsOn(date)) {
				Arrays.fill(this.stepL[slot.number()], 0);
				if (called[date] && values[slot.number()] > 0) {
					subgradient(slot, this.chosen[slot.number()]);
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

	/** What a task brings to a team that goes without some tools. */
	private double gain(Slot slot, int task, double[] prices, int without) {
		if (!this.admits[slot.number()][task] || (this.board.toolsOf(task) & without) != 0) {
			return 0;
		}
		double gain = this.board.value(task) + this.board.moved(task, -1) - this.board.moved(task, slot.number());
		return Math.max(0,
				gain - this.u[task] - this.board.task(task).personMinutes() * prices[this.board.kindOf(task)]);
	}

	private double team(Slot slot) {
		double[] prices = prices(slot);
		double people = 0;
		for (int h = 0; h < this.l[slot.number()].length; h++) {
			people += this.l[slot.number()][h] * slot.shared().people()[h];
		}
		double[] costs = this.m[slot.date()];
		int priced = 0;
		for (int tool = 0; tool < costs.length; tool++) {
			priced |= (costs[tool] > 0) ? 1 << tool : 0;
		}
		int[] before = this.chosen[slot.number()];
		double best = 0;
		this.chosen[slot.number()] = new int[0];
		this.paid[slot.number()] = 0;
		for (int set = 0; set <= priced; set++) {
			if ((set & ~priced) == 0) {
				double cost = 0;
				for (int tool = 0; tool < costs.length; tool++) {
					cost += ((set >> tool & 1) != 0) ? costs[tool] : 0;
				}
				Choice choice = new Choice(slot, prices, people, priced & ~set);
				double now = (this.whole ? choice.whole(before, best + cost) : choice.rough()) - cost;
				if (now > best) {
					best = now;
					this.chosen[slot.number()] = choice.few;
					this.paid[slot.number()] = set;
				}
			}
		}
		return best;
	}

	private double[] prices(Slot slot) {
		double[] prices = new double[this.board.kinds()];
		for (int kind = 0; kind < prices.length; kind++) {
			prices[kind] = price(slot, kind);
		}
		return prices;
	}

	/** The same without what all share. */
	private double[] others(Slot slot, double[] prices, int all) {
		double[] others = prices.clone();
		for (int kind = 0; kind < others.length; kind++) {
			others[kind] -= ((slot.shared().kinds()[all] >> kind & 1) != 0) ? this.l[slot.number()][all] : 0;
		}
		return others;
	}

	/** The set of kinds that all share who can do anything. */
	private static int all(Slot slot) {
		int all = 0;
		for (int h = 1; h < slot.shared().people().length; h++) {
			all = (slot.shared().people()[h] > slot.shared().people()[all]) ? h : all;
		}
		return all;
	}

	/** The best sites of a team that goes without some tools. */
	private final class Choice {

		private final RelaxedBound of = RelaxedBound.this;

		private final Slot slot;

		private final double[] prices;

		private final double people;

		private final int without;

		private final double way;

		private final double[] gains = new double[this.of.sites];

		private final int[] order = new int[this.of.sites];

		private int count;

		private int[] few = new int[0];

		Choice(Slot slot, double[] prices, double people, int without) {
			this.slot = slot;
			this.prices = prices;
			this.people = people;
			this.without = without;
			this.way = people + this.of.board.problem().rules().costs().travelMinute();
			for (int site = 0; site < this.gains.length; site++) {
				for (int task : this.of.at[site]) {
					this.gains[site] += gain(slot, task, prices, without);
				}
			}
		}

		/** With a price for all minutes, so that parts of tasks are done. */
		double rough() {
			inOrder(this.prices);
			return this.people * this.slot.minutes() + search(0, (some, most) -> most);
		}

		/**
		 * Without a price for the minutes that all share: what fits into them is worked
		 * out to the task. The prices tell which sites needn't be looked at.
		 * @param first sites that are looked at first, as they were best before
		 * @param known nothing less is of interest
		 */
		double whole(int[] first, double known) {
			int all = all(this.slot);
			double[] others = others(this.slot, this.prices, all);
			inOrder(others);
			double rest = this.people - this.of.l[this.slot.number()][all] * this.slot.shared().people()[all];
			double constant = this.people * this.slot.minutes();
			double best = known;
			if (first.length > 0) {
				double now = worth(first, others, rest, all);
				if (now > best) {
					best = now;
					this.few = first;
				}
			}
			return constant + search(best - constant, (some, most) -> worth(some, others, rest, all) - constant);
		}

		/**
		 * The sites that have something to bring. One that brings nothing once its
		 * minutes are paid for may still fill what others leave.
		 */
		private void inOrder(double[] at) {
			this.count = 0;
			for (int site = 0; site < this.gains.length; site++) {
				for (int task : this.of.at[site]) {
					if (gain(this.slot, task, at, this.without) > 0) {
						this.order[this.count++] = site;
						break;
					}
				}
			}
		}

		/** The best few sites, by trying all that may be better than what is known. */
		private double search(double known, ToDoubleBiFunction<int[], Double> exact) {
			Tours tours = this.of.board.tours();
			double top = Arrays.stream(this.gains).max().orElse(0);
			double best = known;
			for (int i = 0; i < this.count; i++) {
				int a = this.order[i];
				best = look(best, this.gains[a], exact, a);
				for (int j = 0; j < i && this.of.mostSites > 1; j++) {
					int b = this.order[j];
					double two = this.gains[a] + this.gains[b];
					if (two > best) {
						best = look(best, two - this.way * tours.between(a, b), exact, a, b);
					}
					for (int k = 0; k < j && this.of.mostSites > 2 && two + top > best; k++) {
						int c = this.order[k];
						double three = two + this.gains[c];
						if (three > best) {
							int[] some = { a, b, c };
							best = look(best, three - this.way * tours.minutes(some, 3), exact, some);
						}
					}
				}
			}
			return best;
		}

		private double look(double best, double most, ToDoubleBiFunction<int[], Double> exact, int... some) {
			if (most > best) {
				double now = exact.applyAsDouble(some, most);
				if (now > best) {
					this.few = some;
					return now;
				}
			}
			return best;
		}

		private double worth(int[] some, double[] others, double rest, int all) {
			int travel = this.of.board.tours().minutes(some, some.length);
			int net = this.slot.minutes() - travel;
			return (net <= 0) ? 0 : rest * net + pack(this.slot, some, others, all, this.without, null)
					- this.of.board.problem().rules().costs().travelMinute() * travel;
		}

	}

	/**
	 * What whole tasks bring that fit into the minutes of a team, by dynamic programming.
	 * @param takes is told which; null when nobody asks
	 */
	private double pack(Slot slot, int[] some, double[] prices, int all, int without, boolean @Nullable [] takes) {
		int net = slot.minutes() - this.board.tours().minutes(some, some.length);
		double[] table = new double[Math.max(0, slot.shared().people()[all] * net / this.unit) + 1];
		List<Integer> tried = new ArrayList<>();
		List<boolean[]> took = new ArrayList<>();
		for (int site : some) {
			for (int task : this.at[site]) {
				double gain = gain(slot, task, prices, without);
				int size = this.board.task(task).personMinutes() / this.unit;
				if (gain > 0 && size < table.length) {
					boolean[] here = new boolean[(takes != null) ? table.length : 0];
					for (int c = table.length - 1; c >= size; c--) {
						double with = table[c - size] + gain;
						if (with > table[c]) {
							table[c] = with;
							if (takes != null) {
								here[c] = true;
							}
						}
					}
					tried.add(task);
					took.add(here);
				}
			}
		}
		int left = table.length - 1;
		for (int i = tried.size() - 1; i >= 0 && takes != null; i--) {
			if (took.get(i)[left]) {
				left -= this.board.task(tried.get(i)).personMinutes() / this.unit;
				takes[tried.get(i)] = true;
			}
		}
		return table[table.length - 1];
	}

	private void subgradient(Slot slot, int[] few) {
		double[] prices = prices(slot);
		int net = slot.minutes() - this.board.tours().minutes(few, few.length);
		double[] slopes = this.stepL[slot.number()];
		for (int h = 0; h < slopes.length; h++) {
			slopes[h] = (double) slot.shared().people()[h] * net;
		}
		double[] costs = this.m[slot.date()];
		int used = this.paid[slot.number()];
		int without = 0;
		for (int tool = 0; tool < costs.length; tool++) {
			without |= (costs[tool] > 0 && (used >> tool & 1) == 0) ? 1 << tool : 0;
		}
		int all = all(slot);
		boolean[] takes = new boolean[this.tasks];
		if (this.whole) {
			pack(slot, few, others(slot, prices, all), all, without, takes);
		}
		for (int site : few) {
			for (int task : this.at[site]) {
				if (this.whole ? takes[task] : gain(slot, task, prices, without) > 0) {
					this.stepU[task] -= 1;
					used |= this.board.toolsOf(task);
					for (int h = 0; h < slopes.length; h++) {
						slopes[h] -= ((slot.shared().kinds()[h] >> this.board.kindOf(task) & 1) != 0)
								? this.board.task(task).personMinutes() : 0;
					}
				}
			}
		}
		for (int tool = 0; tool < costs.length; tool++) {
			this.stepM[slot.date()][tool] -= used >> tool & 1;
		}
		if (this.whole) {
			slopes[all] = 0;
		}
	}

	/** So that a price of a minute moves like that of a task. */
	private double perTeam(Slot slot) {
		return 200.0 / (slot.people() * slot.minutes());
	}

}
