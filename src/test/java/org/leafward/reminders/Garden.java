package org.leafward.reminders;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;

/** People and tasks in memory, in place of the modules below. */
public final class Garden {

	public final Map<PersonId, Person> persons = new ConcurrentHashMap<>();

	public final Map<TaskId, CareTask> tasks = new ConcurrentHashMap<>();

	public PersonId person(String name, ZoneId zone) {
		PersonId id = new PersonId(TaskFixture.id(name));
		this.persons.put(id, new Person(id, name, name + "@example.org", zone));
		return id;
	}

	public CareTask plan(CareTask task) {
		this.tasks.put(task.id(), task);
		return task;
	}

	public TaskCalendar calendar() {
		TaskCalendar calendar = mock();
		when(calendar.find(any())).thenAnswer((call) -> Optional.ofNullable(this.tasks.get(call.getArgument(0))));
		when(calendar.ofPerson(any(), any())).thenAnswer(
				(call) -> overlapping(call.getArgument(1), (task) -> task.person().equals(call.getArgument(0))));
		when(calendar.ofSite(any(), any()))
			.thenAnswer((call) -> overlapping(call.getArgument(1), (task) -> task.site().equals(call.getArgument(0))));
		return calendar;
	}

	public People people() {
		People people = mock();
		when(people.find(any())).thenAnswer((call) -> Optional.ofNullable(this.persons.get(call.getArgument(0))));
		when(people.list(anyInt(), anyInt())).thenAnswer((call) -> {
			List<Person> all = new ArrayList<>(this.persons.values());
			int page = call.getArgument(0);
			int size = call.getArgument(1);
			return all.subList(Math.min(all.size(), page * size), Math.min(all.size(), (page + 1) * size));
		});
		return people;
	}

	private List<CareTask> overlapping(DayWindow window, Predicate<CareTask> filter) {
		return this.tasks.values().stream().filter(filter).filter((task) -> task.window().overlaps(window)).toList();
	}

}
