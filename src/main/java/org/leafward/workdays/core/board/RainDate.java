package org.leafward.workdays.core.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leafward.measure.DayWords;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.Stop;
import org.leafward.workdays.core.plan.TeamDay;
import org.leafward.workdays.core.plan.Workday;

/**
 * Where the work of a workday goes that can't take place: the candidate date on which
 * most of it, by importance, still lies in its window and fits, by the rules of the plan.
 * All other days stay as they are.
 *
 * @param day the date
 * @param moved identifiers of tasks that can be done there
 * @param left identifiers of those that can't
 * @param why a sentence
 */
public record RainDate(LocalDate day, List<String> moved, List<String> left, String why) {

	public RainDate {
		moved = List.copyOf(moved);
		left = List.copyOf(left);
	}

	/**
	 * The best other date.
	 * @param problem what the plan was made from, with the crews of today
	 * @param plan the plan
	 * @param off the day that doesn't take place
	 * @param earliest the first day that can still be called
	 * @return empty when no other date can take any of its tasks
	 */
	public static Optional<RainDate> best(CrewProblem problem, CrewPlan plan, LocalDate off, LocalDate earliest) {
		Map<String, LocalDate> days = plan.days();
		List<CrewTask> tasks = problem.tasks()
			.stream()
			.filter((task) -> days.containsKey(task.id()))
			.map((task) -> task.pinnedTo(null))
			.toList();
		Board board = new Board(
				new CrewProblem(problem.sites(), tasks, problem.dates(), problem.rules(), Map.of(), problem.seed()));
		Standing standing = new Standing(board);
		keep(standing, plan, off);
		List<Integer> homeless = new ArrayList<>();
		for (int task = 0; task < board.tasks(); task++) {
			if (off.equals(days.get(board.task(task).id()))) {
				homeless.add(task);
			}
		}
		Refill refill = new Refill(standing);
		RainDate best = null;
		long most = 0;
		for (int date = 0; date < board.dates(); date++) {
			LocalDate day = board.date(date).day();
			if (!day.equals(off) && !day.isBefore(earliest)) {
				int[] before = standing.slots();
				refill.date(date, () -> 1);
				long gained = homeless.stream()
					.filter((task) -> standing.slotOf(task) >= 0)
					.mapToLong(board::value)
					.sum();
				if (gained > most) {
					most = gained;
					best = of(standing, homeless, day);
				}
				for (int task = 0; task < before.length; task++) {
					standing.put(task, before[task]);
				}
			}
		}
		return Optional.ofNullable(best);
	}

	/**
	 * Puts tasks of other days where the plan has them, as far as crews still allow it.
	 */
	private static void keep(Standing standing, CrewPlan plan, LocalDate off) {
		Board board = standing.board();
		Map<String, Integer> numbers = new HashMap<>();
		for (int task = 0; task < board.tasks(); task++) {
			numbers.put(board.task(task).id(), task);
		}
		for (Workday workday : plan.workdays()) {
			for (TeamDay team : workday.teams()) {
				for (Stop stop : workday.day().equals(off) ? List.<Stop>of() : team.stops()) {
					stop.tasks().forEach((placed) -> {
						int task = numbers.getOrDefault(placed.task(), -1);
						for (int slot : (task < 0) ? new int[0] : board.admission(task).slots()) {
							Slot there = board.slots().get(slot);
							if (there.team() + 1 == team.number()
									&& board.date(there.date()).day().equals(workday.day())) {
								standing.put(task, slot);
							}
						}
					});
				}
			}
		}
	}

	private static RainDate of(Standing standing, List<Integer> homeless, LocalDate day) {
		Map<Boolean, List<String>> sides = homeless.stream()
			.collect(Collectors.partitioningBy((task) -> standing.slotOf(task) >= 0,
					Collectors.mapping((task) -> standing.board().task(task).id(), Collectors.toList())));
		List<String> moved = sides.getOrDefault(true, List.of());
		List<String> left = sides.getOrDefault(false, List.of());
		String rest = left.isEmpty() ? "" : "; %d would be left over".formatted(left.size());
		return new RainDate(day, moved, left, "On %s %d of the %d tasks lie in their windows and fit%s."
			.formatted(DayWords.of(day), moved.size(), homeless.size(), rest));
	}

}
