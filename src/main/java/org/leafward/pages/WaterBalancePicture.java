package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The water that is left for plants in a bed, with what came from above.
 *
 * @param id unique among the pictures of a page
 * @param available all the water that the root zone can hold for plants, mm
 * @param days one for each day, in order
 */
public record WaterBalancePicture(String id, double available, List<Day> days) {

	private static final int WEEK = 7;

	public WaterBalancePicture {
		Pictures.checkId(id);
		days = List.copyOf(days);
	}

	/**
	 * Whether there is anything to draw.
	 * @return false with fewer than two days, or no room for water
	 */
	public boolean drawable() {
		return this.days.size() > 1 && this.available > 0;
	}

	/**
	 * The picture: rain and waterings above, the water left in the soil below. It takes
	 * the width it is given.
	 * @return inline SVG
	 * @throws IllegalStateException when it is not {@link #drawable}
	 */
	public String svg() {
		if (!drawable()) {
			throw new IllegalStateException("balance %s has fewer than two days".formatted(this.id));
		}
		return new WaterBalanceDrawing(this).draw();
	}

	/**
	 * The figures behind the picture.
	 * @return a row for each week, the last one may be shorter
	 */
	public List<TableRow> rows() {
		List<TableRow> rows = new ArrayList<>();
		for (int at = 0; at < this.days.size(); at += WEEK) {
			List<Day> week = this.days.subList(at, Math.min(at + WEEK, this.days.size()));
			Day last = week.get(week.size() - 1);
			rows.add(new TableRow(week.get(0).date(), last.date(), week.stream().mapToDouble(Day::rain).sum(),
					week.stream().mapToDouble(Day::watering).sum(), week.stream().mapToDouble(Day::loss).sum(),
					this.available - last.depletion(), week.stream().filter(Day::stressed).count(),
					week.stream().filter(Day::due).map(Day::date).toList()));
		}
		return rows;
	}

	/**
	 * A day; amounts in mm.
	 *
	 * @param date the day
	 * @param rain that fell
	 * @param watering that was given
	 * @param loss what the plants lost
	 * @param depletion what is missing to a full root zone in the evening
	 * @param readily depletion from which on plants feel drought
	 * @param stressed whether they did in the evening
	 * @param due whether watering became due on this day
	 */
	public record Day(LocalDate date, double rain, double watering, double loss, double depletion, double readily,
			boolean stressed, boolean due) {
	}

	/**
	 * A week; amounts in mm.
	 *
	 * @param from its first day
	 * @param to its last day
	 * @param rain that fell
	 * @param watering that was given
	 * @param loss what the plants lost
	 * @param left water left for plants in the last evening
	 * @param stressedDays evenings on which the plants felt drought
	 * @param due days on which watering became due
	 */
	public record TableRow(LocalDate from, LocalDate to, double rain, double watering, double loss, double left,
			long stressedDays, List<LocalDate> due) {

		public TableRow {
			due = List.copyOf(due);
		}

	}

}
