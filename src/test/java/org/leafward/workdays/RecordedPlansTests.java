package org.leafward.workdays;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.workdays.CrewCases.Past;
import org.leafward.workdays.CrewCases.Shape;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.RelaxedBound;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.solver.SearchPlanner;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The recorded cases: {@code workdays/recorded.csv} is what {@code WorkdaysBenchmark}
 * wrote. The smaller ones are planned and proved anew here; all of them with
 * {@code -Dleafward.plans=all}, which takes two minutes more.
 */
class RecordedPlansTests {

	private record Line(String name, String fingerprint, long points, long bound) {
	}

	private static List<Line> lines() {
		try (InputStream in = Objects
			.requireNonNull(RecordedPlansTests.class.getResourceAsStream("/workdays/recorded.csv"))) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
				.filter((line) -> !line.startsWith("#") && !line.startsWith("case,"))
				.map((line) -> line.split(","))
				.map((cells) -> new Line(cells[0], cells[1], Long.parseLong(cells[2]), Long.parseLong(cells[3])))
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static final boolean ALL = "all".equals(System.getProperty("leafward.plans"));

	/** The aim: so much of the points that are possible at most. */
	private static final double PROOF = 0.95;

	/** How often a bound asks for prices; it ends before that when it proves enough. */
	private static final int ROUNDS = 250;

	/** Combinations of dates; where the past is no plan it takes a dozen. */
	private static final int LEAVES = 64;

	static Stream<Integer> proved() {
		return ALL ? IntStream.range(0, CrewCases.RECORDED.size()).boxed() : Stream.of(0, 1, 2, 3, 4);
	}

	/**
	 * What was recorded is about these problems, and near to what is possible. Problems
	 * whose past is a plan of a county take as long to make as that plan; they come from
	 * the same generator.
	 */
	@Test
	void theRecordIsOfTheseCases() {
		List<Line> lines = lines();
		assertThat(lines).hasSameSizeAs(CrewCases.RECORDED);
		for (int i = 0; i < lines.size(); i++) {
			Shape shape = CrewCases.RECORDED.get(i);
			if (ALL || shape.past() != Past.PLANNED || shape.tasks() <= 150) {
				assertThat(lines.get(i).fingerprint()).as(lines.get(i).name())
					.isEqualTo(CrewCases.fingerprint(CrewCases.of(shape)));
			}
			assertThat(lines.get(i).points()).isLessThanOrEqualTo(lines.get(i).bound());
			assertThat((double) lines.get(i).points()).as(lines.get(i).name())
				.isGreaterThanOrEqualTo(PROOF * lines.get(i).bound());
		}
	}

	@ParameterizedTest
	@MethodSource("proved")
	void plansAreAsNearToWhatIsPossibleAsRecorded(int which) {
		CrewProblem problem = CrewCases.of(CrewCases.RECORDED.get(which));
		CrewPlan plan = SearchPlanner.byMovesAlone(1).plan(problem);
		double bound = RelaxedBound.of(new Board(problem), CrewCases.pinsKept(problem, plan), plan.points() / PROOF,
				ROUNDS, LEAVES);
		assertThat((double) plan.points()).isBetween(PROOF * bound, bound + 1e-6);
		assertThat(plan.points()).isEqualTo(lines().get(which).points());
	}

}
