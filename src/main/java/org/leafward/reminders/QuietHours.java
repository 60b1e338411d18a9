package org.leafward.reminders;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * A time of each day in which nothing goes out; it may wrap midnight.
 *
 * @param from its first minute
 * @param to the minute in which it has ended; the same as {@code from} for none at all
 */
public record QuietHours(LocalTime from, LocalTime to) {

	/** From ten in the evening to six in the morning. */
	public static final QuietHours USUAL = new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 0));

	public QuietHours {
		from = from.withSecond(0).withNano(0);
		to = to.withSecond(0).withNano(0);
	}

	/**
	 * Whether a time of day is quiet.
	 * @param time the time
	 * @return false when there are no quiet hours
	 */
	public boolean has(LocalTime time) {
		if (this.from.equals(this.to)) {
			return false;
		}
		boolean after = !time.isBefore(this.from);
		boolean before = time.isBefore(this.to);
		return this.from.isBefore(this.to) ? after && before : after || before;
	}

	/**
	 * When something may go out that wants to at a time.
	 * @param wanted date and time on the person's clock
	 * @return the same, or the end of the quiet hours that it falls into
	 */
	public LocalDateTime after(LocalDateTime wanted) {
		if (!has(wanted.toLocalTime())) {
			return wanted;
		}
		LocalDate day = wanted.toLocalDate();
		return (wanted.toLocalTime().isBefore(this.to) ? day : day.plusDays(1)).atTime(this.to);
	}

}
