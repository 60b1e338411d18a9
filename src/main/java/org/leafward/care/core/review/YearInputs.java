package org.leafward.care.core.review;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.TaskId;
import org.leafward.register.PlantingId;
import org.leafward.register.Watering;

/**
 * What is known of a site's year.
 *
 * @param year the calendar year
 * @param today the day at the site
 * @param zone time zone of the site
 * @param tasks tasks that overlap the year, withdrawn ones included
 * @param ahead tasks that are not over today
 * @param log entries of the year that were not taken back, by day
 * @param doneOn days on which tasks were done, as far as they were logged in whatever
 * year
 * @param waterings waterings of the year; those from the log have its identifier
 * @param labels what people call the plantings
 */
public record YearInputs(int year, LocalDate today, ZoneId zone, List<CareTask> tasks, List<CareTask> ahead,
		List<LogEntry> log, Map<TaskId, LocalDate> doneOn, List<Watering> waterings, Map<PlantingId, String> labels) {

	public YearInputs {
		tasks = List.copyOf(tasks);
		ahead = List.copyOf(ahead);
		log = List.copyOf(log);
		doneOn = Map.copyOf(doneOn);
		waterings = List.copyOf(waterings);
		labels = Map.copyOf(labels);
	}

}
