package org.leafward.reminders;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Speech;

/**
 * How a person wants to be told.
 *
 * @param speech language and units
 * @param morning when the day's message is due, in the person's zone
 * @param outlookDay day of the weekly outlook
 * @param quiet when nothing goes out
 * @param urgentAnyway whether warnings of the night go out in quiet hours too
 * @param pausedUntil first day on which messages go out again; null when there is no
 * pause
 * @param chosen what was chosen, by channel and topic; the rest is as usual
 * @param stopped series that were left, by channel
 */
public record Wishes(Speech speech, LocalTime morning, DayOfWeek outlookDay, QuietHours quiet, boolean urgentAnyway,
		@Nullable LocalDate pausedUntil, Map<String, Map<Topic, Wish>> chosen, Map<String, Set<Series>> stopped) {

	/** The channel that people have without asking for it. */
	public static final String MAIL = "mail";

	/**
	 * Of those who never chose: one mail in the morning at most, and one more before a
	 * night that kills.
	 */
	public static final Wishes USUAL = new Wishes(Speech.USUAL, LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL,
			true, null, Map.of(), Map.of());

	public Wishes {
		morning = morning.withSecond(0).withNano(0);
		chosen = Map.copyOf(chosen);
		stopped = Map.copyOf(stopped);
	}

	/**
	 * The wish for a topic.
	 * @param channel code of the channel
	 * @param topic the topic
	 * @return what was chosen, or what is usual
	 */
	public Wish of(String channel, Topic topic) {
		Wish own = this.chosen.getOrDefault(channel, Map.of()).get(topic);
		return (own != null) ? own : usual(channel, topic);
	}

	/**
	 * Whether a series was left.
	 * @param channel code of the channel
	 * @param series the series
	 * @return true when nothing of it goes out
	 */
	public boolean stopped(String channel, Series series) {
		return this.stopped.getOrDefault(channel, Set.of()).contains(series);
	}

	/**
	 * What is usual. Mail tells of everything, once a day; another channel is an extra
	 * and tells what can't wait, and what falls on the morning.
	 * @param channel code of the channel
	 * @param topic the topic
	 * @return on the day itself
	 */
	public static Wish usual(String channel, Topic topic) {
		boolean mail = channel.equals(MAIL);
		return Wish.of(switch (topic) {
			case TONIGHT -> Manner.SINGLE;
			// Of advisories too: what can't wait leaves at once whatever falls on a
			// morning.
			case TO_DO, HOLD_OFF, RAMP, CHANGE, ADVISORY -> Manner.MORNING;
			case LOOK_FOR, OUTLOOK -> mail ? Manner.WEEKLY : Manner.OFF;
		});
	}

	/**
	 * Whether there is a pause on a day.
	 * @param day the day where the person is
	 * @return true when nothing goes out on it
	 */
	public boolean pausedOn(LocalDate day) {
		return this.pausedUntil != null && day.isBefore(this.pausedUntil);
	}

	/**
	 * The topics that a message of its own may hold through a channel.
	 * @param channel code of the channel
	 * @param manner the manner
	 * @return those with that manner
	 */
	public Set<Topic> topics(String channel, Manner manner) {
		EnumSet<Topic> topics = EnumSet.allOf(Topic.class);
		topics.removeIf((topic) -> of(channel, topic).manner() != manner);
		return topics;
	}

}
