package org.leafward.reminders.dispatch;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.Beginning;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.AdvisoryDue;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.DueTasks;
import org.leafward.reminders.core.Known;
import org.leafward.reminders.core.Wanted;
import org.leafward.reminders.store.MessageTable;
import org.leafward.reminders.store.ReminderTable;
import org.leafward.reminders.store.WishesTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/** Fills the reminder rows from the plan. Doing it twice changes nothing. */
@Service
public class Materialiser {

	private static final Logger LOG = LoggerFactory.getLogger(Materialiser.class);

	private static final int PAGE = 200;

	private final People people;

	private final TaskCalendar calendar;

	private final List<Channel> channels;

	private final WishesTable wishes;

	private final ReminderTable reminders;

	private final MessageTable messages;

	private final TransactionOperations transactions;

	private final Clock clock;

	/**
	 * Creates the service.
	 * @param people who gets reminders
	 * @param calendar the plan
	 * @param channels the ways to tell
	 * @param wishes how people want to be told
	 * @param reminders the rows to fill
	 * @param messages where messages wait that may have lost their use
	 * @param transactions one for each page of people
	 * @param clock what time it is
	 */
	public Materialiser(People people, TaskCalendar calendar, List<Channel> channels, WishesTable wishes,
			ReminderTable reminders, MessageTable messages, TransactionOperations transactions, Clock clock) {
		this.people = people;
		this.calendar = calendar;
		this.channels = channels;
		this.wishes = wishes;
		this.reminders = reminders;
		this.messages = messages;
		this.transactions = transactions;
		this.clock = clock;
	}

	/** Fills the rows of everybody. Trouble with one person doesn't stop the others. */
	public void everybody() {
		List<Person> some = this.people.walk(null, PAGE);
		while (!some.isEmpty()) {
			page(some);
			some = this.people.walk(some.get(some.size() - 1).id(), PAGE);
		}
	}

	private void page(List<Person> some) {
		try {
			fill(some.stream().map(Person::id).toList());
		}
		catch (RuntimeException ex) {
			LOG.warn("could not make the reminders of {} people together; each alone now", some.size(), ex);
			some.forEach((person) -> guarded(person.id()));
		}
	}

	private void guarded(PersonId id) {
		try {
			person(id);
		}
		catch (RuntimeException ex) {
			LOG.error("could not make the reminders of person {}", id, ex);
		}
	}

	/**
	 * Fills the rows of one person.
	 * @param id the person; one who is not there loses what was still to be sent
	 */
	public void person(PersonId id) {
		fill(List.of(id));
	}

	private void fill(Collection<PersonId> ids) {
		this.transactions.executeWithoutResult((status) -> {
			// Before anything is read, so that of two at once the later sees what the
			// earlier wrote.
			this.reminders.lock(ids);
			Instant now = this.clock.instant();
			Map<PersonId, Changes> changes = changes(ids, now);
			if (!changes.isEmpty()) {
				this.reminders.apply(changes, now);
				this.messages.dropUnwanted(changes.keySet());
			}
		});
	}

	private Map<PersonId, Changes> changes(Collection<PersonId> ids, Instant now) {
		Map<PersonId, Person> found = this.people.find(ids);
		Map<PersonId, Wishes> wished = this.wishes.of(ids);
		Map<String, Set<PersonId>> reached = this.channels.stream()
			.collect(Collectors.toMap(Channel::code, (channel) -> channel.addresses(found.values()).keySet()));
		// The earliest and the latest day that it is anywhere.
		DayWindow days = new DayWindow(DueTasks.onRecord(LocalDate.ofInstant(now, ZoneOffset.ofHours(-18))).from(),
				DueTasks.onRecord(LocalDate.ofInstant(now, ZoneOffset.ofHours(18))).to());
		Map<PersonId, List<Known>> known = this.reminders.known(ids, days);
		Map<PersonId, List<Beginning>> tasks = tasks(ids, days, known.values());
		Map<PersonId, Changes> changes = new HashMap<>();
		for (PersonId id : ids) {
			Person person = found.get(id);
			ZoneId zone = (person != null) ? person.zone() : this.clock.getZone();
			List<Known> rows = known.getOrDefault(id, List.of());
			List<Beginning> own = tasks.getOrDefault(id, List.of());
			DueTasks due = new DueTasks(id, zone, now, wished.getOrDefault(id, Wishes.USUAL));
			List<Wanted> wanted = new ArrayList<>();
			reached.forEach((channel, people) -> {
				if (people.contains(id)) {
					wanted.addAll(due.wanted(channel, own,
							rows.stream().filter((row) -> row.channel().equals(channel)).toList()));
				}
			});
			Changes change = Changes.between(wanted, rows, planned(own), LocalDate.ofInstant(now, zone));
			Wishes how = wished.getOrDefault(id, Wishes.USUAL);
			// No plan calls for them; they go when nobody wants them any more.
			rows.stream()
				.filter((row) -> row.advisory() && row.state() == ReminderState.PENDING)
				.filter((row) -> person == null || !AdvisoryDue.wanted(row.channel(), how))
				.forEach((row) -> change.withdraw().add(row.id()));
			if (!change.none()) {
				changes.put(id, change);
			}
		}
		return changes;
	}

	/** What begins near today, and what was told or is to be told again. */
	private Map<PersonId, List<Beginning>> tasks(Collection<PersonId> ids, DayWindow days,
			Collection<List<Known>> known) {
		List<TaskId> told = known.stream()
			.flatMap(List::stream)
			.filter((row) -> row.later() || Changes.told(row.state()))
			.flatMap((row) -> row.task().stream())
			.distinct()
			.toList();
		return this.calendar.beginning(ids, days, told).stream().collect(Collectors.groupingBy(Beginning::person));
	}

	private static Set<TaskId> planned(List<Beginning> tasks) {
		return tasks.stream()
			.filter((task) -> task.state() == TaskState.PLANNED)
			.map(Beginning::id)
			.collect(Collectors.toSet());
	}

}
