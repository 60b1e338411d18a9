package org.leafward.care.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNews.News;
import org.leafward.measure.DayWindow;
import org.leafward.pages.Formats;
import org.leafward.pages.TaskLine;
import org.leafward.register.SiteId;

/**
 * What planning changed of late, told with the reason; what is alike is told together.
 */
final class WhatChanged {

	private WhatChanged() {
	}

	private record Key(String rule, String title, SiteId site, DayWindow window, @Nullable DayWindow was,
			@Nullable Instant backAt, @Nullable String because) {
	}

	/**
	 * The lines.
	 * @param news what changed
	 * @param most lines that have words; further ones are made without
	 * @param why asks for the reasons of tasks that moved, of some dozens at most
	 * @param zone zone of the reader
	 * @param today the day there
	 * @return in the order of the news
	 */
	static List<TaskLine> lines(Collection<News> news, int most, Function<Collection<TaskId>, Map<TaskId, String>> why,
			ZoneId zone, LocalDate today) {
		Map<Key, List<News>> groups = new LinkedHashMap<>();
		Set<List<Object>> seen = new HashSet<>();
		for (News one : news) {
			CareTask task = one.task();
			// Of a repeat only the first, as in all lists.
			if (seen.add(List.of(task.subject(), task.rule(), task.season()))) {
				groups
					.computeIfAbsent(new Key(task.rule(), task.text().title(), task.site(), task.window(), one.was(),
							one.backAt(), task.withdrawnBecause()), (key) -> new ArrayList<>())
					.add(one);
			}
		}
		List<TaskId> moved = groups.values()
			.stream()
			.limit(most)
			.map((group) -> group.get(0))
			.filter((one) -> one.was() != null)
			.map((one) -> one.task().id())
			.toList();
		Map<TaskId, String> reasons = why.apply(moved);
		Formats formats = new Formats(today.getYear());
		return groups.values()
			.stream()
			.map((group) -> line(group, words(group.get(0), reasons.get(group.get(0).task().id()), formats, zone)))
			.toList();
	}

	private static TaskLine line(List<News> group, @Nullable String words) {
		TaskLine line = Gathered.line(group.stream().map(News::task).toList());
		return new TaskLine(line.mark(), line.title(), line.plant(), line.site(), line.from(), line.to(), line.href(),
				words, line.withdrawn());
	}

	/**
	 * What happened to a task.
	 * @param news the change
	 * @param why why it moved; null when that is not known
	 * @param formats writes days
	 * @param zone zone of the reader
	 * @return one or two sentences; of a withdrawn task its reason
	 */
	static @Nullable String words(News news, @Nullable String why, Formats formats, ZoneId zone) {
		DayWindow was = news.was();
		if (was != null) {
			return "Now %s, was %s.".formatted(formats.window(news.task().window()), formats.window(was))
					+ ((why != null) ? " " + why : "");
		}
		Instant back = news.backAt();
		if (back != null) {
			return "It was withdrawn, and is called for again since %s."
				.formatted(formats.day(LocalDate.ofInstant(back, zone)));
		}
		return news.task().withdrawnBecause();
	}

}
