package org.leafward.reminders.core;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.reminders.Manner;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;

/**
 * When somebody is told of a message of an advisory. Of mails there is one a day at most
 * unless somebody wishes otherwise: what can't wait for a morning leaves at once as the
 * mail of that day, and what comes up afterwards waits for the next. Only a frost that is
 * near, and what is extreme, is a mail of its own beyond that.
 *
 * @param zone zone of the person
 * @param now the time
 * @param wishes how the person wants to be told
 */
public record AdvisoryDue(ZoneId zone, Instant now, Wishes wishes) {

	/** A frost that begins within this time is near. */
	static final Duration NEAR = Duration.ofHours(24);

	/** Conditions of the watch whose nights kill. */
	private static final Set<String> FROSTS = Set.of("late-freeze", "first-freeze");

	/** The kind of work that a frost asks for, in one that goes back to no condition. */
	private static final String COVER = "cover";

	private static final Set<Urgency> SOON = EnumSet.of(Urgency.IMMEDIATE, Urgency.EXPECTED);

	private static final Set<Severity> BAD = EnumSet.of(Severity.EXTREME, Severity.SEVERE);

	/**
	 * When, and with what else.
	 *
	 * @param bundle what goes out together
	 * @param day the day on which it is due, where the person is
	 * @param dueAt when it is due
	 * @param expiresAt from when it is no longer worth sending
	 */
	public record Turn(String bundle, LocalDate day, Instant dueAt, Instant expiresAt) {
	}

	/**
	 * What makes one message of one advisory to one person through one channel one row.
	 * @param channel code of the channel
	 * @param advisory the advisory
	 * @param number of its message
	 * @param person who is told
	 * @return the same whenever it is made
	 */
	public static String dedupKey(String channel, UUID advisory, int number, UUID person) {
		return channel + Known.ADVISORY + advisory + "/" + number + "@" + person;
	}

	/**
	 * Whether it goes out beyond the one mail a day.
	 * @param advisory the advisory
	 * @param now the time
	 * @return true for what is extreme and for a frost within a day, also when it was
	 * called off
	 */
	public static boolean beyondTheDay(Advisory advisory, Instant now) {
		// What was called off is past by its urgency; nobody should cover for nothing.
		boolean soon = SOON.contains(advisory.facts().urgency()) || advisory.state() == AdvisoryState.CANCELLED;
		return advisory.facts().severity() == Severity.EXTREME
				|| frost(advisory) && soon && advisory.onset().isBefore(now.plus(NEAR));
	}

	/**
	 * Whether it may go out in quiet hours, as the warning of a cold night may.
	 * @param advisory the advisory
	 * @param now the time
	 * @return false for what was called off
	 */
	public static boolean wakes(Advisory advisory, Instant now) {
		return advisory.state() != AdvisoryState.CANCELLED && beyondTheDay(advisory, now);
	}

	/**
	 * Whether somebody wants to hear of advisories at all.
	 * @param channel code of the channel
	 * @param wishes how they want to be told
	 * @return false when they turned them off or left them
	 */
	public static boolean wanted(String channel, Wishes wishes) {
		return wishes.of(channel, Topic.ADVISORY).manner() != Manner.OFF && !wishes.stopped(channel, Series.ADVISORY);
	}

	private static boolean frost(Advisory advisory) {
		String condition = advisory.condition();
		return (condition != null) ? FROSTS.contains(condition) : advisory.works().contains(COVER);
	}

	/**
	 * When the person is told.
	 * @param channel code of the channel
	 * @param advisory the advisory as the message says it
	 * @param known the person's rows of this channel
	 * @return empty when they don't want to, or it would come too late
	 */
	public Optional<Turn> turn(String channel, Advisory advisory, Collection<Known> known) {
		if (!wanted(channel, this.wishes)) {
			return Optional.empty();
		}
		Manner manner = this.wishes.of(channel, Topic.ADVISORY).manner();
		boolean soon = soon(advisory);
		boolean own = manner == Manner.SINGLE || beyondTheDay(advisory, this.now)
				|| soon && !channel.equals(Wishes.MAIL);
		Turn turn = own ? own(advisory) : together(advisory, soon, known);
		return turn.dueAt().isBefore(turn.expiresAt()) ? Optional.of(turn) : Optional.empty();
	}

	/** What can't wait until the next morning. */
	private boolean soon(Advisory advisory) {
		return BAD.contains(advisory.facts().severity()) || advisory.facts().urgency() == Urgency.IMMEDIATE
				|| advisory.state() == AdvisoryState.CANCELLED
				|| advisory.onset().isBefore(morning(today().plusDays(1)));
	}

	private Turn own(Advisory advisory) {
		LocalDateTime local = LocalDateTime.ofInstant(this.now, this.zone);
		boolean anyway = this.wishes.urgentAnyway() && wakes(advisory, this.now);
		LocalDateTime at = unpaused(anyway ? local : this.wishes.quiet().after(local));
		return new Turn("%s:%s@%s".formatted(Series.ADVISORY.code(), advisory.message(), at.toLocalDate()),
				at.toLocalDate(), at.equals(local) ? this.now : DueTimes.at(at, this.zone), advisory.expires());
	}

	private Turn together(Advisory advisory, boolean soon, Collection<Known> known) {
		LocalDateTime local = LocalDateTime.ofInstant(this.now, this.zone);
		LocalDate today = today();
		if (this.wishes.pausedOn(today)) {
			return with(unpaused(local).toLocalDate(), advisory);
		}
		if (OnRecord.of(known, this.now, this.zone).told()) {
			return with(unpaused(local.plusDays(1)).toLocalDate(), advisory);
		}
		boolean ahead = !this.now.isAfter(morning(today).plus(DueTimes.SPREAD));
		LocalDateTime at = this.wishes.quiet().after(local);
		if (ahead || !soon || !at.toLocalDate().equals(today)) {
			return with(ahead ? today : today.plusDays(1), advisory);
		}
		// As the mail of this day, so that what comes up after it waits for the next.
		return new Turn(bundle(today), today, at.equals(local) ? this.now : DueTimes.at(at, this.zone),
				advisory.expires());
	}

	private Turn with(LocalDate day, Advisory advisory) {
		return new Turn(bundle(day), day, morning(day), advisory.expires());
	}

	private static String bundle(LocalDate day) {
		return Series.MORNING.code() + ":" + day;
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.now, this.zone);
	}

	private Instant morning(LocalDate day) {
		return DueTimes.at(this.wishes.quiet().after(day.atTime(this.wishes.morning())), this.zone);
	}

	private LocalDateTime unpaused(LocalDateTime at) {
		LocalDate until = this.wishes.pausedUntil();
		return (until != null && this.wishes.pausedOn(at.toLocalDate())) ? until.atTime(this.wishes.morning()) : at;
	}

}
