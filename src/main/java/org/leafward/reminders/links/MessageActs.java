package org.leafward.reminders.links;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNow;
import org.leafward.care.TaskStates;
import org.leafward.care.WorkDone;
import org.leafward.measure.BadInput;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.Alike;
import org.leafward.reminders.core.Later;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.core.Told;
import org.leafward.reminders.store.ActTable;
import org.leafward.reminders.store.ReminderTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionOperations;

/**
 * What somebody does from a message, without signing in: as the person who got it, and to
 * nothing but the tasks that were told together. Doing it twice does it once.
 */
@Service
public class MessageActs {

	/** How long what was done by a link can be taken back by it. */
	public static final Duration UNDO = Duration.ofDays(1);

	private final ActTable rows;

	private final ReminderTable reminders;

	private final People people;

	private final HowToTell wishes;

	private final TaskCalendar calendar;

	private final TaskStates states;

	private final CareLog log;

	private final Register register;

	private final TransactionOperations transactions;

	private final Clock clock;

	MessageActs(ActTable rows, ReminderTable reminders, People people, HowToTell wishes, TaskCalendar calendar,
			TaskStates states, CareLog log, Register register, TransactionOperations transactions, Clock clock) {
		this.rows = rows;
		this.reminders = reminders;
		this.people = people;
		this.wishes = wishes;
		this.calendar = calendar;
		this.states = states;
		this.log = log;
		this.register = register;
		this.transactions = transactions;
		this.clock = clock;
	}

	/**
	 * What a link is about.
	 * @param link the link
	 * @return empty when it has ended: {@value Told#LINK_DAYS} days after the first day,
	 * or because the reminder, the task or the person went away
	 */
	public Optional<About> about(ActLink link) {
		return this.rows.find(link.reminder()).flatMap(this::about);
	}

	private Optional<About> about(Told told) {
		Optional<Person> person = this.people.find(told.person());
		// One of the person's own; a site may have another owner by now.
		Optional<CareTask> task = this.calendar.find(told.task())
			.filter((found) -> found.person().equals(told.person()));
		Optional<Site> site = task.flatMap((found) -> this.register.find(found.site()));
		if (person.isEmpty() || site.isEmpty() || told.endedOn(today(site.get()))) {
			return Optional.empty();
		}
		List<CareTask> tasks = alike(told, task.orElseThrow());
		Wishes how = this.wishes.of(told.person());
		List<Later> later = how.stopped(told.channel(), Later.SERIES) ? List.of()
				: tasks.stream()
					.flatMap((one) -> Later.of(one, told, how, person.get().zone(), this.clock.instant()).stream())
					.toList();
		Map<TaskId, TaskNow> now = this.states.of(tasks);
		List<TaskId> ids = tasks.stream().map(CareTask::id).toList();
		return Optional
			.of(new About(told, tasks, now, later, this.rows.laterDay(told.person(), told.channel(), ids).orElse(null),
					!fresh(tasks, now).isEmpty(), how));
	}

	private List<CareTask> alike(Told told, CareTask first) {
		List<TaskId> besides = this.rows.besides(told, CareLog.MOST_TOGETHER);
		Map<TaskId, CareTask> found = this.calendar.find(besides);
		return Stream
			.concat(Stream.of(first),
					besides.stream()
						.filter((id) -> !id.equals(first.id()))
						.flatMap((id) -> Optional.ofNullable(found.get(id)).stream())
						.filter((task) -> isLike(first, task)))
			.toList();
	}

	private static boolean isLike(CareTask first, CareTask task) {
		return task.person().equals(first.person()) && Alike.told(first, task);
	}

	/** What somebody did or left out within a day. */
	private List<TaskId> fresh(List<CareTask> tasks, Map<TaskId, TaskNow> now) {
		Instant since = this.clock.instant().minus(UNDO);
		return tasks.stream()
			.map(CareTask::id)
			.filter((id) -> Optional.ofNullable(now.get(id)).filter(TaskNow::mayUndo).isPresent())
			.filter((id) -> lastMove(id).filter((move) -> move.at().isAfter(since)).isPresent())
			.toList();
	}

	private Optional<TaskChange> lastMove(TaskId task) {
		List<TaskChange> history = this.states.history(task);
		return history.isEmpty() ? Optional.empty() : Optional.of(history.get(history.size() - 1));
	}

	/**
	 * Does something.
	 * @param about what the link is about
	 * @param act what to do
	 * @param reason why it is left out, in the person's words
	 * @return false when there was nothing to do: it was done before, for example
	 * @throws BadInput when the care log refuses it
	 */
	public boolean act(About about, Act act, String reason) {
		if (!about.may(act)) {
			return false;
		}
		PersonId person = about.told().person();
		switch (act) {
			case DONE -> this.log.done(about.ids(), WorkDone.on(today(site(about)), ""), person);
			case SKIP -> this.log.skip(about.ids(), reason, person);
			case LATER -> this.transactions.executeWithoutResult((status) -> {
				this.reminders.lock(List.of(person));
				about.later().forEach((later) -> this.rows.add(person, later));
			});
		}
		return true;
	}

	/**
	 * Takes back what was done, left out or put off last.
	 * @param about what the link is about
	 * @return false when there was nothing that can be taken back by a link any more
	 */
	public boolean undo(About about) {
		if (about.undo()) {
			this.log.undo(fresh(about.tasks(), about.now()), about.told().person());
			return true;
		}
		PersonId person = about.told().person();
		if (about.laterDay() != null) {
			this.transactions.executeWithoutResult((status) -> {
				this.reminders.lock(List.of(person));
				this.rows.withdrawLaters(person, about.told().channel(), about.ids());
			});
			return true;
		}
		return false;
	}

	private Site site(About about) {
		return this.register.require(about.task().site());
	}

	private LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

}
