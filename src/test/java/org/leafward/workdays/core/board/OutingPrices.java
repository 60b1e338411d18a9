package org.leafward.workdays.core.board;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.leafward.workdays.core.board.Relaxation.Outing;
import org.leafward.workdays.core.board.Relaxation.Prices;

/**
 * Prices by linear programming: plans are mixed from outings that are known, in parts,
 * and what one more of each task, minute and tool would earn is its price (the dual of
 * Dantzig and Wolfe's decomposition). Nothing rests on the library's answer but how small
 * a bound is: {@link Relaxation} proves it at any prices.
 */
final class OutingPrices implements AutoCloseable {

	/** Costs more than any plan earns. */
	private static final double MISSING = 100_000;

	/** Minutes for which one price is asked, so that numbers are of like size. */
	private static final double HUNDRED = 100;

	static {
		Loader.loadNativeLibraries();
	}

	/**
	 * The best mix.
	 *
	 * @param points what it earns
	 * @param prices what more of each would earn
	 * @param called by date: the part of it that is called, 0 to 1
	 */
	record Mix(double points, Prices prices, double[] called) {
	}

	private final Board board;

	private final Relaxation relaxation;

	private final MPSolver solver = MPSolver.createSolver("GLOP");

	private final MPVariable[] dates;

	private final MPConstraint[] tasks;

	private final MPConstraint[] teams;

	/** By slot and set of kinds. */
	private final MPConstraint[][] minutes;

	/** By date and tool. */
	private final MPConstraint[][] tools;

	private final Set<Outing> known = new HashSet<>();

	OutingPrices(Board board, Relaxation relaxation) {
		this.board = board;
		this.relaxation = relaxation;
		this.solver.objective().setMaximization();
		this.tasks = new MPConstraint[board.tasks()];
		for (int task = 0; task < this.tasks.length; task++) {
			boolean sure = relaxation.sure(task);
			this.tasks[task] = atMost(1);
			if (sure) {
				this.tasks[task].setLb(1);
				this.tasks[task].setCoefficient(variable(-MISSING), 1);
			}
		}
		this.dates = new MPVariable[board.dates()];
		this.tools = new MPConstraint[board.dates()][relaxation.tools()];
		MPConstraint called = atMost(board.mostDates());
		for (int date = 0; date < this.dates.length; date++) {
			this.dates[date] = variable(-board.dateCost(date));
			called.setCoefficient(this.dates[date], 1);
			for (int tool = 0; tool < relaxation.tools(); tool++) {
				this.tools[date][tool] = atMost(0);
				this.tools[date][tool].setCoefficient(this.dates[date], -board.tools()[tool]);
			}
		}
		this.teams = new MPConstraint[board.slots().size()];
		this.minutes = new MPConstraint[board.slots().size()][];
		for (Slot slot : board.slots()) {
			this.teams[slot.number()] = atMost(0);
			this.teams[slot.number()].setCoefficient(this.dates[slot.date()], -1);
			this.minutes[slot.number()] = Arrays.stream(slot.shared().kinds())
				.mapToObj((kinds) -> atMost(0))
				.toArray(MPConstraint[]::new);
		}
	}

	private MPConstraint atMost(double most) {
		return this.solver.makeConstraint(-MPSolver.infinity(), most);
	}

	private MPVariable variable(double earns) {
		MPVariable variable = this.solver.makeNumVar(0, MPSolver.infinity(), "");
		this.solver.objective().setCoefficient(variable, earns);
		return variable;
	}

	/**
	 * Adds an outing.
	 * @param outing by the relaxation
	 * @return whether it wasn't known
	 */
	boolean add(Outing outing) {
		if (outing.tasks().isEmpty() || !this.known.add(outing)) {
			return false;
		}
		Slot slot = this.board.slots().get(outing.slot());
		int[] sites = outing.sites().stream().mapToInt(Integer::intValue).toArray();
		int way = this.board.tours().minutes(sites, sites.length);
		double earns = -this.board.problem().rules().costs().team()
				- (double) this.board.problem().rules().costs().travelMinute() * way;
		int used = 0;
		for (int task : outing.tasks()) {
			earns += this.relaxation.worth(slot, task);
			used |= this.board.toolsOf(task);
		}
		MPVariable part = variable(earns);
		outing.tasks().forEach((task) -> this.tasks[task].setCoefficient(part, 1));
		this.teams[slot.number()].setCoefficient(part, 1);
		for (int h = 0; h < this.minutes[slot.number()].length; h++) {
			if (h != Relaxation.all(slot)) {
				int kinds = slot.shared().kinds()[h];
				int effort = outing.tasks()
					.stream()
					.filter((task) -> (kinds >> this.board.kindOf(task) & 1) != 0)
					.mapToInt((task) -> this.board.task(task).personMinutes())
					.sum();
				this.minutes[slot.number()][h].setCoefficient(part,
						(effort - slot.shared().people()[h] * (slot.minutes() - way)) / HUNDRED);
			}
		}
		for (int tool = 0; tool < this.tools[slot.date()].length; tool++) {
			this.tools[slot.date()][tool].setCoefficient(part, used >> tool & 1);
		}
		return true;
	}

	/**
	 * Mixes the outings that are known.
	 * @param fixed by date: 1 when it is called for sure, -1 when it is not, 0 when that
	 * is open
	 * @return the best mix; empty when the library lost it among its roundings
	 */
	Optional<Mix> best(int[] fixed) {
		for (int date = 0; date < fixed.length; date++) {
			this.dates[date].setBounds((fixed[date] > 0) ? 1 : 0, (fixed[date] < 0) ? 0 : 1);
		}
		MPSolver.ResultStatus status = this.solver.solve();
		if (status != MPSolver.ResultStatus.OPTIMAL) {
			// Without the way by which it came here it often finds another one.
			this.solver.reset();
			status = this.solver.solve();
		}
		return (status != MPSolver.ResultStatus.OPTIMAL) ? Optional.empty() : Optional.of(mix());
	}

	private Mix mix() {
		return new Mix(this.solver.objective().value() + this.relaxation.base(),
				new Prices(prices(this.tasks, 1),
						Arrays.stream(this.minutes).map((rows) -> prices(rows, HUNDRED)).toArray(double[][]::new),
						Arrays.stream(this.tools).map((rows) -> prices(rows, 1)).toArray(double[][]::new)),
				Arrays.stream(this.dates).mapToDouble(MPVariable::solutionValue).toArray());
	}

	private static double[] prices(MPConstraint[] rows, double size) {
		return Arrays.stream(rows).mapToDouble((row) -> row.dualValue() / size).toArray();
	}

	@Override
	public void close() {
		this.solver.delete();
	}

}
