package org.leafward.reminders;

import org.leafward.measure.BadInput;

/**
 * How a person wants to be told of one topic through one channel.
 *
 * @param manner how
 * @param leadDays how many days before the first day, 0 to {@value #MOST_LEAD_DAYS}; no
 * matter for outlooks, changes and nights
 */
public record Wish(Manner manner, int leadDays) {

	/** Most days ahead. */
	public static final int MOST_LEAD_DAYS = 14;

	/**
	 * Checks the bounds.
	 * @throws BadInput when the days are out of their bounds
	 */
	public Wish {
		if (leadDays < 0 || leadDays > MOST_LEAD_DAYS) {
			throw new BadInput("%d days ahead is not 0 to %d".formatted(leadDays, MOST_LEAD_DAYS), "lead",
					"give 0 to be told on the day itself");
		}
	}

	/**
	 * Told on the day itself.
	 * @param manner how
	 * @return without days ahead
	 */
	public static Wish of(Manner manner) {
		return new Wish(manner, 0);
	}

}
