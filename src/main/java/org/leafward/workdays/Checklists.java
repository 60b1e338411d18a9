package org.leafward.workdays;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.measure.BadInput;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.workdays.core.list.Checklist;
import org.leafward.workdays.core.list.Checklist.Thing;
import org.leafward.workdays.core.list.Sketch;
import org.leafward.workdays.store.StopTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lists of what is to be done at each site of a workday. */
@Service
public class Checklists {

	private final TaskCalendar calendar;

	private final Register register;

	private final Groups groups;

	private final StopTable stops;

	private final Efforts efforts;

	Checklists(TaskCalendar calendar, Register register, Groups groups, StopTable stops, Efforts efforts) {
		this.calendar = calendar;
		this.register = register;
		this.groups = groups;
		this.stops = stops;
		this.efforts = efforts;
	}

	/**
	 * The lists of a workday, one for each team at each site, in the order of the day.
	 * @param workday which
	 * @return empty when nothing is to be done
	 */
	public List<Checklist> of(Workday workday) {
		Map<TaskId, CareTask> tasks = this.calendar.find(workday.tasks().stream().map(WorkdayTask::task).toList());
		Map<SiteId, GroupSite> sites = new LinkedHashMap<>();
		this.groups.find(workday.group())
			.ifPresent((group) -> group.sites().forEach((one) -> sites.put(one.site(), one)));
		record Part(int team, int stop, SiteId site) {
		}
		Map<Part, List<WorkdayTask>> parts = new LinkedHashMap<>();
		workday.tasks()
			.stream()
			.sorted(Comparator.comparingInt(WorkdayTask::team).thenComparingInt(WorkdayTask::stop))
			.forEach((one) -> parts
				.computeIfAbsent(new Part(one.team(), one.stop(), one.site()), (key) -> new ArrayList<>())
				.add(one));
		List<Checklist> lists = new ArrayList<>();
		parts.forEach((part, work) -> Optional.ofNullable(sites.get(part.site()))
			.ifPresent((site) -> lists.add(list(site, part.team(), work, tasks))));
		return lists;
	}

	private Checklist list(GroupSite site, int team, List<WorkdayTask> work, Map<TaskId, CareTask> tasks) {
		Map<PlantingId, Planting> plantings = new LinkedHashMap<>();
		this.register.plantingsOf(site.site()).forEach((one) -> plantings.put(one.id(), one));
		Map<PlantingId, WalkStop> walk = this.stops.of(site.site());
		List<Thing> things = new ArrayList<>();
		for (WorkdayTask one : work) {
			CareTask task = tasks.get(one.task());
			if (task != null) {
				Planting planting = (task.planting() != null) ? plantings.get(task.planting()) : null;
				Efforts.Ask effort = this.efforts.of(task, planting);
				WalkStop stop = (task.planting() != null) ? walk.get(task.planting()) : null;
				things.add(new Thing(one.task().toString(), task.plant(), (stop != null) ? stop.place() : null,
						(stop != null) ? stop.square() : null, task.text().title(), task.text().what(),
						task.text().amount(), one.minutes(), effort.skillWords(), effort.tools(), task.text().caution(),
						one.done()));
			}
		}
		return Checklist.of(site.site().toString(), site.name(), site.where(), team, things);
	}

	/**
	 * Where the plantings of a site stand, in walking order, the others behind them.
	 * @param site which
	 * @return by planting; null where nobody said
	 */
	public Map<Planting, Optional<WalkStop>> walk(SiteId site) {
		Map<PlantingId, WalkStop> known = this.stops.of(site);
		Map<Planting, Optional<WalkStop>> walk = new LinkedHashMap<>();
		this.register.plantingsOf(site)
			.stream()
			.sorted(Comparator
				.comparing(
						(Planting one) -> known.containsKey(one.id()) ? known.get(one.id()).place() : Integer.MAX_VALUE)
				.thenComparing(Planting::label))
			.forEach((one) -> walk.put(one, Optional.ofNullable(known.get(one.id()))));
		return walk;
	}

	/**
	 * Says anew where the plantings of a site stand.
	 * @param site which
	 * @param stops places in the walk and squares, by planting
	 * @throws BadInput when a place or a square is none
	 */
	@Transactional
	public void draw(SiteId site, Map<PlantingId, WalkStop> stops) {
		stops.forEach((planting, stop) -> {
			Integer square = stop.square();
			if (stop.place() < 1 || stop.place() > 1000
					|| (square != null && (square < 0 || square >= Sketch.COLUMNS * Sketch.ROWS))) {
				throw new BadInput("a place in the walk is 1 to 1000", "place-" + planting, "write a whole number");
			}
		});
		stops.keySet().retainAll(this.register.plantingsOf(site).stream().map(Planting::id).toList());
		this.stops.put(site, stops);
	}

}
