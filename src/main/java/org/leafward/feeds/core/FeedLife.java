package org.leafward.feeds.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;

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
	 * What the calendar says. It stands on the last day; its date of change is the first
	 * day of the announcement, so that the same announcement is always the same entry,
	 * and a later one is newer.
	 * @param feed identifier of the feed
	 * @return an entry of one day
	 */
	public FeedEntry announcement(UUID feed) {
		LocalDate end = end();
		Instant said = end.minusDays(ANNOUNCED).atStartOfDay(ZoneOffset.UTC).toInstant();
		return new FeedEntry("ends-" + feed + TaskEntries.DOMAIN,
				(int) ChronoUnit.DAYS.between(day(this.created), day(this.lastUse)),
				this.created.truncatedTo(ChronoUnit.SECONDS), said, DayWindow.of(end),
				"This calendar ends on %s unless it is fetched".formatted(DayWords.of(end)),
				("No calendar program has asked for this calendar for a long time, so it ends on %s. It goes on by itself as"
						+ " soon as a program fetches it, and this entry goes away. If it has ended, make a new one.")
					.formatted(DayWords.of(end)),
				null, null, false);
	}

}
