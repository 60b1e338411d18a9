package org.leafward.reminders.web;

import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;

/**
 * Wishes as somebody sends them as JSON. What is left out is as usual, but for the series
 * that were left: these stay as they are.
 *
 * @param language code of a language, for example {@code es}
 * @param units {@code both}, {@code metric} or {@code us}
 * @param morning when the day's message is due, such as 07:00
 * @param outlookDay a weekday
 * @param quietFrom when quiet hours begin
 * @param quietTo when they end; the same for none at all
 * @param urgentAnyway whether warnings of the night go out in quiet hours too
 * @param pausedUntil first day on which messages go out again
 * @param channels wishes by channel and topic
 * @param stopped series that were left, by channel
 */
record WishesBody(@Nullable String language, @Nullable String units, @Nullable String morning,
		@Nullable String outlookDay, @Nullable String quietFrom, @Nullable String quietTo,
		@Nullable String urgentAnyway, @Nullable String pausedUntil,
		@Nullable Map<String, @Nullable Map<String, @Nullable WishBody>> channels,
		@Nullable Map<String, @Nullable List<String>> stopped) {

	/**
	 * How to tell of one topic.
	 *
	 * @param manner code of a manner
	 * @param leadDays days ahead, 0 to 14
	 */
	record WishBody(@Nullable String manner, @Nullable String leadDays) {
	}

	/**
	 * Reads it.
	 * @param codes codes of the channels there are
	 * @param today the day where the person is
	 * @return the wishes, with the series that were left where some are told
	 * @throws BadInput with everything that can't be used
	 */
	Wishes wishes(Collection<String> codes, LocalDate today) {
		Findings all = new Findings();
		Map<String, String> fields = new LinkedHashMap<>();
		put(fields, "language", this.language);
		put(fields, "units", this.units);
		put(fields, "morning", this.morning);
		put(fields, "outlookDay", this.outlookDay);
		put(fields, "quietFrom", this.quietFrom);
		put(fields, "quietTo", this.quietTo);
		put(fields, "urgentAnyway", this.urgentAnyway);
		put(fields, "pausedUntil", this.pausedUntil);
		or(this.channels).forEach((channel, topics) -> all.check(() -> put(fields, known(channel, codes), or(topics))));
		Map<String, Set<Series>> left = new LinkedHashMap<>();
		or(this.stopped).forEach((channel, some) -> all.check(() -> left.put(known(channel, codes), series(some))));
		Supplier<Wishes> read = all.read(() -> WishesFields.read(fields, codes, today));
		return all.give(() -> with(read.get(), left));
	}

	private static Wishes with(Wishes read, Map<String, Set<Series>> left) {
		return new Wishes(read.speech(), read.morning(), read.outlookDay(), read.quiet(), read.urgentAnyway(),
				read.pausedUntil(), read.chosen(), left);
	}

	private static String known(String channel, Collection<String> codes) {
		if (!codes.contains(channel)) {
			throw new BadInput("'%s' is no channel here".formatted(channel), "channels",
					"use " + codes.stream().sorted().collect(Collectors.joining(", ")));
		}
		return channel;
	}

	private static void put(Map<String, String> fields, String channel, Map<String, @Nullable WishBody> topics) {
		topics.forEach((code, told) -> {
			Topic topic = Topic.of(code);
			if (told != null) {
				put(fields, WishesFields.manner(channel, topic), told.manner());
				put(fields, WishesFields.ahead(channel, topic), told.leadDays());
			}
		});
	}

	private static void put(Map<String, String> fields, String name, @Nullable String text) {
		if (text != null) {
			fields.put(name, text);
		}
	}

	private static Set<Series> series(@Nullable List<String> codes) {
		Set<Series> all = EnumSet.noneOf(Series.class);
		if (codes != null) {
			codes.forEach((code) -> all.add(series(code)));
		}
		return all;
	}

	private static Series series(@Nullable String code) {
		return Stream.of(Series.values())
			.filter((one) -> one.code().equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("'%s' is no series".formatted(code), "stopped",
					"use " + Stream.of(Series.values()).map(Series::code).collect(Collectors.joining(", "))));
	}

	private static <V> Map<String, V> or(@Nullable Map<String, V> map) {
		return (map != null) ? map : Map.of();
	}

}
