package org.leafward.workdays;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.workdays.core.board.RainDate;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.PlanCosts;
import org.springframework.stereotype.Service;

/**
 * Where a workday goes when the weather forbids it: one of the group's weekdays on which
 * nothing else stands, with the most of its work still in time and hands for it.
 */
@Service
public class RainDates {

	/** How long after a workday its rain date lies at most, days. */
	public static final int WITHIN = 28;

	/** A date is there or not; only the way counts against it. */
	private static final PlanCosts COSTS = new PlanCosts(0, 0, PlanCosts.USUAL.travelMinute(), 0, 0);

	private final Groups groups;

	private final Workdays workdays;

	private final TaskCalendar calendar;

	private final Register register;

	private final Efforts efforts;

	private final OpenWork openWork;

	private final Clock clock;

	RainDates(Groups groups, Workdays workdays, TaskCalendar calendar, Register register, Efforts efforts,
			OpenWork openWork, Clock clock) {
		this.groups = groups;
		this.workdays = workdays;
		this.calendar = calendar;
		this.register = register;
		this.efforts = efforts;
		this.openWork = openWork;
		this.clock = clock;
	}

	/**
	 * Where a workday can go.
	 *
	 * @param day the date
	 * @param tasks how many of its open tasks can be done then, 1 and up
	 */
	public record Proposal(LocalDate day, int tasks) {
	}

	/**
	 * Proposes a rain date.
	 * @param day a workday
	 * @return empty when none of its tasks can be done on another day that is free
	 */
	public Optional<Proposal> propose(Workday day) {
		Group group = this.groups.find(day.group()).orElseThrow();
		List<Workday> others = others(day.group(), day.id(), after(day));
		Set<LocalDate> taken = others.stream().map(Workday::day).collect(Collectors.toSet());
		Set<LocalDate> promised = new HashSet<>();
		DayWindow around = new DayWindow(day.day().minusDays(WITHIN), day.day().plusDays(WITHIN));
		others(day.group(), day.id(), around).stream()
			.map(Workday::rainDay)
			.filter(Objects::nonNull)
			.forEach(promised::add);
		Optional<RainDate> best = propose(group, day, (date) -> !taken.contains(date) && !promised.contains(date));
		return best.or(() -> propose(group, day, (date) -> !taken.contains(date)))
			.map((rain) -> new Proposal(rain.day(), rain.tasks()));
	}

	/**
	 * Whether another workday of the group stands on the rain date of one.
	 * @param day a workday
	 * @return false when it has no rain date
	 */
	public boolean taken(Workday day) {
		LocalDate rain = day.rainDay();
		return rain != null && taken(day.group(), day.id(), rain);
	}

	boolean taken(GroupId group, WorkdayId day, LocalDate rain) {
		return !others(group, day, DayWindow.of(rain)).isEmpty();
	}

	private List<Workday> others(GroupId group, WorkdayId day, DayWindow window) {
		return this.workdays.ofGroup(group, window, true)
			.stream()
			.filter((one) -> !one.id().equals(day)
					&& (one.state() == WorkdayState.PROPOSED || one.state() == WorkdayState.FIXED))
			.toList();
	}

	private static DayWindow after(Workday day) {
		return new DayWindow(day.day().plusDays(1), day.day().plusDays(WITHIN));
	}

	private Optional<RainDate> propose(Group group, Workday day, Predicate<LocalDate> free) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
		List<WorkdayTask> open = day.tasks().stream().filter((one) -> !one.done()).toList();
		Map<TaskId, CareTask> known = this.calendar.find(open.stream().map(WorkdayTask::task).toList());
		List<Site> sites = this.register.find(open.stream().map(WorkdayTask::site).distinct().toList());
		if (sites.isEmpty()) {
			return Optional.empty();
		}
		List<CrewDate> dates = after(day).from()
			.datesUntil(after(day).to().plusDays(1))
			.filter((date) -> date.isAfter(today) && GroupDates.worksOn(group, date) && free.test(date))
			.map((date) -> GroupDates.of(group, date, sites.get(0).point(), false))
			.toList();
		Map<SiteId, List<CareTask>> all = new HashMap<>();
		sites.forEach((site) -> all.put(site.id(), this.calendar.ofSite(site.id(), after(day))));
		List<CrewTask> tasks = new ArrayList<>();
		for (WorkdayTask one : open) {
			CareTask task = known.get(one.task());
			Collection<CareTask> there = all.get(one.site());
			if (task != null && there != null && task.state() == TaskState.PLANNED) {
				Efforts.Ask ask = this.efforts.of(task, null);
				tasks.add(this.openWork.of(task, List.copyOf(there), one.minutes(), ask.skills(),
						group.terms().few(ask.tools()), null, Set.of()));
			}
		}
		return RainDate.best(new CrewProblem(
				sites.stream()
					.map((site) -> new CrewSite(site.id().toString(), site.name(), site.point(), Set.of()))
					.toList(),
				tasks, dates, GroupDates.rules(group, day.begins(), day.ends(), dates.size(), COSTS), Map.of(), 1));
	}

}
