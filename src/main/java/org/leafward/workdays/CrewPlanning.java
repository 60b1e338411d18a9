package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewPlanner;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.Placed;
import org.leafward.workdays.core.plan.PlanCosts;
import org.leafward.workdays.core.plan.Stop;
import org.leafward.workdays.core.plan.TeamDay;
import org.leafward.workdays.core.plan.Unplaced;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.leafward.workdays.store.WorkdayTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Plans the workdays of a group: makes the problem of what the group told and what care
 * has dated, has it solved, and writes what came out as proposed workdays. Published and
 * locked days stay as they are, pinned tasks stay where they are.
 */
@Service
public class CrewPlanning {

	/** How far ahead a plan reaches at most, days. */
	public static final int FARTHEST = 120;

	private final Groups groups;

	private final Workdays workdays;

	private final WorkdayTable table;

	private final TaskCalendar calendar;

	private final Register register;

	private final CrewPlanner planner;

	private final Efforts efforts;

	private final OpenWork openWork;

	private final RainDates rainDates;

	private final TransactionTemplate transaction;

	private final Clock clock;

	/** The search takes a core for some seconds, so one at a time on a node. */
	private final Semaphore one = new Semaphore(1);

	CrewPlanning(Groups groups, Workdays workdays, WorkdayTable table, TaskCalendar calendar, Register register,
			CrewPlanner planner, Efforts efforts, OpenWork openWork, RainDates rainDates,
			TransactionTemplate transaction, Clock clock) {
		this.groups = groups;
		this.workdays = workdays;
		this.table = table;
		this.calendar = calendar;
		this.register = register;
		this.planner = planner;
		this.efforts = efforts;
		this.openWork = openWork;
		this.rainDates = rainDates;
		this.transaction = transaction;
		this.clock = clock;
	}

	/**
	 * Plans anew and writes the plan.
	 * @param id whose
	 * @param days how far ahead, 7 to 120 days
	 * @param mostWorkdays how many days may be called at most, 1 to 60
	 * @return how many tasks have a day, and how many have none
	 * @throws BadInput when the group has no site, a figure is out of range, or another
	 * plan is being made
	 */
	public Made plan(GroupId id, int days, int mostWorkdays) {
		Group group = this.groups.find(id).orElseThrow(() -> new BadInput("there is no such group", "group", ""));
		if (days < 7 || days > FARTHEST) {
			throw new BadInput("%d days are outside 7 to %d".formatted(days, FARTHEST), "days", "look less far ahead");
		}
		if (mostWorkdays < 1 || mostWorkdays > 60) {
			throw new BadInput("%d workdays are outside 1 to 60".formatted(mostWorkdays), "most", "call fewer");
		}
		if (group.sites().isEmpty()) {
			throw new BadInput("the group has no site yet", "site", "let an owner give it one");
		}
		if (!this.one.tryAcquire()) {
			throw new BadInput("another plan is being made", "plan", "try again in some seconds");
		}
		try {
			LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
			DayWindow window = new DayWindow(today.plusDays(1), today.plusDays(days));
			List<Workday> before = this.workdays.ofGroup(id, window, true);
			Work work = work(group, window, onTheListOf(group, today));
			CrewPlan plan = this.planner.plan(problem(group, window, before, work, mostWorkdays));
			int left = Objects.requireNonNull(this.transaction.execute((status) -> write(group, window, plan, work)));
			int placed = plan.days().size() + plan.unplaced().size() - left;
			return new Made(placed, left, plan.workdays().size());
		}
		finally {
			this.one.release();
		}
	}

	/**
	 * What came of planning.
	 *
	 * @param placed tasks that have a day
	 * @param unplaced tasks that have none
	 * @param days workdays
	 */
	public record Made(int placed, int unplaced, int days) {
	}

	/** Open tasks by identifier, with what they ask of the group. */
	record Work(Map<String, CareTask> tasks, Map<String, Efforts.Ask> efforts, Map<SiteId, List<CareTask>> all,
			Map<SiteId, Site> sites) {
	}

	/** Who plans on a workday has its tasks on the list of that day. */
	private Set<TaskId> onTheListOf(Group group, LocalDate today) {
		return this.workdays.ofGroup(group.id(), DayWindow.of(today), true)
			.stream()
			.filter((day) -> day.state() == WorkdayState.FIXED)
			.flatMap((day) -> day.tasks().stream())
			.map(WorkdayTask::task)
			.collect(Collectors.toSet());
	}

	private Work work(Group group, DayWindow window, Set<TaskId> listed) {
		List<SiteId> ids = group.sites().stream().map(GroupSite::site).toList();
		Map<SiteId, Site> sites = this.register.find(ids).stream().collect(Collectors.toMap(Site::id, (one) -> one));
		Map<PlantingId, Planting> plantings = new HashMap<>();
		this.register.plantingsOf(ids).values().forEach((all) -> all.forEach((one) -> plantings.put(one.id(), one)));
		Map<String, CareTask> tasks = new LinkedHashMap<>();
		Map<String, Efforts.Ask> efforts = new HashMap<>();
		Map<SiteId, List<CareTask>> all = new HashMap<>();
		for (SiteId id : ids) {
			List<CareTask> here = this.calendar.ofSite(id, window)
				.stream()
				.filter((task) -> task.state() == TaskState.PLANNED && !listed.contains(task.id()))
				.toList();
			all.put(id, here);
			for (CareTask task : here) {
				if (task.kind() == TaskKind.DO && tasks.size() < CrewProblem.TASKS) {
					String key = task.id().toString();
					tasks.put(key, task);
					efforts.put(key,
							this.efforts.of(task, (task.planting() != null) ? plantings.get(task.planting()) : null));
				}
			}
		}
		return new Work(tasks, efforts, all, sites);
	}

	private static boolean stays(Workday day) {
		return day.state() == WorkdayState.FIXED || (day.state() == WorkdayState.PROPOSED && day.locked());
	}

	private CrewProblem problem(Group group, DayWindow window, List<Workday> before, Work work, int mostWorkdays) {
		Map<String, LocalDate> pins = new HashMap<>();
		Map<String, LocalDate> was = new HashMap<>();
		Map<String, Integer> minutes = new HashMap<>();
		Set<LocalDate> fixed = new HashSet<>();
		for (Workday day : before) {
			boolean stays = stays(day);
			if (stays) {
				fixed.add(day.day());
			}
			if (stays || day.state() == WorkdayState.PROPOSED) {
				for (WorkdayTask task : day.tasks()) {
					String key = task.task().toString();
					was.put(key, day.day());
					minutes.put(key, task.minutes());
					if (stays || task.pinned()) {
						pins.put(key, day.day());
					}
				}
			}
		}
		List<CrewTask> tasks = new ArrayList<>();
		work.tasks().forEach((key, task) -> {
			Efforts.Ask effort = Objects.requireNonNull(work.efforts().get(key));
			LocalDate pinned = pins.get(key);
			boolean staysThere = pinned != null && fixed.contains(pinned);
			tasks.add(this.openWork.of(task, Objects.requireNonNull(work.all().get(task.site())),
					minutes.getOrDefault(key, effort.minutes()), staysThere ? Set.of() : effort.skills(),
					staysThere ? Set.of() : group.terms().few(effort.tools()), pinned, staysThere ? Set.of() : fixed));
		});
		List<CrewSite> sites = work.sites()
			.values()
			.stream()
			.map((site) -> new CrewSite(site.id().toString(), site.name(), site.point(), Set.of()))
			.toList();
		return new CrewProblem(sites, tasks, dates(group, window, fixed, Set.copyOf(pins.values()), work),
				GroupDates.rules(group, group.begins(), group.ends(), mostWorkdays, PlanCosts.USUAL), was, 1);
	}

	/**
	 * Days that stay, days of pins, and all of the pattern that leave time to call
	 * people.
	 */
	private List<CrewDate> dates(Group group, DayWindow window, Set<LocalDate> fixed, Set<LocalDate> pinned,
			Work work) {
		Optional<Site> first = work.sites().values().stream().findFirst();
		LocalDate soonest = window.from().plusDays(Math.max(0, group.terms().notice() - 1));
		List<CrewDate> dates = new ArrayList<>();
		for (LocalDate day = window.from(); !day.isAfter(window.to()); day = day.plusDays(1)) {
			boolean pattern = GroupDates.worksOn(group, day) && !day.isBefore(soonest);
			if ((pattern || fixed.contains(day) || pinned.contains(day)) && first.isPresent()
					&& dates.size() < CrewProblem.DATES) {
				dates.add(GroupDates.of(group, day, first.get().point(), fixed.contains(day)));
			}
		}
		return dates;
	}

	/** How many tasks have no day. */
	private int write(Group group, DayWindow window, CrewPlan plan, Work work) {
		Map<LocalDate, Workday> proposed = new TreeMap<>();
		Set<LocalDate> stay = new HashSet<>();
		Set<TaskId> onThem = new HashSet<>();
		Set<TaskId> pinned = new HashSet<>();
		Map<TaskId, Integer> minutes = new HashMap<>();
		for (Workday day : this.workdays.ofGroup(group.id(), window, true)) {
			if (stays(day)) {
				stay.add(day.day());
				day.tasks().forEach((task) -> onThem.add(task.task()));
			}
			else if (day.state() == WorkdayState.PROPOSED) {
				proposed.put(day.day(), day);
				day.tasks().forEach((task) -> {
					minutes.put(task.task(), task.minutes());
					if (task.pinned()) {
						pinned.add(task.task());
					}
				});
			}
		}
		Set<LocalDate> planned = new HashSet<>();
		for (org.leafward.workdays.core.plan.Workday day : plan.workdays()) {
			boolean empty = day.teams().stream().allMatch((team) -> team.stops().isEmpty());
			if (stay.contains(day.day()) || empty) {
				continue;
			}
			planned.add(day.day());
			Workday was = proposed.get(day.day());
			WorkdayId id = (was != null) ? was.id() : add(group, day.day());
			if (was != null) {
				was.tasks().forEach((task) -> this.table.removeTask(id, task.task()));
			}
			day.teams().forEach((team) -> place(id, team, work, pinned, minutes));
		}
		proposed.forEach((day, was) -> {
			if (!planned.contains(day)) {
				this.table.remove(was.id());
			}
		});
		Map<TaskId, String> left = new LinkedHashMap<>();
		for (Unplaced one : plan.unplaced()) {
			left.put(new TaskId(UUID.fromString(one.task())), one.why());
		}
		left.keySet().removeAll(onThem);
		this.table.leaveOver(group.id(), left);
		if (!planned.isEmpty()) {
			putOff(group, planned);
		}
		return left.size();
	}

	private void place(WorkdayId day, TeamDay team, Work work, Set<TaskId> pinned, Map<TaskId, Integer> minutes) {
		int number = 1;
		for (Stop stop : team.stops()) {
			for (Placed placed : stop.tasks()) {
				TaskId task = new TaskId(UUID.fromString(placed.task()));
				int effort = minutes.getOrDefault(task,
						Objects.requireNonNull(work.efforts().get(placed.task())).minutes());
				this.table.put(day, new WorkdayTask(task, new SiteId(UUID.fromString(stop.site())), effort,
						pinned.contains(task), placed.why(), team.number(), number, false));
			}
			number++;
		}
	}

	/** Says where each planned day goes when the weather forbids it. */
	private void putOff(Group group, Set<LocalDate> planned) {
		DayWindow all = new DayWindow(Collections.min(planned), Collections.max(planned));
		List<Workday> days = this.workdays.ofGroup(group.id(), all, true)
			.stream()
			.filter((day) -> day.state() == WorkdayState.PROPOSED && !day.locked())
			.toList();
		days.forEach((day) -> this.table.rainDay(day.id(), null));
		days.forEach((day) -> this.table.rainDay(day.id(),
				this.rainDates.propose(day).map(RainDates.Proposal::day).orElse(null)));
	}

	private WorkdayId add(Group group, LocalDate day) {
		Instant now = this.clock.instant();
		WorkdayId id = new WorkdayId(UUID.randomUUID());
		this.table.put(new DayRow(id, group.id(), group.name(), day, group.begins(), group.ends(), group.zone(),
				group.meetingPoint(), group.capacity(), WorkdayState.PROPOSED, 0, false, null, null, null, null, now,
				now, 0, 0));
		return id;
	}

}
