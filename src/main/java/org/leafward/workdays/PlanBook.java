package org.leafward.workdays;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.workdays.store.WorkdayTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the last plan of a group left over, and how it comes onto a day by hand. */
@Service
public class PlanBook {

	private final WorkdayTable table;

	private final WorkdayDesk desk;

	private final TaskCalendar calendar;

	private final DaySense sense;

	private final Register register;

	private final Efforts efforts;

	private final Clock clock;

	PlanBook(WorkdayTable table, WorkdayDesk desk, TaskCalendar calendar, DaySense sense, Register register,
			Efforts efforts, Clock clock) {
		this.table = table;
		this.sense = sense;
		this.desk = desk;
		this.calendar = calendar;
		this.register = register;
		this.efforts = efforts;
		this.clock = clock;
	}

	/**
	 * Tasks without a day.
	 * @param group whose
	 * @return why each has none
	 */
	public Map<TaskId, String> leftOver(GroupId group) {
		return this.table.leftOver(group);
	}

	/**
	 * Puts a task that was left over onto a day, where it stays.
	 * @param group whose
	 * @param day one of its workdays
	 * @param id which
	 * @throws BadInput when the task makes no sense on the day
	 */
	@Transactional
	public void place(Group group, Workday day, TaskId id) {
		Map<TaskId, String> left = leftOver(group.id());
		CareTask task = this.calendar.find(id)
			.filter((one) -> left.containsKey(id)
					&& group.sites().stream().anyMatch((site) -> site.site().equals(one.site())))
			.orElseThrow(() -> new NotThere("There is no task %s left over".formatted(id)));
		if (!day.group().equals(group.id())) {
			throw new BadInput("that is no workday to which it can go", "to", "choose one that is still to come");
		}
		this.sense.on(day.day()).check(task);
		Planting planting = (task.planting() != null) ? this.register.find(task.planting()).orElse(null) : null;
		this.desk.addTask(day.id(), new WorkdayTask(id, task.site(), this.efforts.of(task, planting).minutes(), true,
				"You put it here.", 1, 1, false));
	}

	/**
	 * Fills a proposed day with open tasks whose windows hold it: those that end first,
	 * until those who can come have enough to do. A plan weighs days against each other;
	 * this looks at one.
	 * @param group whose
	 * @param day one of its proposed workdays
	 * @return how many tasks came onto it
	 */
	@Transactional
	public int fill(Group group, Workday day) {
		int people = (int) group.members().stream().filter((one) -> one.free(day.day())).count();
		int minutes = (day.ends().toSecondOfDay() - day.begins().toSecondOfDay()) / 60;
		int room = Math.min(people, day.capacity()) * minutes
				- day.tasks().stream().mapToInt(WorkdayTask::minutes).sum();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), group.zone());
		Set<TaskId> taken = new HashSet<>(this.table.taken(group.id(), today));
		List<CareTask> open = new ArrayList<>();
		DaySense.OnDay sense = this.sense.on(day.day());
		for (GroupSite site : group.sites()) {
			sense.at(site.site())
				.stream()
				.filter((task) -> task.kind() == TaskKind.DO && task.state() == TaskState.PLANNED
						&& !taken.contains(task.id()) && sense.heldOff(task).isEmpty())
				.forEach(open::add);
		}
		open.sort(Comparator.comparing((CareTask task) -> task.window().to())
			.thenComparing((task) -> task.id().toString()));
		Set<String> skills = group.members()
			.stream()
			.filter((one) -> one.free(day.day()))
			.flatMap((one) -> one.skills().stream())
			.map(Skill::code)
			.collect(Collectors.toSet());
		int placed = 0;
		for (CareTask task : open) {
			Planting planting = (task.planting() != null) ? this.register.find(task.planting()).orElse(null) : null;
			Efforts.Ask effort = this.efforts.of(task, planting);
			boolean none = group.terms()
				.few(effort.tools())
				.stream()
				.anyMatch((tool) -> group.terms().fewTools().getOrDefault(tool, 1) < 1);
			if (!none && effort.minutes() <= room && skills.containsAll(effort.skills())) {
				this.desk.addTask(day.id(),
						new WorkdayTask(task.id(), task.site(), effort.minutes(), false,
								"It can be done on this day, and until %s.".formatted(DayWords.of(task.window().to())),
								1, 1, false));
				room -= effort.minutes();
				placed++;
			}
		}
		return placed;
	}

}
