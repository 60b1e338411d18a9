package org.leafward.reminders;

import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.Beginning;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWindow;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

/** People and tasks in memory, in place of the modules below. */
public final class Garden {

	public final Map<PersonId, Person> persons = new ConcurrentHashMap<>();

	public final Map<TaskId, CareTask> tasks = new ConcurrentHashMap<>();

	public final AdvisoriesInMemory advisories = new AdvisoriesInMemory();

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
		when(calendar.find(any(TaskId.class)))
			.thenAnswer((call) -> Optional.ofNullable(this.tasks.get(call.getArgument(0))));
		when(calendar.find(anyCollection())).thenAnswer((call) -> {
			Map<TaskId, CareTask> some = new HashMap<>(this.tasks);
			some.keySet().retainAll(call.<Collection<TaskId>>getArgument(0));
			return some;
		});
		when(calendar.beginning(any(), any(), any())).thenAnswer((call) -> {
			Collection<PersonId> people = call.getArgument(0);
			DayWindow days = call.getArgument(1);
			Collection<TaskId> also = call.getArgument(2);
			return this.tasks.values()
				.stream()
				.filter((task) -> also.contains(task.id())
						|| people.contains(task.person()) && days.contains(task.window().from()))
				.map(Garden::beginning)
				.toList();
		});
		when(calendar.ofPerson(any(), any())).thenAnswer(
				(call) -> overlapping(call.getArgument(1), (task) -> task.person().equals(call.getArgument(0))));
		when(calendar.ofSite(any(), any()))
			.thenAnswer((call) -> overlapping(call.getArgument(1), (task) -> task.site().equals(call.getArgument(0))));
		return calendar;
	}

	public People people() {
		People people = mock();
		when(people.find(any(PersonId.class)))
			.thenAnswer((call) -> Optional.ofNullable(this.persons.get(call.getArgument(0))));
		when(people.find(anyCollection())).thenAnswer((call) -> {
			Map<PersonId, Person> some = new HashMap<>(this.persons);
			some.keySet().retainAll(call.<Collection<PersonId>>getArgument(0));
			return some;
		});
		when(people.walk(any(), anyInt())).thenAnswer((call) -> {
			PersonId after = call.getArgument(0);
			return this.persons.values()
				.stream()
				.sorted(Comparator.comparing((person) -> person.id().value()))
				.filter((person) -> after == null || person.id().value().compareTo(after.value()) > 0)
				.limit(call.<Integer>getArgument(1))
				.toList();
		});
		return people;
	}

	/** As the calendar would tell it. */
	public static Beginning beginning(CareTask task) {
		boolean ramp = task.kind() == TaskKind.RAMP_DAY;
		return new Beginning(task.id(), task.person(), task.kind(), task.window().from(), task.window().to(),
				ramp && task.occurrence() == 1, false, false, task.state());
	}

	private List<CareTask> overlapping(DayWindow window, Predicate<CareTask> filter) {
		return this.tasks.values().stream().filter(filter).filter((task) -> task.window().overlaps(window)).toList();
	}

}
