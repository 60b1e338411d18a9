package org.leafward.workdays.core.board;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.workdays.core.plan.CrewProblem;

/**
 * Where the work of a workday goes that can't take place: the date on which most of it,
 * by importance, still lies in its window and fits, by the rules of a plan.
 *
 * @param day the date
 * @param tasks how many of the tasks can be done there, 1 and up
 */
public record RainDate(LocalDate day, int tasks) {

	/**
	 * The best date, the nearest of those that are as good.
	 * @param problem the tasks of the day that can't take place, and the dates on which
	 * nothing stands yet
	 * @return empty when none of them can take any of the tasks
	 */
	public static Optional<RainDate> best(CrewProblem problem) {
		Board board = new Board(problem);
		Standing standing = new Standing(board);
		Refill refill = new Refill(standing);
		RainDate best = null;
		long most = 0;
		for (int date = 0; date < board.dates(); date++) {
			refill.date(date, () -> 1);
			long gained = 0;
			int tasks = 0;
			for (int task = 0; task < board.tasks(); task++) {
				gained += (standing.slotOf(task) >= 0) ? board.value(task) : 0;
				tasks += (standing.slotOf(task) >= 0) ? 1 : 0;
			}
			if (gained > most) {
				most = gained;
				best = new RainDate(board.date(date).day(), tasks);
			}
			standing.clear();
		}
		return Optional.ofNullable(best);
	}

}
