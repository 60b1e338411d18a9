package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.leafward.measure.Explanation;
import org.leafward.pages.FreezeCurve.Chance;
import org.leafward.pages.YearStrip.Row;
import org.leafward.pages.YearStrip.Span;

/** Invented content for looking at templates and pictures. */
final class Samples {

	static final LocalDate TODAY = LocalDate.of(2026, 11, 12);

	private Samples() {
	}

	static TaskLine line(Mark mark, String title, String plant, LocalDate from, LocalDate to, String note) {
		return new TaskLine(mark, title, plant, "Alder Street schoolyard", from, to, "/tasks/1", note,
				note != null && note.startsWith("No longer"));
	}

	static List<TaskLine> acting() {
		return List
			.of(standing(line(Mark.DO, "Mulch the bed", "young maple (red maple)", TODAY, TODAY.plusDays(9), null),
					"It was withdrawn and came back on Mon 9 Nov 2026.", 1, true));
	}

	static List<TaskLine> acted() {
		return List.of(
				standing(line(Mark.DO, "Rake the leaves", "lawn", TODAY.minusDays(9), TODAY, null),
						"Done on Wed 11 Nov 2026.", 2, false),
				standing(line(Mark.WATCH, "Look for scale", "lilac", TODAY.minusDays(9), TODAY, null),
						"Left out this time: Away until the weekend.", 3, false));
	}

	static List<TaskLine> noted() {
		TaskLine line = acted().get(0);
		return List.of(new TaskLine(line.mark(), line.title(), line.plant(), line.site(), line.from(), line.to(),
				line.href(), null, false, "Done on Thu 12 Nov 2026.",
				new TaskActs(List.of(new UUID(0, 9)), false, false, true, "home")));
	}

	private static TaskLine standing(TaskLine line, String words, int number, boolean open) {
		return new TaskLine(line.mark(), line.title(), line.plant(), line.site(), line.from(), line.to(), line.href(),
				line.note(), line.withdrawn(), words,
				new TaskActs(List.of(new UUID(0, number), new UUID(1, number)), open, open, !open, "site"));
	}

	static List<TaskLine> todo() {
		return List.of(
				line(Mark.DO, "Water until the ground freezes", "hedge by the gate (common boxwood)",
						LocalDate.of(2026, 11, 9), LocalDate.of(2026, 11, 24), null),
				line(Mark.DO, "Wrap the trunk against sunscald", "young maple (red maple)", LocalDate.of(2026, 11, 12),
						LocalDate.of(2026, 11, 30), null),
				line(Mark.DO, "Mulch after the ground has frozen", "strawberry bed (garden strawberry)",
						LocalDate.of(2026, 11, 18), LocalDate.of(2026, 12, 2),
						"Later than usual: the soil is still 5 °C."));
	}

	static List<TaskLine> holdOffs() {
		return List.of(line(Mark.HOLD_OFF, "No pruning of evergreens", "hedge by the gate (common boxwood)",
				LocalDate.of(2026, 8, 20), LocalDate.of(2027, 3, 28), null));
	}

	static List<TaskLine> watches() {
		return List.of(line(Mark.WATCH, "Rabbit gnawing at the bark", "young maple (red maple)",
				LocalDate.of(2026, 11, 12), LocalDate.of(2026, 11, 12), null));
	}

	static YearStrip strip(String id) {
		List<Row> rows = new ArrayList<>();
		rows.add(new Row("hedge by the gate (common boxwood)",
				List.of(span(Mark.HOLD_OFF, 8, 20, 12, 31, "no pruning"),
						span(Mark.HOLD_OFF, 1, 1, 3, 28, "no pruning"),
						span(Mark.DO, 10, 5, 11, 24, "water until the ground freezes"),
						span(Mark.DO, 6, 1, 6, 20, "shear"), span(Mark.WATCH, 5, 10, 6, 15, "leafminer"))));
		rows.add(new Row("young maple (red maple)",
				List.of(span(Mark.DO, 11, 12, 11, 30, "wrap the trunk"), span(Mark.DO, 4, 5, 4, 15, "unwrap the trunk"),
						span(Mark.WATCH, 11, 12, 12, 31, "gnawed bark"),
						span(Mark.HOLD_OFF, 2, 15, 5, 20, "no pruning"))));
		rows.add(new Row("tomato seedlings", List.of(span(Mark.RAMP, 5, 10, 5, 23, "harden off"),
				span(Mark.DO, 5, 24, 6, 5, "plant out"), span(Mark.HOLD_OFF, 5, 1, 5, 23, "don’t plant out"))));
		List<Span> weekly = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2026, 6, 3); day.getMonthValue() < 9; day = day.plusDays(7)) {
			weekly.add(new Span(Mark.DO, day, day.plusDays(1), "water", "/tasks/w"));
		}
		rows.add(new Row("hydrangeas at the steps (panicle hydrangea)", weekly));
		rows.add(new Row("strawberry bed (garden strawberry)",
				List.of(span(Mark.DO, 11, 18, 12, 2, "mulch"), span(Mark.DO, 4, 20, 5, 1, "rake the mulch off"),
						span(Mark.WEATHER, 5, 3, 5, 28, "bloom in frost season"))));
		rows.add(new Row("lilac (common lilac)", List.of(span(Mark.DO, 5, 28, 6, 20, "prune after bloom"),
				span(Mark.HOLD_OFF, 7, 10, 12, 31, "no pruning, buds are set"))));
		rows.add(new Row("rosemary in the pot",
				List.of(span(Mark.DO, 9, 28, 10, 10, "bring in"), span(Mark.RAMP, 5, 5, 5, 18, "harden off"))));
		rows.add(new Row("bur oak", List.of(span(Mark.HOLD_OFF, 4, 1, 10, 15, "no wounds: oak wilt beetles fly"),
				span(Mark.DO, 12, 20, 12, 31, "prune"))));
		return new YearStrip(id, "The year at Alder Street schoolyard", LocalDate.of(2026, 1, 1),
				LocalDate.of(2026, 12, 31), TODAY, rows,
				List.of(new DateLine("Ground thaws", LocalDate.of(2026, 3, 28)),
						new DateLine("Last freeze", LocalDate.of(2026, 5, 14)),
						new DateLine("First freeze", LocalDate.of(2026, 9, 30)),
						new DateLine("Ground freezes", LocalDate.of(2026, 11, 24))));
	}

	private static Span span(Mark mark, int month, int day, int toMonth, int toDay, String label) {
		return new Span(mark, LocalDate.of(2026, month, day), LocalDate.of(2026, toMonth, toDay), label, "/tasks/1");
	}

	static FreezeCurve curve(String id) {
		return new FreezeCurve(id, "32 °F (0.0 °C)",
				chances(new int[] { 90, 80, 70, 60, 50, 40, 30, 20, 10 }, LocalDate.of(2026, 4, 17),
						new int[] { 0, 5, 8, 11, 14, 17, 20, 24, 29 }),
				chances(new int[] { 10, 20, 30, 40, 50, 60, 70, 80, 90 }, LocalDate.of(2026, 9, 19),
						new int[] { 0, 5, 9, 12, 15, 18, 21, 25, 31 }),
				List.of(new DateLine("Alder Street: last", LocalDate.of(2026, 5, 5)),
						new DateLine("first", LocalDate.of(2026, 9, 28))));
	}

	static List<Chance> chances(int[] percents, LocalDate start, int[] days) {
		List<Chance> chances = new ArrayList<>();
		for (int i = 0; i < percents.length; i++) {
			chances.add(new Chance(percents[i], start.plusDays(days[i])));
		}
		return chances;
	}

	static Explanation explanation() {
		return Explanation.of("Water until the ground freezes", "9 Nov – 24 Nov")
			.withSteps(List.of(
					Explanation.of("Begins", "Mon 9 Nov")
						.withDetail("Two weeks after the leaves have fallen, when trees stop shading the hedge.")
						.withSteps(List
							.of(Explanation.of("Leaf drop", "26 Oct").withSource("care rule evergreen/late-water"))),
					Explanation.of("Ends", "Tue 24 Nov")
						.withSteps(List.of(
								Explanation.of("Ground freeze at Maple Hill station", "21 Nov")
									.withDetail("Median of 28 of 30 years.")
									.withSource("daily record, 1995 to 2024"),
								Explanation.of("Moved to the site", "+3 days")
									.withDetail("The site lies 40 m lower and is sheltered.")))));
	}

	/** 4 degree-days a day from 1 March, past years 3; today is 20 May. */
	static DegreeDayCurve degreeDays(String id) {
		LocalDate start = LocalDate.of(2026, 3, 1);
		List<DegreeDayCurve.Sum> observed = new ArrayList<>();
		List<DegreeDayCurve.Sum> projected = new ArrayList<>();
		List<DegreeDayCurve.Band> normal = new ArrayList<>();
		for (int day = 0; day < 306; day++) {
			LocalDate date = start.plusDays(day);
			(day < 80 ? observed : projected).add(new DegreeDayCurve.Sum(date, 4 * (day + 1)));
			normal.add(new DegreeDayCurve.Band(date, 2.5 * (day + 1), 3 * (day + 1), 3.5 * (day + 1)));
		}
		return new DegreeDayCurve(id, "50 °F (10 °C)", LocalDate.of(2026, 5, 20), observed, normal, projected,
				List.of(new DegreeDayCurve.Goal(200, LocalDate.of(2026, 4, 19)),
						new DegreeDayCurve.Goal(500, LocalDate.of(2026, 6, 19))));
	}

	/**
	 * 2 mm a day are lost; rain on the third day fills the zone, so that 36 mm are gone
	 * on the twenty-first; a watering on the last.
	 */
	static WaterBalancePicture water(String id) {
		List<WaterBalancePicture.Day> days = new ArrayList<>();
		double depletion = 0;
		for (int day = 0; day < 40; day++) {
			double rain = (day == 2) ? 12 : 0;
			double watering = (day == 39) ? 30 : 0;
			depletion = Math.max(0, depletion + 2 - rain - watering);
			days.add(new WaterBalancePicture.Day(LocalDate.of(2026, 6, 1).plusDays(day), rain, watering, 2, depletion,
					35, depletion > 35, day == 20));
		}
		return new WaterBalancePicture(id, 70, days);
	}

	/** 9 to 45 mol in fourteen steps; the fourth day is held and repeats its step. */
	static LightRampPicture light(String id) {
		List<LightRampPicture.Day> days = new ArrayList<>();
		for (int day = 0; day < 15; day++) {
			int step = (day < 4) ? day + 1 : day;
			boolean held = day == 3;
			days.add(new LightRampPicture.Day(LocalDate.of(2027, 5, 5).plusDays(day),
					held ? 9 : 9 * Math.pow(5, step / 14.0), 45, held ? "It stays in. Step 4 waits" : "Step " + step,
					held ? "It stays in" : null));
		}
		return new LightRampPicture(id, 9, days);
	}

	/** A year with 99 observed days but for one. */
	static TemperatureBand temperatures(String id) {
		List<TemperatureBand.Day> days = new ArrayList<>();
		for (int day = 0; day < 365; day++) {
			boolean observed = day < 99 && day != 50;
			double usual = -12 * Math.cos(2 * Math.PI * (day - 15) / 365) + 8;
			days.add(new TemperatureBand.Day(LocalDate.of(2026, 1, 1).plusDays(day),
					observed ? ((day == 9) ? -21 : usual - 7) : null, observed ? usual + 5 : null, usual - 5,
					usual + 6));
		}
		return new TemperatureBand(id, LocalDate.of(2026, 4, 10), days);
	}

}
