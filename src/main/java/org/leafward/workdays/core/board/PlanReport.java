package org.leafward.workdays.core.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.leafward.measure.DayWords;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.Placed;
import org.leafward.workdays.core.plan.Stop;
import org.leafward.workdays.core.plan.TeamDay;
import org.leafward.workdays.core.plan.Unplaced;
import org.leafward.workdays.core.plan.Workday;

/** A filled board as a plan with words. */
public final class PlanReport {

	private final Standing standing;

	private final Board board;

	private final List<List<Integer>> inSlot = new ArrayList<>();

	private PlanReport(Standing standing) {
		this.standing = standing;
		this.board = standing.board();
		this.board.slots().forEach((slot) -> this.inSlot.add(new ArrayList<>()));
		for (int task = 0; task < this.board.tasks(); task++) {
			if (standing.slotOf(task) >= 0) {
				this.inSlot.get(standing.slotOf(task)).add(task);
			}
		}
		this.inSlot.forEach((tasks) -> tasks.sort(byImportance()));
	}

	private Comparator<Integer> byImportance() {
		return Comparator.comparingInt((Integer task) -> -this.board.task(task).importance())
			.thenComparing(Comparator.naturalOrder());
	}

	/**
	 * The plan.
	 * @param standing a board on which nothing is too much
	 * @return days, teams, ways, and what has no day
	 * @throws IllegalStateException when something is too much
	 */
	public static CrewPlan of(Standing standing) {
		if (standing.overload() > 0) {
			throw new IllegalStateException(
					"the plan asks for %d person-minutes too many".formatted(standing.overload()));
		}
		PlanReport report = new PlanReport(standing);
		List<Workday> days = new ArrayList<>();
		for (int date = 0; date < report.board.dates(); date++) {
			if (standing.teamsOut(date) > 0 || report.board.date(date).locked()) {
				days.add(report.day(date));
			}
		}
		WhyNot whyNot = new WhyNot(standing);
		List<Unplaced> unplaced = new ArrayList<>();
		List<Integer> all = new ArrayList<>();
		for (int task = 0; task < report.board.tasks(); task++) {
			all.add(task);
		}
		all.sort(report.byImportance());
		all.stream().filter((task) -> standing.slotOf(task) < 0).forEach((task) -> unplaced.add(whyNot.of(task)));
		return new CrewPlan(days, unplaced, standing.points());
	}

	private Workday day(int date) {
		List<TeamDay> teams = new ArrayList<>();
		List<Integer> tasks = new ArrayList<>();
		for (Slot slot : this.board.slotsOn(date)) {
			teams.add(team(slot));
			tasks.addAll(this.inSlot.get(slot.number()));
		}
		return new Workday(this.board.date(date).day(), teams, why(date, tasks));
	}

	private String why(int date, List<Integer> tasks) {
		String locked = this.board.date(date).locked() ? "Locked, so it takes place. " : "";
		if (tasks.isEmpty()) {
			return locked + "No task falls on it.";
		}
		tasks.sort(byImportance());
		long sites = tasks.stream().mapToInt(this.board::siteOf).distinct().count();
		long only = tasks.stream().filter((task) -> dates(task) == 1).count();
		return locked + "%s at %s, first of all \u201c%s\u201d%s.".formatted(count(tasks.size(), "task"),
				count(sites, "site"), this.board.task(tasks.get(0)).title(),
				(only > 0) ? "; for %d of them it is the only day".formatted(only) : "");
	}

	private TeamDay team(Slot slot) {
		int number = slot.number();
		int[] sites = this.standing.stops(number);
		Arrays.sort(sites);
		int[] order = this.board.tours().order(sites, sites.length);
		List<Stop> stops = new ArrayList<>();
		for (int i = 0; i < order.length; i++) {
			int site = order[i];
			stops.add(new Stop(this.board.problem().sites().get(site).id(),
					(i > 0) ? this.board.tours().between(order[i - 1], site) : 0,
					this.inSlot.get(number)
						.stream()
						.filter((task) -> this.board.siteOf(task) == site)
						.map((task) -> new Placed(this.board.task(task).id(), why(task, slot)))
						.toList()));
		}
		int effort = this.inSlot.get(number).stream().mapToInt((task) -> this.board.task(task).personMinutes()).sum();
		int free = slot.people() * (slot.minutes() - this.standing.travel(number)) - effort;
		return new TeamDay(slot.team() + 1, slot.members().stream().map(CrewMember::id).toList(), stops, effort, free);
	}

	private String why(int task, Slot slot) {
		LocalDate day = this.board.date(slot.date()).day();
		int before = this.board.before(task);
		String stood = (before < 0) ? "" : (before == slot.date()) ? " It stays where it was."
				: " It stood on %s before.".formatted(DayWords.of(this.board.date(before).day()));
		String window = DayWords.of(this.board.task(task).window());
		if (this.board.task(task).pinned() != null) {
			return "Pinned to %s, which lies in its window (%s).".formatted(DayWords.of(day), window);
		}
		int dates = dates(task);
		if (dates == 1) {
			return "%s is the only day on which it can be done in its window (%s).%s".formatted(DayWords.of(day),
					window, stood);
		}
		long beside = this.inSlot.get(slot.number())
			.stream()
			.filter((other) -> other != task && this.board.siteOf(other) == this.board.siteOf(task))
			.count();
		String site = this.board.problem().sites().get(this.board.siteOf(task)).name();
		return "Its window (%s) has %d possible days; on this one a team is at %s %s.%s".formatted(window, dates, site,
				(beside > 0) ? "for " + count(beside, "other task") + " as well" : "and has the time", stood);
	}

	private int dates(int task) {
		int dates = 0;
		int last = -1;
		for (int slot : this.board.admission(task).slots()) {
			int date = this.board.slots().get(slot).date();
			dates += (date != last) ? 1 : 0;
			last = date;
		}
		return dates;
	}

	private static String count(long number, String what) {
		return (number == 1) ? "one " + what : number + " " + what + "s";
	}

}
