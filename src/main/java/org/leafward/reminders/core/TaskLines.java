package org.leafward.reminders.core;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWords;

/**
 * What a mail says about one task; both parts of a mail are written from it.
 *
 * @param heading what, and for which plant
 * @param lines label and value, in reading order
 * @param link address of the task's page
 */
record TaskLines(String heading, List<Line> lines, String link) {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

	/**
	 * Tells tasks that differ in their planting only.
	 * @param alike at least one
	 * @param baseUrl address of this server without a slash at its end
	 * @return the words; with several plantings they are named in a line of their own,
	 * and the link leads to the first
	 */
	static TaskLines of(List<ReminderItem> alike, String baseUrl) {
		ReminderItem item = alike.get(0);
		CareTask task = item.task();
		List<Line> lines = new ArrayList<>();
		if (alike.size() > 1) {
			add(lines, "Plants",
					alike.stream()
						.map((one) -> OneLine.of(one.task().plant()))
						.sorted()
						.collect(Collectors.joining("; ")));
		}
		add(lines, "When", DayWords.of(task.window()));
		add(lines, "Where", task.siteName());
		if (task.kind() == TaskKind.RAMP_DAY) {
			add(lines, "Ramp", (item.rampDays() == 1) ? "one day only"
					: "day 1 of %d; your calendar feed has each day".formatted(item.rampDays()));
		}
		add(lines, (task.kind() == TaskKind.HOLD_OFF) ? "Hold off" : "What", task.text().what());
		add(lines, (task.kind() == TaskKind.RAMP_DAY) ? "Place" : "Amount", task.text().amount());
		add(lines, "Why", task.text().why());
		add(lines, "Otherwise", task.text().otherwise());
		add(lines, "Caution", task.text().caution());
		return new TaskLines(heading(alike), lines, baseUrl + "/tasks/" + task.id());
	}

	private static String heading(List<ReminderItem> alike) {
		CareTask task = alike.get(0).task();
		return OneLine.of(task.text().title()) + ": "
				+ ((alike.size() > 1) ? alike.size() + " plantings" : OneLine.of(task.plant()));
	}

	static String day(LocalDate day) {
		return DAY.format(day);
	}

	private static void add(List<Line> lines, String label, @Nullable String value) {
		if (value != null && !value.isBlank()) {
			lines.add(new Line(label, OneLine.of(value)));
		}
	}

	record Line(String label, String value) {
	}

}
