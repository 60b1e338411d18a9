package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.care.WorkDone;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.SiteId;
import org.leafward.workdays.store.GroupTable.SiteRow;
import org.leafward.workdays.store.GroupTable;
import org.leafward.workdays.store.MarkTable;
import org.leafward.workdays.store.SignUpTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.leafward.workdays.store.WorkdayTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What happens on the day and after it: ticks become entries of the care log, hours are
 * noted, thanks go out. Who may do it is asked by the caller.
 */
@Service
public class OnTheDay {

	/** Ticks that come together. */
	public static final int MOST_MARKS = 500;

	/** A task that begins later can't be done yet (care's own bound). */
	private static final int NEAR = 30;

	/** Ticks come at the latest so many days after the workday. */
	private static final int LATE = 30;

	private final WorkdayTable days;

	private final GroupTable groups;

	private final MarkTable marks;

	private final SignUpTable people;

	private final SignUps signUps;

	private final CareLog log;

	private final TaskCalendar calendar;

	private final WorkdayMail mail;

	private final Clock clock;

	OnTheDay(WorkdayTable days, GroupTable groups, MarkTable marks, SignUpTable people, SignUps signUps, CareLog log,
			TaskCalendar calendar, WorkdayMail mail, Clock clock) {
		this.days = days;
		this.groups = groups;
		this.marks = marks;
		this.people = people;
		this.signUps = signUps;
		this.log = log;
		this.calendar = calendar;
		this.mail = mail;
		this.clock = clock;
	}

	/**
	 * Takes ticks, in any order and as often as they come. Of several about one task the
	 * latest counts, whoever made it; nothing that somebody ticked is lost.
	 * @param workday on which
	 * @param marks ticks of its tasks, at most 500
	 * @return whether each task of the workday is done now
	 * @throws BadInput before the day, or when it is called off
	 */
	@Transactional
	public Map<TaskId, Boolean> tick(WorkdayId workday, List<Mark> marks) {
		DayRow day = locked(workday);
		if (marks.size() > MOST_MARKS) {
			throw new BadInput("%d ticks are more than %d".formatted(marks.size(), MOST_MARKS), "marks",
					"send them in parts");
		}
		if (day.state() != WorkdayState.FIXED && day.state() != WorkdayState.HELD) {
			throw new BadInput("this workday doesn’t take place", "workday", "look at its page");
		}
		if (today(day).isBefore(day.day())) {
			throw new BadInput("the workday hasn’t begun", "workday", "tick on the day itself");
		}
		if (today(day).isAfter(day.day().plusDays(LATE))) {
			throw new BadInput("the workday is more than %d days ago".formatted(LATE), "workday",
					"log it at the site itself");
		}
		Instant now = this.clock.instant();
		Set<SiteId> given = this.groups.sites(List.of(day.group()))
			.stream()
			.map(SiteRow::site)
			.collect(Collectors.toSet());
		for (Mark mark : marks) {
			WorkdayTask task = on(workday, mark.task());
			Instant at = mark.at().isAfter(now) ? now : mark.at();
			boolean fresh = this.marks.add(new Mark(mark.key(), workday, mark.task(), mark.person(), mark.done(), at),
					now);
			// Taken off the day, or the site taken back, since the list was loaded: the
			// tick is
			// kept, and nothing else follows from it.
			if (fresh && task != null && given.contains(task.site())) {
				this.marks.last(workday, mark.task()).ifPresent((last) -> settle(day, task, last));
			}
		}
		Map<TaskId, Boolean> states = new LinkedHashMap<>();
		this.days.tasks(List.of(workday)).forEach((one) -> states.put(one.task().task(), one.task().done()));
		return states;
	}

	private void settle(DayRow day, WorkdayTask task, Mark last) {
		if (last.done() == task.done()) {
			return;
		}
		CareTask care = this.calendar.find(task.task()).orElse(null);
		boolean done = care != null && care.state() == TaskState.DONE;
		// One that moved far off meanwhile is done on the workday only: care would refuse
		// it,
		// and a phone that is refused keeps all of its ticks.
		boolean near = care != null && !care.window().from().isAfter(day.day().plusDays(NEAR));
		if (near && last.done() && !done) {
			this.log.doneByHelper(task.site(), List.of(task.task()), WorkDone.on(day.day(), day.groupName()),
					last.person());
		}
		else if (care != null && !last.done() && done) {
			this.log.undoByHelper(task.site(), List.of(task.task()), last.person());
		}
		this.days.done(day.id(), task.task(), last.done() ? last.person() : null, last.done() ? last.at() : null);
	}

	/**
	 * Notes how long people worked, after which the workday is over.
	 * @param workday on which
	 * @param minutes by person, 0 to 1,440
	 * @throws BadInput before the day, or when it is called off
	 */
	@Transactional
	public void hours(WorkdayId workday, Map<PersonId, Integer> minutes) {
		DayRow day = locked(workday);
		if (day.state() != WorkdayState.FIXED && day.state() != WorkdayState.HELD) {
			throw new BadInput("this workday doesn’t take place", "workday", "look at its page");
		}
		if (today(day).isBefore(day.day())) {
			throw new BadInput("the workday hasn’t begun", "workday", "note hours on the day or after it");
		}
		minutes.forEach((person, worked) -> this.signUps.worked(workday, person, worked));
		this.days.put(with(day, day.thankedAt()));
	}

	/**
	 * Thanks all who worked, once.
	 * @param workday on which
	 * @throws BadInput when no hours are noted, or thanks went out before
	 */
	@Transactional
	public void thank(WorkdayId workday) {
		DayRow day = locked(workday);
		if (day.state() != WorkdayState.HELD) {
			throw new BadInput("no hours are noted yet", "workday", "note the hours first");
		}
		if (day.thankedAt() != null) {
			throw new BadInput("thanks went out before", "workday", "nothing is left to do");
		}
		List<SignUp> worked = this.people.of(List.of(workday))
			.stream()
			.filter((one) -> one.minutes() != null && one.minutes() > 0)
			.toList();
		int done = (int) this.days.tasks(List.of(workday)).stream().filter((one) -> one.task().done()).count();
		this.mail.thanks(day, worked, done);
		this.days.put(with(day, this.clock.instant()));
	}

	private static DayRow with(DayRow day, @Nullable Instant thankedAt) {
		return new DayRow(day.id(), day.group(), day.groupName(), day.day(), day.begins(), day.ends(), day.zone(),
				day.meetingPoint(), day.capacity(), WorkdayState.HELD, day.sequence(), day.locked(), day.rainDay(),
				null, day.warned(), thankedAt, day.createdAt(), day.changedAt(), 0, 0);
	}

	private LocalDate today(DayRow day) {
		return LocalDate.ofInstant(this.clock.instant(), day.zone());
	}

	private @Nullable WorkdayTask on(WorkdayId workday, TaskId task) {
		return this.days.tasks(List.of(workday))
			.stream()
			.map(WorkdayTable.TaskRow::task)
			.filter((one) -> one.task().equals(task))
			.findFirst()
			.orElse(null);
	}

	private DayRow locked(WorkdayId workday) {
		this.days.lock(workday);
		return this.days.find(workday).orElseThrow(() -> new NotThere("There is no workday " + workday));
	}

}
