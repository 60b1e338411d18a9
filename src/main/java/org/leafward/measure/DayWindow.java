package org.leafward.measure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A span of whole days, both ends included.
 *
 * @param from first day
 * @param to last day, not before {@code from}
 */
public record DayWindow(LocalDate from, LocalDate to) {

	public DayWindow {
		if (to.isBefore(from)) {
			throw new IllegalArgumentException("window ends on %s, before it begins on %s".formatted(to, from));
		}
	}

	/**
	 * A window of one day.
	 * @param day the day
	 * @return from and to are that day
	 */
	public static DayWindow of(LocalDate day) {
		return new DayWindow(day, day);
	}

	/**
	 * The day after the last one, as iCalendar's DTEND wants it.
	 * @return first day that is not in the window
	 */
	public LocalDate endExclusive() {
		return this.to.plusDays(1);
	}

	/**
	 * Number of days.
	 * @return 1 or more
	 */
	public long days() {
		return ChronoUnit.DAYS.between(this.from, this.to) + 1;
	}

	public boolean contains(LocalDate day) {
		return !day.isBefore(this.from) && !day.isAfter(this.to);
	}

	public boolean overlaps(DayWindow other) {
		return !this.to.isBefore(other.from) && !other.to.isBefore(this.from);
	}

}
