package org.leafward.workdays;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.accounts.PersonId;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.workdays.store.SignUpTable;
import org.leafward.workdays.store.SignUpTable.Asked;
import org.leafward.workdays.store.WorkdayTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.leafward.workdays.store.WorkdayTable.TaskRow;
import org.springframework.stereotype.Service;

/**
 * Workdays as others may read them: feeds, messages, pages. Who may see what is asked by
 * the caller; what is only proposed is given to nobody but the group's own pages.
 */
@Service
public class Workdays {

	private final WorkdayTable table;

	private final SignUpTable signUps;

	private final Groups groups;

	Workdays(WorkdayTable table, SignUpTable signUps, Groups groups) {
		this.table = table;
		this.signUps = signUps;
		this.groups = groups;
	}

	/**
	 * A workday, whatever its state.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Workday> find(WorkdayId id) {
		return this.table.find(id).map((row) -> whole(List.of(row)).get(0));
	}

	/**
	 * Workdays of a group.
	 * @param group whose
	 * @param window on these days
	 * @param proposed whether also those that only those who lead know of
	 * @return by day and beginning, at most 500; those called off too
	 */
	public List<Workday> ofGroup(GroupId group, DayWindow window, boolean proposed) {
		return whole(this.table.ofGroups(List.of(group), window, proposed));
	}

	/**
	 * Published workdays of a person's groups, with how they stand to each.
	 * @param person who
	 * @param window on these days
	 * @return by day and beginning, at most 500; those called off too
	 */
	public List<PersonWorkday> ofPerson(PersonId person, DayWindow window) {
		return ofPeople(List.of(person), window).getOrDefault(person, List.of());
	}

	/**
	 * Published workdays of the groups of several people, in the same number of questions
	 * however many there are.
	 * @param people who, at most 10,000
	 * @param window on these days
	 * @return by person, by day and beginning, without those who have none
	 */
	public Map<PersonId, List<PersonWorkday>> ofPeople(Collection<PersonId> people, DayWindow window) {
		Map<PersonId, Set<GroupId>> of = this.groups.ofPeople(people);
		if (of.isEmpty()) {
			return Map.of();
		}
		Set<GroupId> all = of.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
		List<Workday> days = whole(this.table.ofGroups(all, window, false));
		List<WorkdayId> ids = days.stream().map(Workday::id).toList();
		Map<Asked, SignUpState> states = new HashMap<>();
		this.signUps.of(ids).forEach((one) -> states.put(new Asked(one.workday(), one.person()), one.state()));
		Set<Asked> asked = this.signUps.asked(ids, of.keySet());
		Map<PersonId, List<PersonWorkday>> answer = new HashMap<>();
		of.forEach((person, theirs) -> {
			List<PersonWorkday> mine = days.stream()
				.filter((day) -> theirs.contains(day.group()))
				.map((day) -> new PersonWorkday(person, day, states.get(new Asked(day.id(), person)),
						asked.contains(new Asked(day.id(), person))))
				.toList();
			if (!mine.isEmpty()) {
				answer.put(person, mine);
			}
		});
		return answer;
	}

	/**
	 * Who signed up, waits, or said no; the earliest first.
	 * @param workday to which
	 * @return never null
	 */
	public List<SignUp> signUps(WorkdayId workday) {
		return this.signUps.of(List.of(workday));
	}

	private List<Workday> whole(List<DayRow> rows) {
		if (rows.isEmpty()) {
			return List.of();
		}
		Map<WorkdayId, List<WorkdayTask>> tasks = this.table.tasks(rows.stream().map(DayRow::id).toList())
			.stream()
			.collect(Collectors.groupingBy(TaskRow::workday, Collectors.mapping(TaskRow::task, Collectors.toList())));
		Map<GroupId, List<GroupSite>> sites = this.groups
			.sites(rows.stream().map(DayRow::group).collect(Collectors.toSet()));
		List<Workday> days = new ArrayList<>();
		for (DayRow row : rows) {
			List<WorkdayTask> work = tasks.getOrDefault(row.id(), List.of());
			Set<SiteId> where = new HashSet<>();
			work.forEach((one) -> where.add(one.site()));
			days.add(new Workday(row.id(), row.group(), row.groupName(), row.day(), row.begins(), row.ends(),
					row.zone(), row.meetingPoint(),
					sites.getOrDefault(row.group(), List.of())
						.stream()
						.filter((one) -> where.contains(one.site()))
						.toList(),
					row.state(), row.calledOffBecause(), row.sequence(), row.capacity(), row.places(), row.waiting(),
					work, row.rainDay(), row.locked(), row.createdAt(), row.changedAt()));
		}
		return days;
	}

}
