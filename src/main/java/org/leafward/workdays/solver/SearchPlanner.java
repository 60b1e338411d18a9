package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.SwapMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.GreedyStart;
import org.leafward.workdays.core.board.PlanReport;
import org.leafward.workdays.core.board.Refill;
import org.leafward.workdays.core.board.Standing;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewPlanner;
import org.leafward.workdays.core.plan.CrewProblem;
import org.springframework.stereotype.Component;

/**
 * Local search (late acceptance) from a greedy start. It ends after a number of moves and
 * not after a time, so that the same problem has the same plan on any machine; only on
 * one that is much slower or busier than usual the clock ends it before, since a
 * coordinator waits for it.
 */
@Component
public class SearchPlanner implements CrewPlanner {

	/** Moves for each task, and in all. */
	private static final int MOVES_A_TASK = 4000;

	private static final int LEAST_MOVES = 30_000;

	private static final int MOST_MOVES = 600_000;

	/** The more tasks, the longer a move takes; about as many seconds for all. */
	private static final int MOVES_TIMES_TASKS = 150_000_000;

	private static final int ALWAYS_MOVES = 300_000;

	/** A plan is accepted that is no worse than the one some steps ago; few were best. */
	private static final int LATE = 8;

	/** Of a whole plan: what comes after the search takes a fraction of a second. */
	private static final Duration LONGEST = Duration.ofSeconds(9);

	/** The search has a tenth of it at least, however long all before took. */
	private static final long LEAST_PART = 10;

	private final long factor;

	private final Duration longest;

	/** The planner as it is used. */
	public SearchPlanner() {
		this(1, LONGEST);
	}

	private SearchPlanner(long factor, Duration longest) {
		this.factor = factor;
		this.longest = longest;
	}

	/**
	 * A planner that looks at no clock, so that its plans can be compared.
	 * @param factor how many times as many moves as usual, 1 and up
	 * @return the planner
	 */
	public static SearchPlanner byMovesAlone(long factor) {
		return new SearchPlanner(factor, Duration.ofDays(1));
	}

	@Override
	public CrewPlan plan(CrewProblem problem) {
		long began = System.nanoTime();
		return PlanReport.of(solve(new Board(problem), began));
	}

	/**
	 * Fills a board.
	 * @param board the problem
	 * @param began by {@link System#nanoTime()}
	 * @return the best that was found; it can be carried out
	 */
	private Standing solve(Board board, long began) {
		Standing standing = new Standing(board);
		GreedyStart.fill(standing);
		List<TaskPlace> places = new ArrayList<>();
		for (int task = 0; task < board.tasks(); task++) {
			int[] slots = board.admission(task).slots();
			if (slots.length > 0) {
				int now = standing.slotOf(task);
				places.add(new TaskPlace(task, board.siteOf(task),
						Arrays.stream(slots).mapToObj(board.slots()::get).toList(),
						(now >= 0) ? board.slots().get(now) : null));
			}
		}
		if (places.isEmpty()) {
			return standing;
		}
		long moves = this.factor * moves(places.size());
		Duration left = this.longest.minusNanos(System.nanoTime() - began);
		Duration least = this.longest.dividedBy(LEAST_PART);
		Table best = SolverFactory
			.<Table>create(config(board.problem().seed(), moves,
					((left.compareTo(least) > 0) ? left : least).truncatedTo(ChronoUnit.MILLIS)))
			.buildSolver()
			.solve(new Table(places, new Table.Bench(new Standing(board))));
		Standing found = new Standing(board);
		best.getPlaces().forEach((place) -> found.put(place.getTask(), place.number()));
		new Refill(found).fit();
		return found;
	}

	private static long moves(int tasks) {
		int most = Math.max(ALWAYS_MOVES, Math.min(MOST_MOVES, MOVES_TIMES_TASKS / tasks));
		return Math.max(LEAST_MOVES, Math.min(most, (long) MOVES_A_TASK * tasks));
	}

	private static SolverConfig config(long seed, long moves, Duration longest) {
		ChangeMoveSelectorConfig change = new ChangeMoveSelectorConfig();
		change.setFixedProbabilityWeight(1.0);
		SwapMoveSelectorConfig swap = new SwapMoveSelectorConfig();
		swap.setFixedProbabilityWeight(0.5);
		MoveIteratorFactoryConfig blocks = new MoveIteratorFactoryConfig()
			.withMoveIteratorFactoryClass(BlockMoves.class);
		blocks.setFixedProbabilityWeight(0.2);
		MoveIteratorFactoryConfig days = new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(DayMoves.class);
		days.setFixedProbabilityWeight(1.0);
		return new SolverConfig().withSolutionClass(Table.class)
			.withEntityClasses(TaskPlace.class)
			.withEnvironmentMode(EnvironmentMode.NO_ASSERT)
			.withRandomSeed(seed)
			.withScoreDirectorFactory(
					new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(StandingScore.class))
			.withTerminationConfig(new TerminationConfig().withMoveCountLimit(moves).withSpentLimit(longest))
			.withPhases(new LocalSearchPhaseConfig()
				.withMoveSelectorConfig(new UnionMoveSelectorConfig(List.of(change, swap, blocks, days)))
				.withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE))
				.withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
	}

}
