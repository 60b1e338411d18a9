package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

/**
 * The degree-days of a season over the band of past years.
 *
 * @param id unique among the pictures of a page
 * @param base the base temperature in words
 * @param today the day that gets a line
 * @param observed sums by day, in order
 * @param normal the band of past years, in order
 * @param projected how the sum goes on, in order
 * @param goals sums whose dates are marked, smallest first
 */
public record DegreeDayCurve(String id, String base, LocalDate today, List<Sum> observed, List<Band> normal,
		List<Sum> projected, List<Goal> goals) {

	public DegreeDayCurve {
		Pictures.checkId(id);
		observed = List.copyOf(observed);
		normal = List.copyOf(normal);
		projected = List.copyOf(projected);
		goals = List.copyOf(goals);
	}

	/**
	 * Whether there is anything to draw.
	 * @return false where neither this season nor past years have two days
	 */
	public boolean drawable() {
		return this.observed.size() > 1 || this.normal.size() > 1;
	}

	/**
	 * The picture: days from left to right, sums from bottom to top. It takes the width
	 * it is given.
	 * @return inline SVG
	 * @throws IllegalStateException when it is not {@link #drawable}
	 */
	public String svg() {
		if (!drawable()) {
			throw new IllegalStateException("curve %s has fewer than two days".formatted(this.id));
		}
		return new DegreeDayDrawing(this).draw();
	}

	/**
	 * The figures behind the picture.
	 * @return a row for the last day of each month and for the last observed day
	 */
	public List<TableRow> rows() {
		TreeSet<LocalDate> days = new TreeSet<>();
		this.normal.stream().map(Band::day).filter(DegreeDayCurve::endsMonth).forEach(days::add);
		this.observed.stream().map(Sum::day).filter(DegreeDayCurve::endsMonth).forEach(days::add);
		if (!this.observed.isEmpty()) {
			days.add(this.observed.get(this.observed.size() - 1).day());
		}
		List<TableRow> rows = new ArrayList<>();
		for (LocalDate day : days) {
			Band band = this.normal.stream().filter((one) -> one.day().equals(day)).findFirst().orElse(null);
			Double sum = at(this.observed, day);
			rows.add(new TableRow(day, sum, (sum != null) ? null : at(this.projected, day), band));
		}
		return rows;
	}

	private static boolean endsMonth(LocalDate day) {
		return day.plusDays(1).getDayOfMonth() == 1;
	}

	private static @Nullable Double at(List<Sum> sums, LocalDate day) {
		return sums.stream().filter((one) -> one.day().equals(day)).map(Sum::value).findFirst().orElse(null);
	}

	/**
	 * A sum in the evening of a day.
	 *
	 * @param day the day
	 * @param value degree-days
	 */
	public record Sum(LocalDate day, double value) {
	}

	/**
	 * The sums of past years.
	 *
	 * @param day the day
	 * @param low one year in ten had less
	 * @param middle half of the years had less
	 * @param high one year in ten had more
	 */
	public record Band(LocalDate day, double low, double middle, double high) {
	}

	/**
	 * A sum and its date.
	 *
	 * @param sum degree-days
	 * @param date when it is reached
	 */
	public record Goal(int sum, LocalDate date) {
	}

	/**
	 * A row of the table.
	 *
	 * @param day the day
	 * @param observed this season's sum, null when not observed
	 * @param projected the sum to come, null when observed or not known
	 * @param normal past years, null when not known
	 */
	public record TableRow(LocalDate day, @Nullable Double observed, @Nullable Double projected,
			@Nullable Band normal) {
	}

}
