package org.leafward.reminders.dispatch;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.core.AdvisoryDue;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.DueTimes;
import org.leafward.reminders.core.Outlook;
import org.leafward.reminders.core.ReminderItem;
import org.leafward.reminders.store.Claimed;
import org.leafward.reminders.store.OfAdvisory;
import org.leafward.reminders.store.WishesTable;

/**
 * Looks at claimed rows once more against the plan and the wishes, just before they are
 * sent, and gathers what goes out together. Reads only.
 */
class Drafts {

	/** Longer than any ramp: a step has at most 60 days and a ramp rarely over six. */
	private static final int RAMP_REACH_DAYS = 365;

	private static final Duration LOOK_AGAIN = Duration.ofSeconds(5);

	private final People people;

	private final TaskCalendar calendar;

	private final Map<String, Channel> channels;

	private final WishesTable wishes;

	private final Advisories advisories;

	Drafts(People people, TaskCalendar calendar, List<Channel> channels, WishesTable wishes, Advisories advisories) {
		this.advisories = advisories;
		this.people = people;
		this.calendar = calendar;
		this.channels = channels.stream().collect(Collectors.toMap(Channel::code, (channel) -> channel));
		this.wishes = wishes;
	}

	/**
	 * A message to be written.
	 *
	 * @param content what it is about
	 * @param address where it goes
	 * @param wishes how the person wants to be told
	 * @param rows the rows it answers
	 * @param message its identifier; of an earlier try it is written already
	 */
	record Draft(Content content, String address, Wishes wishes, List<Claimed> rows, UUID message) {
	}

	/**
	 * Claimed rows, sorted.
	 *
	 * @param good messages to write
	 * @param ended rows not to be sent, with their last state
	 * @param postponed rows that wait for a time of day
	 * @param moved people with a task that has other dates now
	 */
	record Sorted(List<Draft> good, Map<Claimed, ReminderState> ended, Map<UUID, Instant> postponed,
			Set<PersonId> moved) {
	}

	Sorted sort(Collection<Claimed> rows, Instant now) {
		Sorted sorted = new Sorted(new ArrayList<>(), new LinkedHashMap<>(), new HashMap<>(), new HashSet<>());
		Set<PersonId> ids = rows.stream().map(Claimed::person).collect(Collectors.toSet());
		Map<PersonId, Person> found = this.people.find(ids);
		Map<PersonId, Wishes> wished = this.wishes.of(ids);
		Map<TaskId, CareTask> tasks = this.calendar
			.find(rows.stream().map(Claimed::task).filter(Objects::nonNull).distinct().toList());
		Map<AdvisoryId, Advisory> told = advisories(rows);
		Map<String, Map<PersonId, String>> addresses = addresses(rows, found);
		Map<Together, List<Claimed>> groups = new LinkedHashMap<>();
		rows.forEach((row) -> groups.computeIfAbsent(Together.of(row), (key) -> new ArrayList<>()).add(row));
		groups.forEach((key, group) -> {
			Person person = found.get(key.person());
			String address = addresses.getOrDefault(key.channel(), Map.of()).get(key.person());
			if (person == null || address == null) {
				group.forEach((row) -> sorted.ended().put(row, ReminderState.WITHDRAWN));
				return;
			}
			new Group(person, address, wished.getOrDefault(key.person(), Wishes.USUAL), now, told).sort(group, tasks,
					sorted);
		});
		return sorted;
	}

	private Map<AdvisoryId, Advisory> advisories(Collection<Claimed> rows) {
		return rows.stream()
			.map(Claimed::advisory)
			.filter(Objects::nonNull)
			.map(OfAdvisory::advisory)
			.distinct()
			.flatMap((id) -> this.advisories.find(id).stream())
			.collect(Collectors.toMap(Advisory::id, (one) -> one));
	}

	/** Rows of one message. */
	private record Together(PersonId person, String channel, UUID message) {

		static Together of(Claimed row) {
			return new Together(row.person(), row.channel(), row.message());
		}

	}

	private Map<String, Map<PersonId, String>> addresses(Collection<Claimed> rows, Map<PersonId, Person> found) {
		Map<String, Set<Person>> wanted = new HashMap<>();
		for (Claimed row : rows) {
			Person person = found.get(row.person());
			if (person != null && this.channels.containsKey(row.channel())) {
				wanted.computeIfAbsent(row.channel(), (key) -> new HashSet<>()).add(person);
			}
		}
		Map<String, Map<PersonId, String>> all = new HashMap<>();
		wanted.forEach(
				(code, people) -> all.put(code, Objects.requireNonNull(this.channels.get(code)).addresses(people)));
		return all;
	}

	/** The rows of one message. */
	private final class Group {

		private final Person person;

		private final String address;

		private final Wishes wishes;

		private final Instant now;

		private final Map<AdvisoryId, Advisory> advisories;

		private final List<AdvisoryNotice> notices = new ArrayList<>();

		Group(Person person, String address, Wishes wishes, Instant now, Map<AdvisoryId, Advisory> advisories) {
			this.advisories = advisories;
			this.person = person;
			this.address = address;
			this.wishes = wishes;
			this.now = now;
		}

		void sort(List<Claimed> rows, Map<TaskId, CareTask> tasks, Sorted sorted) {
			List<Claimed> good = new ArrayList<>();
			List<ReminderItem> items = new ArrayList<>();
			Claimed outlook = null;
			for (Claimed row : rows) {
				OfAdvisory told = row.advisory();
				if (told != null) {
					advisory(row, told, good, sorted);
					continue;
				}
				TaskId id = row.task();
				CareTask task = (id != null) ? tasks.get(id) : null;
				ReminderState end = end(row, task, sorted);
				if (end != null) {
					sorted.ended().put(row, end);
				}
				else if (task == null) {
					outlook = row;
				}
				else {
					good.add(row);
					items.add(new ReminderItem(row.id(), row.topic(), task, rampDays(task), row.firstDay()));
				}
			}
			Outlook ahead = (outlook != null) ? ahead(items) : null;
			if (outlook != null && ahead != null && ahead.empty() && items.isEmpty() && this.notices.isEmpty()) {
				// Nobody wants to read that there is nothing to read.
				sorted.ended().put(outlook, ReminderState.WITHDRAWN);
				return;
			}
			if (outlook != null) {
				good.add(outlook);
			}
			if (!good.isEmpty() && !wait(good, sorted)) {
				sorted.good().add(draft(good, items, ahead));
			}
		}

		/** A later message has rows of its own for whoever is to hear of it. */
		private void advisory(Claimed row, OfAdvisory told, List<Claimed> good, Sorted sorted) {
			Advisory advisory = this.advisories.get(told.advisory());
			if (advisory == null || advisory.number() > told.number()
					|| !AdvisoryDue.wanted(row.channel(), this.wishes)) {
				sorted.ended().put(row, ReminderState.WITHDRAWN);
			}
			else if (!this.now.isBefore(row.expiresAt())) {
				sorted.ended().put(row, ReminderState.EXPIRED);
			}
			else if (advisory.number() < told.number()) {
				// This node looks now and then; the message was made by another.
				sorted.postponed().put(row.id(), this.now.plus(LOOK_AGAIN));
			}
			else {
				good.add(row);
				this.notices.add(new AdvisoryNotice(row.id(), advisory, told.news()));
			}
		}

		private @Nullable ReminderState end(Claimed row, @Nullable CareTask task, Sorted sorted) {
			if (row.topic() != Topic.OUTLOOK) {
				if (task == null || !stands(row, task)) {
					return ReminderState.WITHDRAWN;
				}
				boolean elsewhere = row.topic() != Topic.CHANGE && !row.later()
						&& !task.window().from().equals(row.firstDay());
				if (elsewhere) {
					sorted.moved().add(row.person());
					return ReminderState.WITHDRAWN;
				}
			}
			return this.now.isBefore(row.expiresAt()) ? null : ReminderState.EXPIRED;
		}

		private static boolean stands(Claimed row, CareTask task) {
			return task.state() == TaskState.PLANNED
					|| row.topic() == Topic.CHANGE && task.state() == TaskState.WITHDRAWN;
		}

		/** Whether it is a time at which nothing goes out. */
		private boolean wait(List<Claimed> rows, Sorted sorted) {
			LocalDateTime local = LocalDateTime.ofInstant(this.now, zone());
			boolean night = rows.stream().anyMatch((row) -> row.topic() == Topic.TONIGHT)
					|| this.notices.stream().anyMatch((one) -> AdvisoryDue.wakes(one.advisory(), this.now));
			LocalDateTime after = (night && this.wishes.urgentAnyway()) ? local : this.wishes.quiet().after(local);
			LocalDate until = this.wishes.pausedUntil();
			if (until != null && this.wishes.pausedOn(after.toLocalDate())) {
				after = until.atTime(this.wishes.morning());
			}
			if (after.equals(local)) {
				return false;
			}
			Instant at = DueTimes.at(after, zone());
			for (Claimed row : rows) {
				if (at.isBefore(row.expiresAt())) {
					sorted.postponed().put(row.id(), at);
				}
				else {
					sorted.ended().put(row, ReminderState.EXPIRED);
				}
			}
			return true;
		}

		private Draft draft(List<Claimed> rows, List<ReminderItem> items, @Nullable Outlook ahead) {
			Claimed first = rows.get(0);
			Content content = new Content(this.person, first.channel(), series(first, items, ahead), items, ahead,
					List.copyOf(this.notices));
			return new Draft(content, this.address, this.wishes, rows, first.message());
		}

		/**
		 * A morning on which there is nothing but advisories is a message about those.
		 */
		private static Series series(Claimed first, List<ReminderItem> items, @Nullable Outlook ahead) {
			if (ahead != null) {
				return Series.OUTLOOK;
			}
			return items.isEmpty() ? Series.ADVISORY
					: Series.of(first.bundle().substring(0, first.bundle().indexOf(':')));
		}

		private Outlook ahead(List<ReminderItem> items) {
			LocalDate today = LocalDate.ofInstant(this.now, zone());
			Set<TaskId> told = items.stream().map((item) -> item.task().id()).collect(Collectors.toSet());
			return Outlook.of(Drafts.this.calendar.ofPerson(this.person.id(), Outlook.days(today)), told, today,
					this.now);
		}

		private int rampDays(CareTask first) {
			if (first.kind() != TaskKind.RAMP_DAY) {
				return 0;
			}
			LocalDate from = first.window().from();
			return (int) Drafts.this.calendar.ofSite(first.site(), new DayWindow(from, from.plusDays(RAMP_REACH_DAYS)))
				.stream()
				.filter((task) -> task.kind() == TaskKind.RAMP_DAY && task.state() == TaskState.PLANNED)
				.filter((task) -> task.subject().equals(first.subject()) && task.rule().equals(first.rule())
						&& task.season() == first.season())
				.count();
		}

		private ZoneId zone() {
			return this.person.zone();
		}

	}

}
