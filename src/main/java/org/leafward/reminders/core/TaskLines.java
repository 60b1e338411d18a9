package org.leafward.reminders.core;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

	static TaskLines of(ReminderItem item, String baseUrl) {
		CareTask task = item.task();
		List<Line> lines = new ArrayList<>();
		add(lines, "When", DayWords.of(task.window()));
		add(lines, "Where", task.siteName());
		if (task.kind() == TaskKind.RAMP_DAY) {
			add(lines, "Ramp", (item.rampDays() == 1) ? "one day only"
					: "day 1 of %d; your calendar feed has each day".formatted(item.rampDays()));
		}
		add(lines, (task.kind() == TaskKind.HOLD_OFF) ? "Hold off" : "What", task.text().what());
		add(lines, "Amount", task.text().amount());
		add(lines, "Why", task.text().why());
		add(lines, "Otherwise", task.text().otherwise());
		add(lines, "Caution", task.text().caution());
		return new TaskLines(heading(task), lines, baseUrl + "/tasks/" + task.id());
	}

	static String heading(CareTask task) {
		return OneLine.of(task.text().title()) + ": " + OneLine.of(task.plant());
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
