package org.leafward.reminders.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.Topic;
import org.leafward.reminders.channel.Channel;

/**
 * What will go out at one time through one channel.
 *
 * @param at when, for machines
 * @param when when, in words
 * @param by the channel, in words
 * @param lines what it tells
 */
record NextRow(Instant at, String when, String by, List<Line> lines) {

	private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

	/**
	 * One thing that it tells.
	 *
	 * @param words what
	 * @param where plant and site; empty for an outlook
	 * @param href its page; null where there is none
	 */
	record Line(String words, String where, @Nullable String href) {

		static Line of(Coming.Upcoming one) {
			if (one.task() == null) {
				return new Line(Topic.of(one.topic()).words(), "", null);
			}
			String change = one.topic().equals(Topic.CHANGE.code()) ? "Moved or fallen away: " : "";
			return new Line(change + one.title(), one.plant() + ", " + one.site(), "/tasks/" + one.task());
		}

	}

	/**
	 * Puts together what goes out together.
	 * @param coming soonest first
	 * @param zone the person's
	 * @param channels the ways there are
	 * @return soonest first
	 */
	static List<NextRow> of(List<Coming.Upcoming> coming, ZoneId zone, List<Channel> channels) {
		Map<String, String> names = channels.stream().collect(Collectors.toMap(Channel::code, Channel::words));
		Map<Sending, List<Line>> together = new LinkedHashMap<>();
		coming.forEach(
				(one) -> together
					.computeIfAbsent(new Sending(one.dueAt(), names.getOrDefault(one.channel(), one.channel())),
							(key) -> new ArrayList<>())
					.add(Line.of(one)));
		return together.entrySet()
			.stream()
			.map((one) -> new NextRow(one.getKey().at(), WORDS.format(one.getKey().at().atZone(zone)),
					one.getKey().by(), one.getValue()))
			.toList();
	}

	/**
	 * What goes out together.
	 *
	 * @param at when
	 * @param by through which channel
	 */
	private record Sending(Instant at, String by) {
	}

}
