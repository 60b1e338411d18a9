package org.leafward.workdays.core.board;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewRules;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.PlanCosts;

/**
 * A problem as numbers: tasks, sites, dates and slots are counted from 0. Dates are in
 * order.
 */
public final class Board {

	private final CrewProblem problem;

	private final List<CrewDate> dates;

	private final List<Slot> slots = new ArrayList<>();

	private final List<List<Slot>> slotsOn = new ArrayList<>();

	private final Tours tours;

	private final List<Set<String>> kinds;

	private final List<String> scarce;

	private final int[] tools;

	private final int[] site;

	private final int[] kind;

	private final int[] before;

	private final int[] toolsOf;

	private final List<Admission> admissions = new ArrayList<>();

	private final boolean[] planned;

	private final int mostDates;

	/**
	 * Reads a problem.
	 * @param problem the problem
	 * @throws IllegalArgumentException with more than {@link SkillMinutes#KINDS}
	 * combinations of skills, or 31 scarce tools
	 */
	public Board(CrewProblem problem) {
		this.problem = problem;
		this.dates = problem.dates().stream().sorted(Comparator.comparing(CrewDate::day)).toList();
		this.tours = new Tours(problem.sites(), problem.rules().travel());
		this.kinds = problem.tasks()
			.stream()
			.map(CrewTask::skills)
			.distinct()
			.sorted(Comparator.comparing((Set<String> one) -> one.stream().sorted().toList().toString()))
			.toList();
		if (this.kinds.size() > SkillMinutes.KINDS) {
			throw new IllegalArgumentException(
					"%d combinations of skills are more than %d".formatted(this.kinds.size(), SkillMinutes.KINDS));
		}
		this.scarce = problem.rules().tools().keySet().stream().sorted().toList();
		if (this.scarce.size() > 31) {
			throw new IllegalArgumentException("more than 31 scarce tools");
		}
		this.tools = this.scarce.stream().mapToInt((tool) -> problem.rules().tools().get(tool)).toArray();
		makeSlots();
		int count = problem.tasks().size();
		this.site = new int[count];
		this.kind = new int[count];
		this.before = new int[count];
		this.toolsOf = new int[count];
		this.planned = new boolean[this.dates.size()];
		this.mostDates = Math.max((int) this.dates.stream().filter(CrewDate::locked).count(),
				problem.rules().mostWorkdays());
		readTasks();
	}

	private void makeSlots() {
		CrewRules rules = this.problem.rules();
		for (int date = 0; date < this.dates.size(); date++) {
			CrewDate day = this.dates.get(date);
			List<Slot> here = new ArrayList<>();
			int minutes = minutes(day, rules);
			List<List<CrewMember>> teams = (minutes > 0) ? TeamSplit.of(day, rules.everyTeam()) : List.of();
			for (int team = 0; team < teams.size(); team++) {
				here.add(new Slot(this.slots.size() + here.size(), date, team, List.copyOf(teams.get(team)), minutes,
						SkillMinutes.of(teams.get(team), this.kinds)));
			}
			this.slots.addAll(here);
			this.slotsOn.add(List.copyOf(here));
		}
	}

	/**
	 * Minutes of a workday that have light.
	 * @param date the day
	 * @param rules when people meet, and for how long
	 * @return 0 and up
	 */
	static int minutes(CrewDate date, CrewRules rules) {
		LocalTime from = rules.begins().isBefore(date.sunrise()) ? date.sunrise() : rules.begins();
		Duration light = Duration.between(from, date.sunset());
		Duration wanted = Duration.ofMinutes(rules.minutes()).minus(Duration.between(rules.begins(), from));
		return (int) Math.max(0, Math.min(light.toMinutes(), wanted.toMinutes()));
	}

	private void readTasks() {
		Map<String, Integer> sites = new HashMap<>();
		for (CrewSite one : this.problem.sites()) {
			sites.put(one.id(), sites.size());
		}
		Map<LocalDate, Integer> days = new HashMap<>();
		this.dates.forEach((date) -> days.put(date.day(), days.size()));
		for (int task = 0; task < this.site.length; task++) {
			CrewTask one = this.problem.tasks().get(task);
			this.site[task] = Objects.requireNonNull(sites.get(one.site()));
			this.kind[task] = this.kinds.indexOf(one.skills());
			LocalDate stood = this.problem.before().get(one.id());
			this.before[task] = (stood != null) ? days.getOrDefault(stood, -1) : -1;
			for (String tool : one.tools()) {
				int number = this.scarce.indexOf(tool);
				this.toolsOf[task] |= (number >= 0) ? 1 << number : 0;
			}
			this.admissions.add(Admission.of(one, this.problem.sites().get(this.site[task]), this.kind[task],
					this.dates, this.slots, this.problem.rules().tools()));
		}
		Set<LocalDate> called = new HashSet<>(this.problem.before().values());
		for (int date = 0; date < this.planned.length; date++) {
			this.planned[date] = called.isEmpty() || called.contains(this.dates.get(date).day());
		}
	}

	public CrewProblem problem() {
		return this.problem;
	}

	/**
	 * How many tasks there are.
	 * @return 0 and up
	 */
	public int tasks() {
		return this.site.length;
	}

	public CrewTask task(int task) {
		return this.problem.tasks().get(task);
	}

	public CrewDate date(int date) {
		return this.dates.get(date);
	}

	/**
	 * How many dates there are.
	 * @return 0 and up
	 */
	public int dates() {
		return this.dates.size();
	}

	public List<Slot> slots() {
		return this.slots;
	}

	public List<Slot> slotsOn(int date) {
		return this.slotsOn.get(date);
	}

	public Tours tours() {
		return this.tours;
	}

	public int siteOf(int task) {
		return this.site[task];
	}

	public int kindOf(int task) {
		return this.kind[task];
	}

	/**
	 * How many kinds of tasks there are, by the skills that they need.
	 * @return 1 and up, or 0 without tasks
	 */
	public int kinds() {
		return this.kinds.size();
	}

	/**
	 * The scarce tools of a task.
	 * @param task number of the task
	 * @return a bit for each
	 */
	public int toolsOf(int task) {
		return this.toolsOf[task];
	}

	/**
	 * How many teams can have each scarce tool.
	 * @return by the number of the tool
	 */
	public int[] tools() {
		return this.tools.clone();
	}

	public Admission admission(int task) {
		return this.admissions.get(task);
	}

	/**
	 * What a task earns.
	 * @param task number of the task
	 * @return points
	 */
	public int value(int task) {
		return PlanCosts.IMPORTANCE * task(task).importance();
	}

	/**
	 * What it costs to have a task there.
	 * @param task number of the task
	 * @param slot a slot; -1 for nowhere
	 * @return points, when it stood elsewhere before
	 */
	public int moved(int task, int slot) {
		return (this.before[task] >= 0 && (slot < 0 || this.slots.get(slot).date() != this.before[task]))
				? this.problem.rules().costs().moved() : 0;
	}

	/**
	 * The date on which a task stood before.
	 * @param task number of the task
	 * @return its number; -1 for none
	 */
	public int before(int task) {
		return this.before[task];
	}

	/**
	 * What it costs to call a date.
	 * @param date number of the date
	 * @return points; none for a locked one
	 */
	public int dateCost(int date) {
		PlanCosts costs = this.problem.rules().costs();
		return this.dates.get(date).locked() ? 0 : costs.workday() + (this.planned[date] ? 0 : costs.newDay());
	}

	/**
	 * How many dates may be called.
	 * @return the rule, or as many as are locked if that is more
	 */
	public int mostDates() {
		return this.mostDates;
	}

}
