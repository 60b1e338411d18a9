package org.leafward.reminders.core;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/** When a reminder is due and until when it is of use, in the zone of who gets it. */
public final class DueTimes {

	/** Local time at which reminders are due. */
	public static final LocalTime MORNING = LocalTime.of(7, 0);

	/** Over how long a time the messages of one morning leave. */
	public static final Duration SPREAD = Duration.ofMinutes(10);

	/** Days after the first day of a task on which its reminder is still of use. */
	public static final int LATE_DAYS = 3;

	private DueTimes() {
	}

	/**
	 * The instant at which the reminder of a task is due.
	 * @param firstDay first day of the task
	 * @param zone zone of the person
	 * @return {@link #MORNING} of that day
	 */
	public static Instant dueAt(LocalDate firstDay, ZoneId zone) {
		return at(firstDay.atTime(MORNING), zone);
	}

	/**
	 * The instant from which the reminder of a task is no longer worth sending.
	 * @param firstDay first day of the task
	 * @param zone zone of the person
	 * @return the end of the last of the {@link #LATE_DAYS} days after the first day
	 */
	public static Instant expiresAt(LocalDate firstDay, ZoneId zone) {
		return at(firstDay.plusDays(LATE_DAYS + 1).atStartOfDay(), zone);
	}

	/**
	 * The instant at which clocks in a zone show a local time.
	 * @param local date and time on the clock
	 * @param zone the zone
	 * @return the first of two where clocks show it twice; where they skip it, the first
	 * instant after the skip
	 */
	public static Instant at(LocalDateTime local, ZoneId zone) {
		ZoneRules rules = zone.getRules();
		ZoneOffsetTransition transition = rules.getTransition(local);
		if (transition != null && transition.isGap()) {
			// ZonedDateTime would go past the end of the gap by as much as the time lies
			// in it.
			return transition.getInstant();
		}
		// In an overlap this is the earlier instant's offset.
		return local.toInstant(rules.getOffset(local));
	}

}
