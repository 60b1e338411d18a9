package org.leafward.workdays;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.RelaxedBound;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.solver.SearchPlanner;

/**
 * Plans the recorded cases and proves how good the plans are; writes the lines of
 * {@code workdays/recorded.csv}. Arguments: how often a bound asks for prices (250),
 * combinations of dates (16).
 */
public final class WorkdaysBenchmark {

	private WorkdaysBenchmark() {
	}

	public static void main(String[] arguments) {
		int rounds = (arguments.length > 0) ? Integer.parseInt(arguments[0]) : 250;
		int leaves = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 16;
		SearchPlanner.byMovesAlone(1).plan(CrewCases.of(CrewCases.RECORDED.get(0)));
		System.out.println("case,crc32,points,bound,gap_pct,days,placed,tasks,wall_s,cpu_s");
		for (CrewCases.Shape shape : CrewCases.RECORDED) {
			CrewProblem problem = CrewCases.of(shape);
			long wall = System.nanoTime();
			long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
			CrewPlan plan = SearchPlanner.byMovesAlone(1).plan(problem);
			double wallSeconds = (System.nanoTime() - wall) / 1e9;
			double cpuSeconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e9;
			double bound = RelaxedBound.of(new Board(problem), CrewCases.pinsKept(problem, plan), 0,
					rounds, leaves);
			System.out.println(String.format(Locale.ROOT, "%s,%s,%d,%.0f,%.2f,%d,%d,%d,%.1f,%.1f",
					shape.name().replace(",", ""), CrewCases.fingerprint(problem), plan.points(), Math.floor(bound + 1e-6),
					100 * (bound - plan.points()) / bound, plan.workdays().size(), plan.days().size(), shape.tasks(),
					wallSeconds, cpuSeconds));
		}
	}

}
