package org.leafward.feeds.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * How long a feed lives: 18 months from when a program last fetched it, or from when it
 * was made. Days are those of UTC.
 *
 * @param created when it was made
 * @param lastUse when it was last fetched; when it was made, if never
 */
public record FeedLife(Instant created, Instant lastUse) {

	/** Months without a fetch after which a feed ends. */
	public static final int MONTHS = 18;

	/** Days before its end from which the calendar says so. */
	public static final int ANNOUNCED = 60;

	/**
	 * The life of a feed.
	 * @param created when it was made
	 * @param fetched when it was last fetched; null for never
	 * @return its life
	 */
	public static FeedLife of(Instant created, @Nullable Instant fetched) {
		return new FeedLife(created, (fetched != null) ? fetched : created);
	}

	private static LocalDate day(Instant instant) {
		return LocalDate.ofInstant(instant, ZoneOffset.UTC);
	}

	/**
	 * The day on which it ends, unless it is fetched before.
	 * @return 18 months after the last use
	 */
	public LocalDate end() {
		return day(this.lastUse).plusMonths(MONTHS);
	}

	/**
	 * Whether the calendar says on a day that it ends.
	 * @param day the day
	 * @return true from 60 days before the end
	 */
	public boolean announcedOn(LocalDate day) {
		return !day.isBefore(end().minusDays(ANNOUNCED));
	}

	/**
	 * How long it was used, which grows from one announcement to the next.
	 * @return days from when it was made to its last use
	 */
	int daysOfUse() {
		return (int) ChronoUnit.DAYS.between(day(this.created), day(this.lastUse));
	}

}
