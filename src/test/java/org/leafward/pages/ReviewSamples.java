package org.leafward.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.care.core.review.Tally;
import org.leafward.pages.print.Paper;

import static org.leafward.pages.PageSamples.model;

/** Models for the page that looks back on a year. */
final class ReviewSamples {

	private ReviewSamples() {
	}

	record Fact(String label, String words) {
	}

	record CountRow(String name, boolean own, Tally tally) {
	}

	record MissedRow(String title, String href, String plant, boolean own, String days, String often, String otherwise,
			String why, String next) {
	}

	record LeftOutRow(String title, String href, String plant, boolean own, String days, String reason) {
	}

	record MonthRow(String name, String sums, List<DoneRow> done, int more) {
	}

	record DoneRow(String what, String day, String where, boolean own, String note, String holdOff, String holdOffHref,
			String taskHref) {
	}

	record WaterRow(String where, boolean own, String words) {
	}

	record View(int year, String lead, boolean empty, boolean soFar, List<Fact> counts, List<CountRow> works,
			List<CountRow> plantings, int morePlantings, List<MissedRow> missed, int moreMissed,
			List<LeftOutRow> leftOut, int moreLeftOut, List<MonthRow> months, List<WaterRow> watered, int moreWatered,
			List<DoneRow> badTimes, int moreBadTimes, List<Fact> weather, List<String> weatherNotes, String noWeather) {

		public boolean manyPlantings() {
			return true;
		}

	}

	static Map<String, Map<String, Object>> all(Object site) {
		DoneRow pruned = new DoneRow("Pruning, 2 bags", "Wed 20 May", "hedge by the gate", true, "a branch had broken",
				"Leave evergreens unpruned", "/tasks/1", "/tasks/2");
		View view = new View(2026, "In 2026 so far: 3 of 6 tasks done, 1 of them late; 1 missed.", false, true,
				List.of(new Fact("Done on time", "2"), new Fact("Missed", "1")),
				List.of(new CountRow("Watering", false, new Tally(1, 1, 0, 0, 0, 1))),
				List.of(new CountRow("hedge by the gate (common boxwood)", true, new Tally(1, 1, 1, 1, 1, 0))), 3,
				List.of(new MissedRow("Water deeply", "/tasks/3", "hedge by the gate (common boxwood)", true,
						"1 Aug – 3 Aug", "Missed 2 times, the last time then.", "Needles brown by spring.",
						"Dry roots freeze.", "Next time: it begins on Tue 1 Jun 2027.")),
				0,
				List.of(new LeftOutRow("Mulch the bed", "/tasks/4", "the whole site", false, "1 Oct – 10 Oct",
						"Away until the weekend")),
				2, List.of(new MonthRow("May", "Pruning once.", List.of(pruned), 4)),
				List.of(new WaterRow("The whole site", false, "20 mm (0.79 in) in 2 waterings")), 0, List.of(pruned), 0,
				List.of(new Fact("Last freeze of spring", "It came on Tue 5 May, 18 days later than usual.")),
				List.of("The temperatures are those of Maple Hill, 12 km (7 miles) away."), null);
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		all.put("care/review", model("section", "sites", "site", site, "review", view, "before", 2025, "after", 2027,
				"papers", Paper.values(), "strip", Samples.strip("year"), "stripRows", Map.of()));
		return all;
	}

}
