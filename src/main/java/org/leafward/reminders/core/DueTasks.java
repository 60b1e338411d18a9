package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.Beginning;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.Manner;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;

/**
 * Which reminders a plan and the wishes of a person call for.
 *
 * @param person who is told
 * @param zone zone of the person
 * @param now the time
 * @param wishes how the person wants to be told
 */
public record DueTasks(PersonId person, ZoneId zone, Instant now, Wishes wishes) {

	/** How many days ahead reminders are made. */
	public static final int AHEAD_DAYS = 14;

	/** How many days after its first day a task that was told is watched for changes. */
	public static final int WATCHED_DAYS = 14;

	/** Days on which an outlook is still of use after its own. */
	private static final int OUTLOOK_DAYS = 1;

	/**
	 * The first days for which there may be reminders. It starts before today so that a
	 * server that was off for a weekend still sends, and reaches as far as somebody may
	 * want to know before.
	 * @param today the day where the person is
	 * @return {@value DueTimes#LATE_DAYS} days back to 28 days ahead
	 */
	public static DayWindow firstDays(LocalDate today) {
		return new DayWindow(today.minusDays(DueTimes.LATE_DAYS), today.plusDays(AHEAD_DAYS + Wish.MOST_LEAD_DAYS));
	}

	/**
	 * The first days of rows that may matter.
	 * @param today the day where the person is
	 * @return further back than {@link #firstDays}, for what was told
	 */
	public static DayWindow onRecord(LocalDate today) {
		DayWindow days = firstDays(today);
		return new DayWindow(today.minusDays(WATCHED_DAYS + Changes.SAME_DAYS), days.to().plusDays(Changes.SAME_DAYS));
	}

	/**
	 * The reminders through one channel.
	 * @param channel code of the channel
	 * @param tasks tasks of the person that begin near today, and those that were told
	 * @param known the person's rows of this channel
	 * @return one for each task at most, one for each outlook, and changes
	 */
	public List<Wanted> wanted(String channel, Collection<Beginning> tasks, Collection<Known> known) {
		List<Wanted> all = new ArrayList<>();
		DayWindow near = firstDays(today());
		OnRecord record = OnRecord.of(known, this.now, this.zone);
		for (Beginning task : tasks) {
			if (task.state() == TaskState.PLANNED && near.contains(task.from())) {
				topic(task).flatMap((topic) -> ofTask(channel, topic, task, record)).ifPresent(all::add);
			}
		}
		outlooks(channel, record, all);
		changes(channel, tasks, known, all);
		return all;
	}

	/**
	 * What a task is told as.
	 * @param task the task
	 * @return empty for a day of a ramp that nothing sets apart
	 */
	public static Optional<Topic> topic(Beginning task) {
		if (task.night()) {
			return Optional.of(Topic.TONIGHT);
		}
		return Optional.ofNullable(switch (task.kind()) {
			case DO -> Topic.TO_DO;
			case HOLD_OFF -> Topic.HOLD_OFF;
			case WATCH -> Topic.LOOK_FOR;
			case RAMP_DAY -> (task.firstOfRamp() || task.held()) ? Topic.RAMP : null;
		});
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.now, this.zone);
	}

	private Optional<Wanted> ofTask(String channel, Topic topic, Beginning task, OnRecord record) {
		Wish wish = this.wishes.of(channel, topic);
		Series series = series(topic, wish.manner());
		if (series == null || this.wishes.stopped(channel, series)) {
			return Optional.empty();
		}
		boolean night = topic == Topic.TONIGHT;
		boolean ahead = !night && (task.kind() != TaskKind.RAMP_DAY || task.firstOfRamp());
		LocalDate day = unpaused(ahead ? task.from().minusDays(wish.leadDays()) : task.from());
		Instant expires = night ? DueTimes.at(task.from().plusDays(1).atStartOfDay(), this.zone)
				: DueTimes.expiresAt(task.from(), this.zone);
		Wanted usual = new Wanted(channel, topic, task.id().value(), task.from(),
				bundle(series, day, task.id().value()), due(day, night), expires);
		Wanted wanted = (series == Series.MORNING) ? record.oneADay(usual, this::due) : usual;
		boolean far = day.isAfter(today().plusDays(AHEAD_DAYS));
		return (!far && wanted.dueAt().isBefore(expires)) ? Optional.of(wanted) : Optional.empty();
	}

	private Instant due(LocalDate day) {
		return due(day, false);
	}

	private static @Nullable Series series(Topic topic, Manner manner) {
		return switch (manner) {
			case OFF, WEEKLY -> null;
			case MORNING -> Series.MORNING;
			case SINGLE -> (topic == Topic.TONIGHT) ? Series.TONIGHT : Series.SINGLE;
		};
	}

	/** All nights' warnings of a day go together, and all that falls on a morning. */
	static String bundle(Series series, LocalDate day, UUID subject) {
		return series.code() + ":" + ((series == Series.SINGLE) ? subject + "@" : "") + day;
	}

	private LocalDate unpaused(LocalDate day) {
		LocalDate until = this.wishes.pausedUntil();
		return (until != null && this.wishes.pausedOn(day)) ? until : day;
	}

	private Instant due(LocalDate day, boolean urgent) {
		LocalDateTime morning = day.atTime(this.wishes.morning());
		boolean anyway = urgent && this.wishes.urgentAnyway();
		return DueTimes.at(anyway ? morning : this.wishes.quiet().after(morning), this.zone);
	}

	private void outlooks(String channel, OnRecord record, List<Wanted> all) {
		if (this.wishes.of(channel, Topic.OUTLOOK).manner() == Manner.OFF
				|| this.wishes.stopped(channel, Series.OUTLOOK)) {
			return;
		}
		LocalDate first = today().minusDays(OUTLOOK_DAYS);
		first.datesUntil(today().plusDays(AHEAD_DAYS + 1))
			.filter((day) -> day.getDayOfWeek() == this.wishes.outlookDay() && !this.wishes.pausedOn(day))
			.map((day) -> new Wanted(channel, Topic.OUTLOOK, this.person.value(), day,
					bundle(Series.MORNING, day, this.person.value()), due(day),
					DueTimes.at(day.plusDays(OUTLOOK_DAYS + 1).atStartOfDay(), this.zone)))
			.map((wanted) -> record.oneADay(wanted, this::due))
			// One that would move is of no use on another day.
			.filter((wanted) -> wanted.bundle().endsWith(wanted.firstDay().toString()))
			.forEach(all::add);
	}

	/** What was told and holds no longer. */
	private void changes(String channel, Collection<Beginning> tasks, Collection<Known> known, List<Wanted> all) {
		Series series = series(Topic.CHANGE, this.wishes.of(channel, Topic.CHANGE).manner());
		if (series == null || this.wishes.stopped(channel, series)) {
			return;
		}
		Map<TaskId, LocalDate> told = new HashMap<>();
		known.stream()
			.filter((row) -> Changes.told(row.state()))
			.forEach((row) -> row.task().ifPresent((task) -> told.merge(task, row.firstDay(), this::later)));
		for (Beginning task : tasks) {
			LocalDate day = told.get(task.id());
			if (day != null && !day.isBefore(today().minusDays(WATCHED_DAYS))) {
				changed(task, day).ifPresent((since) -> all.add(change(channel, series, task, since)));
			}
		}
	}

	private LocalDate later(LocalDate a, LocalDate b) {
		return a.isAfter(b) ? a : b;
	}

	/** The day that the change is about. */
	private Optional<LocalDate> changed(Beginning task, LocalDate told) {
		if (task.state() == TaskState.WITHDRAWN && !task.to().isBefore(today())) {
			return Optional.of(told);
		}
		boolean moved = task.state() == TaskState.PLANNED && task.from().isAfter(today())
				&& task.from().isAfter(told.plusDays(Changes.SAME_DAYS));
		return moved ? Optional.of(task.from()) : Optional.empty();
	}

	private Wanted change(String channel, Series series, Beginning task, LocalDate day) {
		LocalDate today = unpaused(today());
		Instant morning = due(today, false);
		Instant due = (series == Series.SINGLE) ? this.now
				: morning.isBefore(this.now) ? due(today.plusDays(1), false) : morning;
		LocalDate dueDay = LocalDate.ofInstant(due, this.zone);
		return new Wanted(channel, Topic.CHANGE, task.id().value(), day, bundle(series, dueDay, task.id().value()), due,
				DueTimes.at(dueDay.plusDays(DueTimes.LATE_DAYS + 1).atStartOfDay(), this.zone));
	}

}
