package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What no plan can exceed at given prices, by Lagrangian relaxation; nothing of the
 * search is used. It reads the numbers of a board (who may go where, who can share which
 * work, minutes between sites) and never the worth that a {@code Standing} keeps.
 * <p>
 * <b>Why it is a bound.</b> Let x be a plan that can be carried out; x(j,t) is 1 when
 * task j is done by team t. Write w(j,t) for what j earns with t more than nowhere, S(t)
 * for the sites of t, p(S) for the minutes of the shortest way through S, e(j) for
 * effort. The plan earns, beyond a constant, <pre>
 *   sum over j,t of w(j,t) x(j,t) - sum over t that go out of (team + way * p(S(t))) - sum over called dates of date
 * </pre> For any u(j) &gt;= 0 it holds that sum over t of x(j,t) &lt;= 1, so adding sum
 * over j of u(j) (1 - sum over t of x(j,t)) &gt;= 0 makes the value no smaller. Each set
 * h of kinds is shared by n(t,h) people of team t, and what they do fits into their
 * minutes: sum over j of h of e(j) x(j,t) &lt;= n(t,h) (minutes(t) - p(S(t))). For any
 * l(t,h) &gt;= 0, adding l(t,h) times the right side less the left makes the value of a
 * team that goes out no smaller either. That is done for all h but the set a(t) of all
 * kinds that anybody can do. What is left falls apart by team: with r(j,t) = w(j,t) -
 * u(j) - e(j) * sum of l(t,h) over h with the kind of j, a team earns at most <pre>
 *   V(t) = sum over h of l n minutes + max over S with at most m sites of
 *          (max over J of sum over j in J of r(j,t) - p(S) (way + sum over h of l n))
 * </pre> where J ranges over the sets of tasks at the sites of S that t admits and whose
 * effort fits into the minutes of a(t). Both are worked out: the tasks by dynamic
 * programming, the sites by trying all that may be best. Scarce tools: for any m(d,g)
 * &gt;= 0 and each called date d, the teams with tool g are c(g) at most, so adding
 * m(d,g) (c(g) - teams with g) makes the value no smaller; a team pays m(d,g) for each
 * tool that it takes, and V(t) is the largest over all sets of tools of what it earns by
 * tasks that need no other. So with D(d) = sum over g of m c + sum over teams t of d of
 * max(0, V(t) - team), the plan earns at most sum of u plus the sum of max(0, D(d) -
 * date(d)) over those dates for which that is largest, as many as may be called (locked
 * dates cost nothing and are always among them). A task that is placed for sure has a u
 * of any sign. Whatever u, l and m are, this is a bound; {@link RelaxedBound} looks for
 * small ones.
 */
final class Relaxation {

	/** Tools that are priced; of more the others are taken to be no matter. */
	private static final int TOOLS = 3;

	private final Board board;

	private final int tasks;

	private final int sites;

	private final int[][] at;

	private final boolean[][] admits;

	private final int mostSites;

	private final double base;

	private final int unit;

	private final int[] limits;

	/** Tasks that are placed for sure, so that their u may have any sign. */
	private final boolean[] sure;

	/** By date: 1 when each plan that is of interest calls it, else 0. */
	private final int[] fixed;

	/**
	 * By slot: a price for a minute that all share. It changes no bound, as what fits
	 * into these minutes is worked out; one that isn't far off makes that faster.
	 */
	private final double[] common;

	private Prices prices;

	/** By slot: the sites that the last evaluation chose. */
	private final int[][] chosen;

	/** By slot: the tools that it paid. */
	private final int[] paid;

	/**
	 * Prices, in points.
	 *
	 * @param tasks by task: of doing it once
	 * @param minutes by slot and set of kinds that people share: of a minute; none for
	 * those that all share
	 * @param tools by date and tool: of taking it along
	 */
	record Prices(double[] tasks, double[][] minutes, double[][] tools) {
	}

	/**
	 * What a team does best at the last prices.
	 *
	 * @param slot number of the slot
	 * @param tasks numbers of tasks, in order; people's minutes may not suffice for those
	 * of them that need skills
	 * @param sites numbers of sites, of which some may be without tasks
	 */
	record Outing(int slot, List<Integer> tasks, List<Integer> sites) {
	}

	/**
	 * Reads a board.
	 * @param board the problem
	 * @param pinsKept whether only plans are of interest that keep each pin that is
	 * possible
	 * @throws IllegalArgumentException when teams may go to more than three sites
	 */
	Relaxation(Board board, boolean pinsKept) {
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
		this.limits = board.tools();
		this.chosen = new int[board.slots().size()][0];
		this.paid = new int[this.chosen.length];
		this.unit = IntStream.range(0, this.tasks)
			.map((task) -> board.task(task).personMinutes())
			.reduce(0, Relaxation::divisor);
		this.mostSites = board.problem().rules().mostSites();
		if (this.mostSites > 3) {
			throw new IllegalArgumentException("bounds are for three sites a day at most");
		}
		this.prices = first();
		this.common = new double[this.chosen.length];
		Arrays.fill(this.common, mean());
	}

	private static int divisor(int a, int b) {
		return (b == 0) ? a : divisor(b, a % b);
	}

	/** A third of what tasks earn, and nothing for minutes and tools. */
	private Prices first() {
		return new Prices(IntStream.range(0, this.tasks).mapToDouble((task) -> 0.3 * this.board.value(task)).toArray(),
				this.board.slots()
					.stream()
					.map((slot) -> new double[slot.shared().kinds().length])
					.toArray(double[][]::new),
				new double[this.board.dates()][tools()]);
	}

	/** Less than half of what a minute of work earns, as tasks have a price as well. */
	private double mean() {
		double value = 0;
		double effort = 0;
		for (int task = 0; task < this.tasks; task++) {
			value += this.board.value(task);
			effort += this.board.task(task).personMinutes();
		}
		return 0.4 * value / Math.max(1, effort);
	}

	/**
	 * The prices of the last evaluation.
	 * @return before the first one: a guess
	 */
	Prices prices() {
		return this.prices;
	}

	/**
	 * Whether a task is placed in each plan that is of interest.
	 * @param task number of the task
	 * @return so for pins that are kept
	 */
	boolean sure(int task) {
		return this.sure[task];
	}

	/**
	 * What a task earns with a team more than nowhere.
	 * @param slot the team
	 * @param task number of the task
	 * @return points
	 */
	int worth(Slot slot, int task) {
		return this.board.value(task) + this.board.moved(task, -1) - this.board.moved(task, slot.number());
	}

	/**
	 * How many tools are priced; of more the others are taken to be no matter.
	 * @return the first so many of the board's
	 */
	int tools() {
		return Math.min(TOOLS, this.limits.length);
	}

	/**
	 * The dates that each plan calls that is of interest.
	 * @return by date: 1 when it is called for sure, 0 when that is open
	 */
	int[] fixed() {
		return this.fixed.clone();
	}

	/**
	 * What a plan of nothing earns: what it costs that tasks stand where they stood no
	 * more.
	 * @return points, 0 at most
	 */
	double base() {
		return this.base;
	}

	/**
	 * The bound at some prices for plans that call some dates and don't call others.
	 * @param prices any; where a price may not be below nothing it is taken as nothing
	 * @param fixed by date: 1 when it is called for sure, -1 when it is not, 0 when that
	 * is open
	 * @return points
	 */
	double at(Prices prices, int[] fixed) {
		double[] tasks = prices.tasks().clone();
		for (int task = 0; task < tasks.length; task++) {
			tasks[task] = this.sure[task] ? tasks[task] : Math.max(0, tasks[task]);
		}
		this.prices = new Prices(tasks, notBelowNothing(prices.minutes()), notBelowNothing(prices.tools()));
		double sum = this.base + Arrays.stream(tasks).sum();
		double[] values = new double[this.board.slots().size()];
		this.board.slots()
			.parallelStream()
			.filter((slot) -> fixed[slot.date()] >= 0)
			.forEach((slot) -> values[slot.number()] = team(slot) - this.board.problem().rules().costs().team());
		double[] gains = new double[this.board.dates()];
		for (int date = 0; date < gains.length; date++) {
			double[] tools = this.prices.tools()[date];
			for (int tool = 0; tool < tools.length; tool++) {
				gains[date] += tools[tool] * this.limits[tool];
			}
			for (Slot slot : this.board.slotsOn(date)) {
				gains[date] += Math.max(0, values[slot.number()]);
			}
			gains[date] -= this.board.dateCost(date);
		}
		return sum + called(gains, fixed);
	}

	private static double[][] notBelowNothing(double[][] prices) {
		return Arrays.stream(prices)
			.map((some) -> Arrays.stream(some).map((one) -> Math.max(0, one)).toArray())
			.toArray(double[][]::new);
	}

	/** What the best dates earn, as many as may be called. */
	private double called(double[] gains, int[] fixed) {
		int left = this.board.mostDates();
		double sum = 0;
		for (int date = 0; date < gains.length; date++) {
			sum += (fixed[date] > 0) ? gains[date] : 0;
			left -= (fixed[date] > 0) ? 1 : 0;
		}
		double[] open = IntStream.range(0, gains.length)
			.filter((date) -> fixed[date] == 0 && gains[date] > 0)
			.mapToDouble((date) -> -gains[date])
			.sorted()
			.toArray();
		for (int i = 0; i < Math.min(left, open.length); i++) {
			sum -= open[i];
		}
		return sum;
	}

	/** What a task brings to a team that goes without some tools. */
	private double gain(Slot slot, int task, double[] prices, int without) {
		if (!this.admits[slot.number()][task] || (this.board.toolsOf(task) & without) != 0) {
			return 0;
		}
		return Math.max(0, worth(slot, task) - this.prices.tasks()[task]
				- this.board.task(task).personMinutes() * prices[this.board.kindOf(task)]);
	}

	/** What a team earns at most. */
	private double team(Slot slot) {
		double[] costs = this.prices.tools()[slot.date()];
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
				Choice choice = new Choice(slot, priced & ~set);
				double now = choice.best(before, best + cost) - cost;
				if (now > best) {
					best = now;
					this.chosen[slot.number()] = choice.few;
					this.paid[slot.number()] = set;
				}
			}
		}
		this.common[slot.number()] = marginal(slot, this.common[slot.number()]);
		return best;
	}

	/** What the last minute of a team earns, by tasks that may be done in parts. */
	private double marginal(Slot slot, double otherwise) {
		int[] few = this.chosen[slot.number()];
		double[] prices = prices(slot, 0);
		int without = without(slot);
		List<Integer> best = Arrays.stream(few)
			.flatMap((site) -> Arrays.stream(this.at[site]))
			.filter((task) -> gain(slot, task, prices, without) > 0)
			.boxed()
			.sorted(Comparator.comparingDouble(
					(Integer task) -> -gain(slot, task, prices, without) / this.board.task(task).personMinutes()))
			.toList();
		int left = slot.shared().people()[all(slot)] * (slot.minutes() - this.board.tours().minutes(few, few.length));
		for (int task : best) {
			left -= this.board.task(task).personMinutes();
			if (left < 0) {
				return gain(slot, task, prices, without) / this.board.task(task).personMinutes();
			}
		}
		return best.isEmpty() ? otherwise : 0;
	}

	/** The tools that are priced and that the chosen way goes without. */
	private int without(Slot slot) {
		double[] costs = this.prices.tools()[slot.date()];
		int without = 0;
		for (int tool = 0; tool < costs.length; tool++) {
			without |= (costs[tool] > 0 && (this.paid[slot.number()] >> tool & 1) == 0) ? 1 << tool : 0;
		}
		return without;
	}

	/** By kind: of a person's minute, that all share or only some. */
	private double[] prices(Slot slot, double common) {
		double[] prices = new double[this.board.kinds()];
		int all = all(slot);
		for (int h = 0; h < slot.shared().kinds().length; h++) {
			double price = (h == all) ? common : this.prices.minutes()[slot.number()][h];
			for (int kind = 0; kind < prices.length; kind++) {
				prices[kind] += ((slot.shared().kinds()[h] >> kind & 1) != 0) ? price : 0;
			}
		}
		return prices;
	}

	/** The set of kinds that all share who can do anything. */
	static int all(Slot slot) {
		int all = 0;
		for (int h = 1; h < slot.shared().people().length; h++) {
			all = (slot.shared().people()[h] > slot.shared().people()[all]) ? h : all;
		}
		return all;
	}

	/** The best sites of a team that goes without some tools. */
	private final class Choice {

		private final Relaxation of = Relaxation.this;

		private final Slot slot;

		private final int without;

		/** By kind, without what all share. */
		private final double[] prices;

		/** What the minutes are worth that only some share. */
		private final double some;

		/** The same and those that all share. */
		private final double people;

		/** What a minute on the way costs. */
		private final double way;

		private final double[] gains = new double[this.of.sites];

		private final int[] order = new int[this.of.sites];

		private int count;

		private int[] few = new int[0];

		Choice(Slot slot, int without) {
			this.slot = slot;
			this.without = without;
			this.prices = this.of.prices(slot, 0);
			double sum = 0;
			int all = all(slot);
			for (int h = 0; h < slot.shared().people().length; h++) {
				sum += (h == all) ? 0 : this.of.prices.minutes()[slot.number()][h] * slot.shared().people()[h];
			}
			this.some = sum;
			this.people = sum + this.of.common[slot.number()] * slot.shared().people()[all];
			this.way = this.people + this.of.board.problem().rules().costs().travelMinute();
			double[] prices = this.of.prices(slot, this.of.common[slot.number()]);
			for (int site = 0; site < this.gains.length; site++) {
				for (int task : this.of.at[site]) {
					this.gains[site] += gain(slot, task, prices, without);
				}
			}
		}

		/**
		 * What fits into the minutes that all share is worked out to the task; a price
		 * for them tells which sites needn't be looked at.
		 * @param first sites that are looked at first, as they were best before
		 * @param known nothing less is of interest
		 */
		double best(int[] first, double known) {
			inOrder();
			double constant = this.people * this.slot.minutes();
			double best = known;
			if (first.length > 0) {
				double now = worth(first);
				if (now > best) {
					best = now;
					this.few = first;
				}
			}
			return constant + search(best - constant, constant);
		}

		/**
		 * The sites that have something to bring. One that brings nothing once its
		 * minutes are paid for may still fill what others leave.
		 */
		private void inOrder() {
			this.count = 0;
			for (int site = 0; site < this.gains.length; site++) {
				for (int task : this.of.at[site]) {
					if (gain(this.slot, task, this.prices, this.without) > 0) {
						this.order[this.count++] = site;
						break;
					}
				}
			}
		}

		/** The best few sites, by trying all that may be better than what is known. */
		private double search(double known, double constant) {
			Tours tours = this.of.board.tours();
			double top = Arrays.stream(this.gains).max().orElse(0);
			double best = known;
			for (int i = 0; i < this.count; i++) {
				int a = this.order[i];
				best = look(best, this.gains[a], constant, a);
				for (int j = 0; j < i && this.of.mostSites > 1; j++) {
					int b = this.order[j];
					double two = this.gains[a] + this.gains[b];
					if (two > best) {
						best = look(best, two - this.way * tours.between(a, b), constant, a, b);
					}
					for (int k = 0; k < j && this.of.mostSites > 2 && two + top > best; k++) {
						int c = this.order[k];
						double three = two + this.gains[c];
						if (three > best) {
							int[] some = { a, b, c };
							best = look(best, three - this.way * tours.minutes(some, 3), constant, some);
						}
					}
				}
			}
			return best;
		}

		private double look(double best, double most, double constant, int... some) {
			if (most > best) {
				double now = worth(some) - constant;
				if (now > best) {
					this.few = some;
					return now;
				}
			}
			return best;
		}

		private double worth(int[] few) {
			int travel = this.of.board.tours().minutes(few, few.length);
			int net = this.slot.minutes() - travel;
			return (net <= 0) ? 0 : this.some * net + pack(this.slot, few, this.prices, this.without, null)
					- this.of.board.problem().rules().costs().travelMinute() * travel;
		}

	}

	/**
	 * What whole tasks bring that fit into the minutes of a team, by dynamic programming.
	 * @param takes is told which; null when nobody asks
	 */
	private double pack(Slot slot, int[] some, double[] prices, int without, boolean @Nullable [] takes) {
		int net = slot.minutes() - this.board.tours().minutes(some, some.length);
		double[] table = new double[Math.max(0, slot.shared().people()[all(slot)] * net / this.unit) + 1];
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

	/**
	 * What a team did at the last evaluation.
	 * @param slot the team
	 * @return no tasks when it stayed at home, or nobody asked for it
	 */
	Outing outing(Slot slot) {
		int[] few = this.chosen[slot.number()];
		boolean[] takes = new boolean[this.tasks];
		pack(slot, few, prices(slot, 0), without(slot), takes);
		return new Outing(slot.number(), IntStream.range(0, this.tasks).filter((task) -> takes[task]).boxed().toList(),
				Arrays.stream(few).boxed().toList());
	}

}
