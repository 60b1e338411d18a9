package org.leafward.reminders.web;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;

/**
 * Wishes as JSON, whole: what is usual is told too. It can be sent back as it is.
 *
 * @param language code of the language
 * @param units {@code both}, {@code metric} or {@code us}
 * @param morning when the day's message is due, in the person's zone
 * @param outlookDay weekday of the outlook
 * @param quietFrom when quiet hours begin
 * @param quietTo when they end; the same for none at all
 * @param urgentAnyway whether warnings of the night go out in quiet hours too
 * @param pausedUntil first day on which messages go out again; null without a pause
 * @param channels wishes by channel and topic
 * @param stopped series that were left, by channel
 */
record WishesView(String language, String units, String morning, String outlookDay, String quietFrom, String quietTo,
		boolean urgentAnyway, @Nullable LocalDate pausedUntil, Map<String, Map<String, WishView>> channels,
		Map<String, List<String>> stopped) {

	/**
	 * How one is told of a topic.
	 *
	 * @param manner code of the manner
	 * @param leadDays days ahead
	 */
	record WishView(String manner, int leadDays) {

		static WishView of(Wish wish) {
			return new WishView(wish.manner().code(), wish.leadDays());
		}

	}

	/**
	 * Makes it.
	 * @param wishes the wishes
	 * @param channels codes of the channels there are
	 * @param today the day where the person is; a pause that is over is left out
	 */
	static WishesView of(Wishes wishes, Collection<String> channels, LocalDate today) {
		Map<String, Map<String, WishView>> told = new LinkedHashMap<>();
		channels.forEach((channel) -> told.put(channel, told(wishes, channel)));
		return new WishesView(wishes.speech().language().code(), wishes.speech().units().code(),
				wishes.morning().toString(), WishesFields.word(wishes.outlookDay()), wishes.quiet().from().toString(),
				wishes.quiet().to().toString(), wishes.urgentAnyway(),
				wishes.pausedOn(today) ? wishes.pausedUntil() : null, told, stopped(wishes));
	}

	private static Map<String, WishView> told(Wishes wishes, String channel) {
		Map<String, WishView> told = new LinkedHashMap<>();
		for (Topic topic : Topic.values()) {
			told.put(topic.code(), WishView.of(wishes.of(channel, topic)));
		}
		return told;
	}

	private static Map<String, List<String>> stopped(Wishes wishes) {
		Map<String, List<String>> stopped = new TreeMap<>();
		wishes.stopped()
			.forEach((channel, series) -> stopped.put(channel, series.stream().sorted().map(Series::code).toList()));
		return stopped;
	}

}
