package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.workdays.core.words.DayText;
import org.leafward.workdays.store.WorkdayTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What those who lead do with workdays: fix, move, call off, and settle what is done on
 * them. Who may do it is asked by the caller.
 */
@Service
public class WorkdayDesk {

	private static final int LONGEST_REASON = 300;

	private static final int FARTHEST_YEARS = 2;

	private final WorkdayTable table;

	private final WorkdayMail mail;

	private final SignUps signUps;

	private final TaskCalendar calendar;

	private final DaySense sense;

	private final RainDates rainDates;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	WorkdayDesk(WorkdayTable table, WorkdayMail mail, SignUps signUps, TaskCalendar calendar, DaySense sense,
			RainDates rainDates, ApplicationEventPublisher events, Clock clock) {
		this.table = table;
		this.sense = sense;
		this.rainDates = rainDates;
		this.calendar = calendar;
		this.mail = mail;
		this.signUps = signUps;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * When and where a workday is.
	 *
	 * @param day the day
	 * @param begins when it begins
	 * @param ends when it ends, at least half an hour and at most 12 hours later
	 * @param meetingPoint where to come to, at most 200 characters
	 * @param capacity how many can come, 1 to 500
	 * @param rainDay the day instead; null for none
	 */
	public record Frame(LocalDate day, LocalTime begins, LocalTime ends, String meetingPoint, int capacity,
			@Nullable LocalDate rainDay) {

		public Frame {
			Findings all = new Findings();
			LocalTime from = begins;
			LocalTime to = ends;
			String place = meetingPoint;
			int people = capacity;
			LocalDate first = day;
			LocalDate second = rainDay;
			all.check(() -> GroupDesk.times(from, to));
			all.check(() -> GroupDesk.places(people));
			all.check(() -> GroupDesk.length("meetingPoint", GroupDesk.line("meetingPoint", "the meeting point", place),
					200));
			all.check(() -> {
				if (second != null && !second.isAfter(first)) {
					throw new BadInput("the rain date isn’t after the workday", "rainDay", "choose a later day");
				}
			});
			all.end();
			meetingPoint = meetingPoint.strip();
		}

	}

	/**
	 * Adds a proposed workday by hand.
	 * @param group whose
	 * @param frame when and where
	 * @return the workday
	 */
	@Transactional
	public WorkdayId add(Group group, Frame frame) {
		checkDay(frame, group.zone());
		Instant now = this.clock.instant();
		WorkdayId id = new WorkdayId(UUID.randomUUID());
		this.table.put(new DayRow(id, group.id(), group.name(), frame.day(), frame.begins(), frame.ends(), group.zone(),
				frame.meetingPoint(), frame.capacity(), WorkdayState.PROPOSED, 0, true, frame.rainDay(), null, null,
				null, now, now, 0, 0));
		return id;
	}

	private void checkDay(Frame frame, ZoneId zone) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), zone);
		if (frame.day().isBefore(today) || frame.day().isAfter(today.plusYears(FARTHEST_YEARS))) {
			throw new BadInput("%s is no day within the next %d years".formatted(frame.day(), FARTHEST_YEARS), "day",
					"choose a day from today on");
		}
	}

	/**
	 * Publishes a workday: members see it and are asked by mail.
	 * @param workday which
	 * @throws BadInput when it is published already, or over
	 */
	@Transactional
	public void fix(WorkdayId workday) {
		DayRow day = locked(workday);
		if (day.state() != WorkdayState.PROPOSED) {
			throw new BadInput("this workday was published already", "workday", "look at its page");
		}
		checkDay(frame(day), day.zone());
		DayRow fixed = with(day, frame(day), WorkdayState.FIXED, 0, null);
		this.table.put(fixed);
		this.mail.invite(fixed);
		this.events.publishEvent(new WorkdayFixed(workday.value(), day.group().value(), fixed.changedAt()));
	}

	/**
	 * Changes when and where a workday is. Those who were asked are asked anew when it
	 * was published and day, time or place changed.
	 * @param workday which
	 * @param frame as it is to be
	 * @return how many tasks make no sense on that day, and have none now
	 * @throws BadInput when it is called off or over
	 */
	@Transactional
	public int move(WorkdayId workday, Frame frame) {
		DayRow day = locked(workday);
		if (day.state() != WorkdayState.PROPOSED && day.state() != WorkdayState.FIXED) {
			throw new BadInput("this workday can’t be moved any more", "workday", "plan another one");
		}
		checkDay(frame, day.zone());
		if (frame.capacity() < day.places()) {
			throw new BadInput("%d places are taken already".formatted(day.places()), "capacity",
					"give at least as many, or ask somebody to step back");
		}
		boolean asks = day.state() == WorkdayState.FIXED && !sameTimeAndPlace(day, frame);
		DayRow moved = with(day, frame, day.state(), day.sequence() + (asks ? 1 : 0), null);
		this.table.put(moved);
		int left = leaveOver(moved);
		if (asks) {
			this.mail.changed(moved, DayText.moved(day.day(), frame.day()));
		}
		if (day.state() == WorkdayState.FIXED) {
			this.signUps.moveUp(moved);
			this.events.publishEvent(new WorkdayMoved(workday.value(), day.group().value(), day.day(), frame.day(),
					moved.sequence(), moved.changedAt()));
		}
		return left;
	}

	/** Takes off a day what makes no sense on it, and has no day then. */
	private int leaveOver(DayRow day) {
		int left = 0;
		DaySense.OnDay sense = this.sense.on(day.day());
		for (CareTask task : open(day)) {
			Optional<String> because = sense.lost(task);
			if (because.isPresent()) {
				this.table.removeTask(day.id(), task.id());
				this.table.alsoLeftOver(day.group(), task.id(), because.get());
				left++;
			}
		}
		return left;
	}

	/** The tasks of a day that are still to be done. */
	private List<CareTask> open(DayRow day) {
		List<TaskId> ids = this.table.tasks(List.of(day.id()))
			.stream()
			.map(WorkdayTable.TaskRow::task)
			.filter((one) -> !one.done())
			.map(WorkdayTask::task)
			.toList();
		return this.calendar.find(ids).values().stream().filter((task) -> task.state() == TaskState.PLANNED).toList();
	}

	private static boolean sameTimeAndPlace(DayRow day, Frame frame) {
		return day.day().equals(frame.day()) && day.begins().equals(frame.begins()) && day.ends().equals(frame.ends())
				&& day.meetingPoint().equals(frame.meetingPoint());
	}

	/**
	 * Calls a published workday off; all who were asked or come are told.
	 * @param workday which
	 * @param because why, a sentence of 1 to 300 characters
	 * @throws BadInput when it is not published, or over
	 */
	@Transactional
	public void callOff(WorkdayId workday, String because) {
		DayRow day = locked(workday);
		if (because.isBlank()) {
			throw new BadInput("the reason is missing", "because", "say in a sentence why");
		}
		String reason = GroupDesk.line("because", "the reason", because);
		GroupDesk.length("because", reason, LONGEST_REASON);
		if (day.state() != WorkdayState.FIXED) {
			throw new BadInput("only a published workday can be called off", "workday", "look at its page");
		}
		DayRow off = with(day, frame(day), WorkdayState.CALLED_OFF, day.sequence() + 1, reason);
		this.table.put(off);
		open(off).forEach((task) -> this.table.alsoLeftOver(off.group(), task.id(),
				"Its workday on %s was called off.".formatted(DayWords.of(off.day()))));
		this.mail.calledOff(off, reason);
		this.events
			.publishEvent(new WorkdayCalledOff(workday.value(), day.group().value(), day.day(), off.changedAt()));
	}

	/**
	 * Says where a workday goes when the weather forbids it.
	 * @param workday which
	 * @param rainDay the day instead, after its own
	 * @throws BadInput when the workday is called off or over
	 */
	@Transactional
	public void rainDay(WorkdayId workday, LocalDate rainDay) {
		DayRow day = locked(workday);
		move(workday, new Frame(day.day(), day.begins(), day.ends(), day.meetingPoint(), day.capacity(), rainDay));
	}

	/**
	 * Moves a published workday to its rain date.
	 * @param workday which
	 * @return how many tasks make no sense on that day, and have none now
	 * @throws BadInput when it has none, or another workday of the group stands on it
	 */
	@Transactional
	public int moveToRainDay(WorkdayId workday) {
		DayRow day = locked(workday);
		LocalDate rain = day.rainDay();
		if (rain == null) {
			throw new BadInput("this workday has no rain date", "rainDay", "move it to a day of your choice");
		}
		if (this.rainDates.taken(day.group(), workday, rain)) {
			throw new BadInput("another workday of the group stands on its rain date", "rainDay",
					"find another rain date, or move it to a day of your choice");
		}
		return move(workday, new Frame(rain, day.begins(), day.ends(), day.meetingPoint(), day.capacity(), null));
	}

	/**
	 * Takes a workday that nobody knows of out of the plan.
	 * @param workday which
	 * @throws BadInput when it was published
	 */
	@Transactional
	public void drop(WorkdayId workday) {
		DayRow day = locked(workday);
		if (day.state() != WorkdayState.PROPOSED) {
			throw new BadInput("this workday was published", "workday", "call it off instead");
		}
		open(day).forEach((task) -> this.table.alsoLeftOver(day.group(), task.id(),
				"Its workday on %s was dropped.".formatted(DayWords.of(day.day()))));
		this.table.remove(workday);
	}

	/**
	 * Says whether planning anew leaves a workday as it is.
	 * @param workday which
	 * @param locked whether it does
	 */
	@Transactional
	public void lock(WorkdayId workday, boolean locked) {
		DayRow day = locked(workday);
		this.table.put(new DayRow(day.id(), day.group(), day.groupName(), day.day(), day.begins(), day.ends(),
				day.zone(), day.meetingPoint(), day.capacity(), day.state(), day.sequence(), locked, day.rainDay(),
				day.calledOffBecause(), day.warned(), day.thankedAt(), day.createdAt(), day.changedAt(), 0, 0));
	}

	/**
	 * Says whether planning anew leaves a task on its day.
	 * @param workday on which it stands
	 * @param task which
	 * @param pinned whether it does
	 * @param minutes its effort in person-minutes, 1 to 100,000; null leaves it
	 */
	@Transactional
	public void settle(WorkdayId workday, TaskId task, boolean pinned, @Nullable Integer minutes) {
		locked(workday);
		WorkdayTask now = on(workday, task);
		int effort = (minutes != null) ? minutes : now.minutes();
		if (effort < 1 || effort > 100_000) {
			throw new BadInput("%d minutes are outside 1 to 100,000".formatted(effort), "minutes",
					"write how long one person would need");
		}
		this.table.put(workday,
				new WorkdayTask(task, now.site(), effort, pinned, now.why(), now.team(), now.stop(), now.done()));
	}

	/**
	 * Puts a task from one workday onto another, where it stays.
	 * @param from where it stands
	 * @param task which
	 * @param to another workday of the same group; null takes it off
	 * @throws BadInput when the other one is over, of another group, or on a day on which
	 * the task makes no sense
	 */
	@Transactional
	public void moveTask(WorkdayId from, TaskId task, @Nullable WorkdayId to) {
		DayRow day = locked(from);
		WorkdayTask now = on(from, task);
		if (to != null) {
			DayRow other = locked(to);
			if (!other.group().equals(day.group()) || other.state() == WorkdayState.CALLED_OFF
					|| other.state() == WorkdayState.HELD) {
				throw new BadInput("that is no workday to which it can go", "to", "choose one that is still to come");
			}
			this.calendar.find(task).ifPresent((one) -> this.sense.on(other.day()).check(one));
			this.table.put(to,
					new WorkdayTask(task, now.site(), now.minutes(), true, "You put it here.", 1, now.stop(), false));
			tellOfTasks(other);
		}
		else {
			this.table.alsoLeftOver(day.group(), task, "It was taken off %s.".formatted(DayWords.of(day.day())));
		}
		this.table.removeTask(from, task);
		tellOfTasks(day);
	}

	/**
	 * Puts a task that has no workday onto one, where it stays.
	 * @param to onto which
	 * @param task what
	 */
	@Transactional
	public void addTask(WorkdayId to, WorkdayTask task) {
		DayRow day = locked(to);
		if (day.state() == WorkdayState.CALLED_OFF || day.state() == WorkdayState.HELD) {
			throw new BadInput("that is no workday to which it can go", "to", "choose one that is still to come");
		}
		this.table.put(to, task);
		this.table.notLeftOver(day.group(), task.task());
		tellOfTasks(day);
	}

	/** Another list of tasks is no other time: nobody is asked anew (RFC 5546, 2.1.4). */
	private void tellOfTasks(DayRow day) {
		if (day.state() == WorkdayState.FIXED) {
			DayRow now = with(day, frame(day), day.state(), day.sequence(), null);
			this.table.put(now);
			this.events.publishEvent(new WorkdayMoved(day.id().value(), day.group().value(), day.day(), day.day(),
					day.sequence(), now.changedAt()));
		}
	}

	private WorkdayTask on(WorkdayId workday, TaskId task) {
		return this.table.tasks(List.of(workday))
			.stream()
			.map(WorkdayTable.TaskRow::task)
			.filter((one) -> one.task().equals(task))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no task %s on this workday".formatted(task)));
	}

	private DayRow locked(WorkdayId workday) {
		this.table.lock(workday);
		return this.table.find(workday).orElseThrow(() -> new NotThere("There is no workday " + workday));
	}

	private static Frame frame(DayRow day) {
		LocalDate rain = day.rainDay();
		return new Frame(day.day(), day.begins(), day.ends(), day.meetingPoint(), day.capacity(),
				(rain != null && rain.isAfter(day.day())) ? rain : null);
	}

	/** Another day has other weather, so that it is warned of anew. */
	private DayRow with(DayRow day, Frame frame, WorkdayState state, int sequence, @Nullable String because) {
		String warned = Objects.equals(day.day(), frame.day()) ? day.warned() : null;
		return new DayRow(day.id(), day.group(), day.groupName(), frame.day(), frame.begins(), frame.ends(), day.zone(),
				frame.meetingPoint(), frame.capacity(), state, sequence, day.locked(), frame.rainDay(), because, warned,
				day.thankedAt(), day.createdAt(), this.clock.instant(), day.places(), day.waiting());
	}

}
