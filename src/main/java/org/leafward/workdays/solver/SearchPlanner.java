package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.solver.Solver;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.GreedyStart;
import org.leafward.workdays.core.board.Standing;

/** Local search from a greedy start. */
public class SearchPlanner {

	long moves = Long.getLong("moves", 400_000);

	int late = Integer.getInteger("late", 400);

	double blockWeight = Double.parseDouble(System.getProperty("bw", "0.2"));

	double dayWeight = Double.parseDouble(System.getProperty("dw", "0.001"));

	/** Solves a board; the standing given back has the best that was found. */
	public Standing solve(Board board) {
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
		Table start = new Table(places, new Table.Bench(new Standing(board)));
		Solver<Table> solver = SolverFactory.<Table>create(config(board.problem().seed())).buildSolver();
		Table best = solver.solve(start);
		Standing found = new Standing(board);
		best.getPlaces().forEach((place) -> found.put(place.getTask(), place.number()));
		return found;
	}

	private SolverConfig config(long seed) {
		ChangeMoveSelectorConfig change = new ChangeMoveSelectorConfig();
		change.setFixedProbabilityWeight(1.0);
		SwapMoveSelectorConfig swap = new SwapMoveSelectorConfig();
		swap.setFixedProbabilityWeight(0.5);
		MoveIteratorFactoryConfig blocks = new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(BlockMoves.class);
		blocks.setFixedProbabilityWeight(this.blockWeight);
		MoveIteratorFactoryConfig days = new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(DayMoves.class);
		days.setFixedProbabilityWeight(this.dayWeight);
		return new SolverConfig().withSolutionClass(Table.class)
			.withEntityClasses(TaskPlace.class)
			.withEnvironmentMode(EnvironmentMode.valueOf(System.getProperty("mode", "NO_ASSERT")))
			.withRandomSeed(seed)
			.withScoreDirectorFactory(
					new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(StandingScore.class))
			.withTerminationConfig(new TerminationConfig().withMoveCountLimit(this.moves)
				.withSpentLimit(Duration.ofSeconds(60)))
			.withPhases(new LocalSearchPhaseConfig()
				.withMoveSelectorConfig(new UnionMoveSelectorConfig(List.of(change, swap, blocks, days)))
				.withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(this.late))
				.withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
	}

}
