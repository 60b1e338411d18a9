package org.leafward.workdays.solver;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.workdays.CrewCases;
import org.leafward.workdays.CrewCases.Past;
import org.leafward.workdays.CrewCases.Shape;
import org.leafward.workdays.NaiveWorth;
import org.leafward.workdays.NaiveWorth.Outing;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.RelaxedBound;
import org.leafward.workdays.core.board.TeamSplit;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.Placed;
import org.leafward.workdays.core.plan.Stop;
import org.leafward.workdays.core.plan.TeamDay;
import org.leafward.workdays.core.plan.Unplaced;
import org.leafward.workdays.core.plan.Workday;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Plans against {@link NaiveWorth}, which works everything out from the problem's own
 * words, and small ones against all plans that there are.
 */
class SearchPlannerTests {

	private final SearchPlanner planner = SearchPlanner.byMovesAlone(1);

	/** One of each size, every second with a past. */
	@ParameterizedTest
	@ValueSource(longs = { 102, 103, 104, 105, 106, 107 })
	void keepsToWhatIsAllowed(long seed) {
		int size = (int) (seed % 6);
		CrewProblem problem = CrewCases
			.of(new Shape("random " + seed, 1 + 2 * size, 8 + 15 * size, 3 + 2 * size, 5 + 6 * size,
					30 + (int) (seed % 50), 1 + (int) (seed % 3), seed, (seed % 2 == 0) ? Past.CHANCE : Past.NONE));
		CrewPlan plan = this.planner.plan(problem);
		check(problem, plan);
		assertThat(RelaxedBound.of(new Board(problem), CrewCases.pinsKept(problem, plan), 0, 60, 4))
			.as("no plan exceeds the bound")
			.isGreaterThanOrEqualTo(plan.points() - 1e-6);
	}

	private static void check(CrewProblem problem, CrewPlan plan) {
		Map<String, CrewTask> tasks = problem.tasks()
			.stream()
			.collect(Collectors.toMap(CrewTask::id, Function.identity()));
		Map<LocalDate, CrewDate> dates = problem.dates()
			.stream()
			.collect(Collectors.toMap(CrewDate::day, Function.identity()));
		NaiveWorth worth = new NaiveWorth(problem);
		List<Outing> outings = new ArrayList<>();
		Set<String> once = new HashSet<>();
		for (Workday workday : plan.workdays()) {
			Set<String> busy = new HashSet<>();
			Map<String, CrewMember> crew = dates.get(workday.day())
				.crew()
				.stream()
				.collect(Collectors.toMap(CrewMember::id, Function.identity()));
			assertThat(workday.why()).endsWith(".");
			for (TeamDay team : workday.teams()) {
				assertThat(team.members()).allMatch(busy::add, "in one team of " + workday.day())
					.allMatch(crew::containsKey);
				List<CrewTask> done = new ArrayList<>();
				for (Stop stop : team.stops()) {
					for (Placed placed : stop.tasks()) {
						assertThat(once.add(placed.task())).isTrue();
						assertThat(placed.why()).endsWith(".").doesNotContain("null");
						assertThat(tasks.get(placed.task()).site()).isEqualTo(stop.site());
						done.add(tasks.get(placed.task()));
					}
				}
				assertThat(team.freePersonMinutes()).isNotNegative();
				Outing outing = new Outing(workday.day(), team.members().stream().map(crew::get).toList(), done);
				if (!done.isEmpty()) {
					assertThat(worth.broken(outing)).isEmpty();
				}
				outings.add(outing);
			}
		}
		for (Unplaced unplaced : plan.unplaced()) {
			assertThat(once.add(unplaced.task())).isTrue();
			assertThat(unplaced.why()).endsWith(".").doesNotContain("null");
		}
		assertThat(once).hasSameSizeAs(problem.tasks());
		assertThat(worth.points(outings)).hasValue(plan.points());
		assertThat(plan.workdays().stream().map(Workday::day))
			.containsAll(problem.dates().stream().filter(CrewDate::locked).map(CrewDate::day).toList());
	}

	/** Problems of up to three sites against each plan that there is. */
	@Test
	void findsTheBestOfAllPlansWhenThereAreFew() {
		for (long seed = 1; seed <= 24; seed++) {
			CrewProblem problem = CrewCases
				.of(new Shape("small " + seed, 1 + (int) (seed % 3), 6, 3, 6 + (int) (seed % 3), 70,
						1 + (int) (seed % 2), 1000 + seed, (seed % 4 == 0) ? Past.CHANCE : Past.NONE));
			long best = Everything.best(problem);
			CrewPlan plan = this.planner.plan(problem);
			assertThat(plan.points()).as("seed %d", seed).isEqualTo(best);
			// The proof of other cases is worth something only if it never excludes a
			// plan.
			assertThat(RelaxedBound.of(new Board(problem), CrewCases.pinsKept(problem, plan), 0, 80, 16))
				.as("bound of seed %d", seed)
				.isGreaterThanOrEqualTo(best - 1e-6);
		}
	}

	/** All ways to put each task into a team or nowhere. */
	private static final class Everything {

		private final NaiveWorth worth;

		private final List<Outing> outings = new ArrayList<>();

		private final List<CrewTask> tasks;

		private final int pins;

		private long best = Long.MIN_VALUE;

		private int kept = -1;

		private Everything(CrewProblem problem) {
			this.worth = new NaiveWorth(problem);
			this.tasks = problem.tasks();
			this.pins = (int) this.tasks.stream().filter((task) -> task.pinned() != null).count();
			for (CrewDate date : problem.dates()) {
				TeamSplit.of(date, problem.rules().everyTeam())
					.forEach((team) -> this.outings.add(new Outing(date.day(), team, new ArrayList<>())));
			}
		}

		static long best(CrewProblem problem) {
			Everything all = new Everything(problem);
			all.place(0, 0);
			return all.best;
		}

		/** Pins come before points, as the coordinator has the last word. */
		private void place(int task, int pinned) {
			if (task == this.tasks.size()) {
				if (pinned >= this.kept) {
					this.worth.points(this.outings).ifPresent((points) -> {
						this.best = (pinned > this.kept) ? points : Math.max(this.best, points);
						this.kept = pinned;
					});
				}
				return;
			}
			CrewTask one = this.tasks.get(task);
			place(task + 1, pinned);
			for (Outing outing : this.outings) {
				if (this.worth.broken(new Outing(outing.day(), outing.team(), List.of(one))).isEmpty()) {
					outing.tasks().add(one);
					place(task + 1, pinned + ((one.pinned() != null) ? 1 : 0));
					outing.tasks().remove(one);
				}
			}
		}

	}

	@Test
	void theSameProblemHasTheSamePlan() {
		CrewProblem problem = CrewCases.of(CrewCases.RECORDED.get(2));
		assertThat(SearchPlanner.byMovesAlone(1).plan(problem)).isEqualTo(this.planner.plan(problem));
	}

	/** A pin moves what it must and no more. */
	@Test
	void replanningChangesLittle() {
		CrewProblem problem = CrewCases.of(CrewCases.RECORDED.get(2));
		Map<String, LocalDate> before = this.planner.plan(problem).days();
		CrewTask pinned = problem.tasks()
			.stream()
			.filter((task) -> before.containsKey(task.id()) && otherDay(problem, task, before) != null)
			.findFirst()
			.orElseThrow();
		LocalDate wanted = otherDay(problem, pinned, before);
		List<CrewTask> tasks = problem.tasks()
			.stream()
			.map((task) -> task.equals(pinned) ? task.pinnedTo(wanted) : task)
			.toList();
		CrewProblem again = new CrewProblem(problem.sites(), tasks, problem.dates(), problem.rules(), before, 77);
		CrewPlan plan = this.planner.plan(again);
		check(again, plan);
		Map<String, LocalDate> after = plan.days();
		assertThat(after).containsEntry(pinned.id(), wanted);
		Map<String, LocalDate> same = new HashMap<>(before);
		same.entrySet().removeIf((one) -> !one.getValue().equals(after.get(one.getKey())));
		assertThat(same.size()).isGreaterThanOrEqualTo(before.size() * 9 / 10);
	}

	private static LocalDate otherDay(CrewProblem problem, CrewTask task, Map<String, LocalDate> before) {
		return before.values()
			.stream()
			.sorted()
			.filter((day) -> !day.equals(before.get(task.id())) && task.window().contains(day)
					&& task.heldOff(day) == null && task.skills().isEmpty() && task.tools().equals(Set.of("gloves"))
					&& problem.sites().stream().noneMatch((site) -> site.closed().contains(day)))
			.findFirst()
			.orElse(null);
	}

}
