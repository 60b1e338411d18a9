package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;

/**
 * What a person was told through a channel, so that no morning has two messages. What
 * comes up after the morning's message has left waits for the next morning; when none has
 * left, as for somebody new, it need not wait.
 *
 * @param waiting rows whose time has come and that haven't left; they keep their time
 * @param told whether today's message has left, or is leaving
 * @param now the time
 * @param zone zone of the person
 */
record OnRecord(Map<String, Known> waiting, boolean told, Instant now, ZoneId zone) {

	static OnRecord of(Collection<Known> known, Instant now, ZoneId zone) {
		Map<String, Known> waiting = known.stream()
			.filter((row) -> row.state() == ReminderState.PENDING && !row.dueAt().isAfter(now))
			.collect(Collectors.toMap(Known::dedupKey, (row) -> row));
		LocalDate today = LocalDate.ofInstant(now, zone);
		boolean told = known.stream()
			.filter((row) -> Changes.told(row.state()) || row.state() == ReminderState.CLAIMED)
			.filter((row) -> row.bundle().startsWith(Series.MORNING.code()))
			.anyMatch((row) -> LocalDate.ofInstant(row.dueAt(), zone).equals(today));
		return new OnRecord(waiting, told, now, zone);
	}

	/**
	 * When something of the morning's message is due.
	 * @param usual what the plan and the wishes call for
	 * @param morning when a day's message is due
	 * @return the same while its morning is ahead; else due now or with the next message
	 */
	Wanted oneADay(Wanted usual, Function<LocalDate, Instant> morning) {
		Known row = this.waiting.get(usual.dedupKey());
		if (row != null) {
			return usual.dueAt(row.dueAt(), row.bundle());
		}
		LocalDate today = LocalDate.ofInstant(this.now, this.zone);
		Instant due = morning.apply(today);
		if (usual.dueAt().isAfter(due)) {
			return usual;
		}
		if (this.told) {
			return on(usual, today.plusDays(1), morning.apply(today.plusDays(1)));
		}
		boolean stillThisMorning = !this.now.isAfter(due.plus(DueTimes.SPREAD));
		return on(usual, today, stillThisMorning ? due : this.now);
	}

	private static Wanted on(Wanted usual, LocalDate day, Instant due) {
		return usual.dueAt(due, DueTasks.bundle(Series.MORNING, day, usual.subject()));
	}

}
