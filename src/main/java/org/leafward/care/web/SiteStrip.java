package org.leafward.care.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskLines;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.pages.DateLine;
import org.leafward.pages.Mark;
import org.leafward.pages.YearStrip;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteMarkers;

/**
 * The year of a site as a strip; plantings with the same care on the same days share a
 * row.
 */
final class SiteStrip {

	private SiteStrip() {
	}

	/**
	 * What makes the care of two plantings the same: all but the page that a bar leads
	 * to.
	 */
	private record Care(Mark mark, DayWindow window, String title) {
	}

	static YearStrip of(Site site, DayWindow year, LocalDate today, List<Planting> plantings, List<CareTask> tasks,
			List<SiteMarkers.Line> lines) {
		return lookedBack(site, year, today, plantings, tasks, dates(year, lines));
	}

	/** The same with dates that came; a day to mark only where it lies in the year. */
	static YearStrip lookedBack(Site site, DayWindow year, @Nullable LocalDate today, List<Planting> plantings,
			List<CareTask> tasks, List<DateLine> dates) {
		Map<PlantingId, List<CareTask>> byPlanting = new LinkedHashMap<>();
		plantings.forEach((planting) -> byPlanting.put(planting.id(), new ArrayList<>()));
		for (CareTask task : Ramps.joined(tasks)) {
			PlantingId planting = task.planting();
			List<CareTask> own = (planting != null) ? byPlanting.get(planting) : null;
			if (own != null) {
				own.add(task);
			}
		}
		Map<List<Care>, List<Planting>> rows = new LinkedHashMap<>();
		for (Planting planting : plantings) {
			List<Care> care = byPlanting.getOrDefault(planting.id(), List.of()).stream().map(SiteStrip::care).toList();
			rows.computeIfAbsent(care, (key) -> new ArrayList<>()).add(planting);
		}
		return new YearStrip("year", "The year at " + site.name(), year.from(), year.to(), today, rows.values()
			.stream()
			.map((alike) -> new YearStrip.Row(String.join("; ", alike.stream().map(Planting::label).toList()),
					byPlanting.getOrDefault(alike.get(0).id(), List.of()).stream().map(SiteStrip::span).toList()))
			// Rows without bars say nothing; the plantings stand in the list below.
			.filter((row) -> !row.spans().isEmpty())
			.toList(), dates);
	}

	/** The entries of each row, under the row's label. */
	static Map<String, List<YearStrip.Line>> inWords(YearStrip strip) {
		Map<String, List<YearStrip.Line>> rows = new LinkedHashMap<>();
		strip.lines().forEach((line) -> rows.computeIfAbsent(line.row(), (key) -> new ArrayList<>()).add(line));
		return rows;
	}

	private static Mark mark(CareTask task) {
		return (task.state() == TaskState.DONE) ? Mark.DONE : TaskLines.mark(task.kind());
	}

	private static Care care(CareTask task) {
		return new Care(mark(task), task.window(), task.text().title());
	}

	private static YearStrip.Span span(CareTask task) {
		return new YearStrip.Span(mark(task), task.window().from(), task.window().to(),
				task.text().title().replaceFirst("^Day \\d+ of \\d+: ", ""), Lines.address(task));
	}

	private static List<DateLine> dates(DayWindow year, List<SiteMarkers.Line> lines) {
		return lines.stream()
			.map(SiteMarkers.Line::marker)
			.filter((marker) -> marker != null && marker.key().probability() == 50 && year.contains(marker.date()))
			.filter((marker) -> MarkerNames.inStrip(marker.key()))
			.map((marker) -> new DateLine(MarkerNames.brief(marker.key()), marker.date()))
			.toList();
	}

}
