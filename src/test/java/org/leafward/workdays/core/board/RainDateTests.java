package org.leafward.workdays.core.board;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewRules;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.HoldOff;
import org.leafward.workdays.core.plan.Unplaced;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

/** Where work goes that was rained off, and why tasks have no day, by hand. */
class RainDateTests {

	private static final LocalDate SAT = LocalDate.of(2027, 4, 3);

	private static final List<CrewMember> THREE = List.of(new CrewMember("a", Set.of()), new CrewMember("b", Set.of()),
			new CrewMember("c", Set.of()));

	private static CrewDate date(int week) {
		return new CrewDate(SAT.plusWeeks(week), LocalTime.of(6, 0), LocalTime.of(19, 0), THREE, 1, false);
	}

	private static CrewTask task(String id, int from, int days, int minutes, int importance) {
		return new CrewTask(id, "s", "Task " + id, new DayWindow(SAT.plusDays(from), SAT.plusDays(from + days)),
				List.of(), minutes, Set.of(), Set.of(), importance, null, Set.of());
	}

	private static CrewProblem problem(List<CrewTask> tasks, List<CrewDate> dates) {
		return new CrewProblem(List.of(new CrewSite("s", "School", new GeoPoint(41, -74, 0), Set.of())), tasks, dates,
				CrewRules.usual(), Map.of(), 1);
	}

	private static CrewPlan greedy(CrewProblem problem) {
		Standing standing = new Standing(new Board(problem));
		GreedyStart.fill(standing);
		return PlanReport.of(standing);
	}

	@Test
	void mostOfTheWorkCountsMoreThanTheNearestDay() {
		List<CrewTask> tasks = List.of(task("long", 0, 14, 300, 100), task("short", 0, 7, 100, 80),
				task("now", 0, 0, 100, 60), task("later", 7, 7, 100, 30));
		assertThat(RainDate.best(problem(tasks, List.of(date(1), date(2)))))
			.contains(new RainDate(SAT.plusWeeks(1), 3));
		assertThat(RainDate.best(problem(tasks.subList(0, 3), List.of(date(1), date(2)))))
			.contains(new RainDate(SAT.plusWeeks(1), 2));
		assertThat(RainDate.best(problem(tasks, List.of(date(2))))).contains(new RainDate(SAT.plusWeeks(2), 2));
		assertThat(RainDate.best(problem(tasks, List.of(date(4))))).isEmpty();
		assertThat(RainDate.best(problem(tasks, List.of()))).isEmpty();
		assertThat(RainDate.best(problem(List.of(), List.of(date(1))))).isEmpty();
	}

	/**
	 * Of days that are as good the nearest; a small task is worth a day that takes it.
	 */
	@Test
	void theNearestOfEqualsAndNoTaskIsTooSmall() {
		assertThat(RainDate.best(problem(List.of(task("small", 0, 30, 10, 1)), List.of(date(2), date(1)))))
			.contains(new RainDate(SAT.plusWeeks(1), 1));
		assertThat(RainDate.best(problem(List.of(task("too large", 0, 30, 600, 100)), List.of(date(1))))).isEmpty();
	}

	@Test
	void whatHasNoDayIsToldItsSmallestCause() {
		CrewTask held = new CrewTask("held", "s", "Oaks", new DayWindow(SAT, SAT.plusDays(9)),
				List.of(new HoldOff(new DayWindow(SAT, SAT.plusDays(20)), "beetles fly")), 60, Set.of("saw"), Set.of(),
				90, null, Set.of());
		CrewTask saw = new CrewTask("saw", "s", "Elms", new DayWindow(SAT, SAT.plusDays(9)), List.of(), 60,
				Set.of("saw"), Set.of(), 90, null, Set.of());
		CrewTask pinned = task("pin", 0, 5, 30, 50).pinnedTo(SAT.plusWeeks(1));
		List<CrewTask> tasks = List.of(held, saw, pinned, task("between", 1, 3, 60, 50), task("large", 0, 3, 600, 90),
				task("first", 0, 3, 500, 100), task("second", 0, 3, 100, 20), task("alone", 7, 5, 60, 10));
		CrewPlan plan = greedy(problem(tasks, List.of(date(0), date(1))));
		assertThat(plan.days()).isEqualTo(Map.of("first", SAT));
		assertThat(plan.unplaced()).extracting((one) -> one.task(), (one) -> one.cause())
			.containsExactlyInAnyOrder(tuple("held", Unplaced.Cause.HELD_OFF), tuple("saw", Unplaced.Cause.SKILL),
					tuple("pin", Unplaced.Cause.NO_DATE), tuple("between", Unplaced.Cause.NO_DATE),
					tuple("large", Unplaced.Cause.TOO_LARGE), tuple("second", Unplaced.Cause.FULL),
					tuple("alone", Unplaced.Cause.NOT_WORTH_A_DAY));
		assertThat(plan.unplaced()).extracting(Unplaced::why)
			.contains("A hold-off covers Sat 3 Apr 2027: beetles fly.",
					"Nobody who is expected on Sat 3 Apr 2027 has what it needs: saw.",
					"It is pinned to Sat 10 Apr 2027, but its window is Sat 3 Apr 2027 to Thu 8 Apr 2027.",
					"No candidate date lies in its window (Sun 4 Apr 2027 to Wed 7 Apr 2027). The nearest is Sat 3 Apr 2027.",
					"It takes 600 person-minutes, and the largest team on Sat 3 Apr 2027 has 540. Divide it.",
					"The days in its window are full of work that counts for more or fits better together. It takes "
							+ "100 person-minutes; the freest team, on Sat 3 Apr 2027, has 40 left, before the way.",
					"It could be done on Sat 10 Apr 2027, but there is too little other work to call that day.");
	}

}
