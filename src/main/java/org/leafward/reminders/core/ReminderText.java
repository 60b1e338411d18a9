package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.reminders.MessageText;

/** Writes one mail about the tasks that are due for one person. */
public final class ReminderText {

	private static final int LONGEST_SUBJECT = 120;

	private static final int COLUMNS = 72;

	private static final Comparator<ReminderItem> ORDER = Comparator
		.comparing((ReminderItem item) -> item.task().window().from())
		.thenComparing((item) -> item.task().siteName())
		.thenComparing((item) -> item.task().text().title())
		.thenComparing((item) -> item.task().id().value());

	private ReminderText() {
	}

	/**
	 * Writes a mail.
	 * @param items the tasks, at least one, in any order
	 * @param baseUrl address of this server without a slash at its end
	 * @return the mail's text; the same for the same tasks
	 */
	public static MessageText of(List<ReminderItem> items, String baseUrl) {
		List<ReminderItem> ordered = items.stream().sorted(ORDER).toList();
		Map<Alike, List<ReminderItem>> alike = new LinkedHashMap<>();
		ordered.forEach((item) -> alike.computeIfAbsent(Alike.of(item), (key) -> new ArrayList<>()).add(item));
		List<TaskLines> tasks = alike.values().stream().map((group) -> TaskLines.of(group, baseUrl)).toList();
		String opening = opening(ordered, tasks.size());
		List<String> footer = footer(ordered, baseUrl);
		String subject = subject(ordered, tasks);
		return new MessageText(subject, plain(opening, tasks, footer), html(opening, tasks, footer), subject, baseUrl,
				"{}");
	}

	/** What makes the tasks of several plantings one piece of work, told once. */
	private record Alike(SiteId site, String rule, DayWindow window, TaskText text, int rampDays) {

		static Alike of(ReminderItem item) {
			CareTask task = item.task();
			return new Alike(task.site(), task.rule(), task.window(), task.text(), item.rampDays());
		}

	}

	private static String subject(List<ReminderItem> items, List<TaskLines> tasks) {
		String first = tasks.get(0).heading();
		String what = (tasks.size() == 1) ? first : "%d tasks, first %s".formatted(tasks.size(), first);
		return OneLine.of(TaskLines.day(firstDay(items)) + ": " + what, LONGEST_SUBJECT);
	}

	/** Without a tense: a mail may leave some days after the first day. */
	private static String opening(List<ReminderItem> items, int tasks) {
		String first = TaskLines.day(firstDay(items));
		String last = TaskLines.day(items.get(items.size() - 1).task().window().from());
		if (tasks == 1) {
			return "One task, from %s on.".formatted(first);
		}
		return first.equals(last) ? "%d tasks, from %s on.".formatted(tasks, first)
				: "%d tasks, with first days from %s to %s.".formatted(tasks, first, last);
	}

	private static LocalDate firstDay(List<ReminderItem> ordered) {
		return ordered.get(0).task().window().from();
	}

	private static List<String> footer(List<ReminderItem> items, String baseUrl) {
		String sites = items.stream()
			.map((item) -> OneLine.of(item.task().siteName()))
			.distinct()
			.collect(Collectors.joining(", "));
		return List.of("You get this because you look after plants here: %s.".formatted(sites),
				"Each task is mailed once, on the morning of its first day. Leafward, %s".formatted(baseUrl));
	}

	private static String plain(String opening, List<TaskLines> tasks, List<String> footer) {
		StringBuilder text = new StringBuilder(opening).append("\n");
		for (TaskLines task : tasks) {
			text.append("\n");
			wrap(text, "* " + task.heading(), "  ");
			task.lines().forEach((line) -> wrap(text, "  " + line.label() + ": " + line.value(), "    "));
			text.append("  More: ").append(task.link()).append("\n");
		}
		// The signature separator is "-- " in common practice (RFC 3676 section 4.3).
		text.append("\n-- \n");
		footer.forEach((line) -> wrap(text, line, ""));
		return text.toString();
	}

	/**
	 * Breaks at spaces only; a word longer than the line, such as an address, stays
	 * whole.
	 */
	private static void wrap(StringBuilder text, String paragraph, String indent) {
		int width = 0;
		for (String word : paragraph.split("(?<=\\S) ")) {
			if (width > 0 && width + 1 + word.length() > COLUMNS) {
				text.append("\n").append(indent);
				width = indent.length();
			}
			else if (width > 0) {
				text.append(" ");
				width++;
			}
			text.append(word);
			width += word.length();
		}
		text.append("\n");
	}

	private static String html(String opening, List<TaskLines> tasks, List<String> footer) {
		StringBuilder html = new StringBuilder("""
				<!DOCTYPE html>
				<html lang="en" dir="ltr">
				<head><meta charset="utf-8"><title>%1$s</title></head>
				<body>
				<h1>%1$s</h1>
				""".formatted(escape(opening)));
		for (TaskLines task : tasks) {
			html.append("<h2>").append(escape(task.heading())).append("</h2>\n<dl>\n");
			task.lines()
				.forEach((line) -> html
					.append("<dt>%s</dt><dd>%s</dd>\n".formatted(line.label(), escape(line.value()))));
			html.append("</dl>\n<p><a href=\"").append(escape(task.link())).append("\">More about this task</a></p>\n");
		}
		html.append("<hr>\n");
		footer.forEach((line) -> html.append("<p>").append(escape(line)).append("</p>\n"));
		return html.append("</body>\n</html>\n").toString();
	}

	private static String escape(String text) {
		return text.replace("&", "&amp;")
			.replace("<", "&lt;")
			.replace(">", "&gt;")
			.replace("\"", "&quot;")
			.replace("'", "&#39;");
	}

}
