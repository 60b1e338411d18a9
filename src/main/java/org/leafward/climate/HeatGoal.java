package org.leafward.climate;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.leafward.measure.BadInput;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * A sum of degree-days and the day from which they are counted.
 *
 * @param sum degree-days in the unit of the base temperature, 1 to 20,000
 * @param start first day that counts, for the northern hemisphere; in the south it is
 * half a year later
 */
public record HeatGoal(int sum, MonthDay start) {

	/**
	 * The usual first day (University of New Hampshire Extension; others count from 1
	 * January).
	 */
	public static final MonthDay USUAL_START = MonthDay.of(Month.MARCH, 1);

	private static final int HIGHEST = 20_000;

	private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

	public HeatGoal {
		if (sum < 1 || sum > HIGHEST) {
			throw new BadInput("sum %d is outside 1 to %d degree-days".formatted(sum, HIGHEST), "sum",
					"give a sum such as 200");
		}
		if (!start.isValidYear(2001)) {
			throw new BadInput("there is no 29 February in every year", "start", "count from 1 March");
		}
	}

	/**
	 * A sum from 1 March on.
	 * @param sum degree-days
	 * @return the goal
	 */
	public static HeatGoal of(int sum) {
		return new HeatGoal(sum, USUAL_START);
	}

	/**
	 * The first day that counts in a season.
	 * @param season the season
	 * @return in the season's year; in the south half a year later
	 */
	public LocalDate startIn(Season season) {
		LocalDate north = this.start.atYear(season.year());
		return (season.hemisphere() == Hemisphere.NORTH) ? north : north.plusMonths(6);
	}

	/**
	 * A name that is unique among goals.
	 * @return for example {@code 200}, or {@code 200 from 02-15}
	 */
	public String code() {
		return this.sum + (this.start.equals(USUAL_START) ? "" : " from " + this.start.toString().substring(2));
	}

	/**
	 * The goal for readers.
	 * @return for example "sum 200, counted from 1 March"
	 */
	public String words() {
		return "sum %d, counted from %s".formatted(this.sum, WORDS.format(this.start));
	}

}
