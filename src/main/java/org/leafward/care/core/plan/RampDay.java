package org.leafward.care.core.plan;

import java.time.LocalDate;

/**
 * A day of a ramp of light that was told to its people.
 *
 * @param number which day of the ramp, from 1, by the calendar
 * @param day the day
 * @param step the step that it tells, from 1
 * @param held whether the plants stayed in: it was told to, or somebody left the day out
 * @param logged whether somebody noted what they did
 */
public record RampDay(int number, LocalDate day, int step, boolean held, boolean logged) {

	/** Whether it is known how the day went, or has to be taken as told. */
	boolean past(LocalDate today) {
		return this.day.isBefore(today) || (this.logged && this.day.equals(today));
	}

	/** The first day of its ramp. */
	LocalDate first() {
		return this.day.minusDays(this.number - 1L);
	}

}
