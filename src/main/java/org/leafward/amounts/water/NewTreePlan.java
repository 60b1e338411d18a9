package org.leafward.amounts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * How a new tree is watered until it has grown in: how much each time, and when.
 *
 * @param each one watering of one tree; it stays the same, by the trunk at planting
 * @param stages daily, every two to three days, weekly
 * @param weeks the days to water on, week by week through the first half year at most;
 * empty without a day of planting
 * @param amount the plan in words, with how it came about
 */
public record NewTreePlan(TreeWatering each, List<Stage> stages, List<Week> weeks, Amount amount) {

	/** Days of the first stage: two weeks, University of Minnesota Extension. */
	private static final int DAILY = 14;

	/** Days to the end of the second: week twelve, the same. */
	private static final int OFTEN = 84;

	/** Weeks that are told day by day. */
	private static final int WEEKS = 26;

	private static final double DAYS_PER_YEAR = 365.25;

	public NewTreePlan {
		stages = List.copyOf(stages);
		weeks = List.copyOf(weeks);
	}

	/**
	 * A part of the plan with one rhythm.
	 *
	 * @param fromWeek its first week, counted from 1
	 * @param toWeek its last week
	 * @param from its first day; null without a day of planting
	 * @param to its last day; null without a day of planting
	 * @param often how often, in words
	 */
	public record Stage(int fromWeek, int toWeek, @Nullable LocalDate from, @Nullable LocalDate to, String often) {
	}

	/**
	 * A week of the plan.
	 *
	 * @param number counted from 1 at planting
	 * @param days on which to water
	 */
	public record Week(int number, List<LocalDate> days) {

		public Week {
			days = List.copyOf(days);
		}

	}

	/**
	 * Plans.
	 * @param calliperMillimetres thickness of the trunk when it is planted, 5 to 3,000 mm
	 * @param planted the day of planting, 1900 to 2199; null for a plan without dates
	 * @param count how many such trees, 1 to 1,000
	 * @param litresPerMinute what the hose gives; null when not known
	 * @return the plan
	 * @throws BadInput when one of them is out of its bounds
	 */
	public static NewTreePlan of(double calliperMillimetres, @Nullable LocalDate planted, int count,
			@Nullable Double litresPerMinute) {
		Quantity.within("count", "number of trees", count, 1, 1000);
		if (planted != null && (planted.getYear() < 1900 || planted.getYear() > 2199)) {
			throw new BadInput("%s is outside the years 1900 to 2199".formatted(planted), "planted",
					"give the day of planting, or leave it empty");
		}
		TreeWatering each = TreeWatering.young(calliperMillimetres, 0, count, litresPerMinute);
		double years = TreeWatering.yearsToGrowIn(calliperMillimetres);
		int days = (int) Math.round(years * DAYS_PER_YEAR);
		// The thinnest trunk takes 15 weeks, so each stage has days.
		List<Stage> stages = List.of(stage(planted, 0, DAILY, "daily"),
				stage(planted, DAILY, OFTEN, "every two to three days"), stage(planted, OFTEN, days, "once a week"));
		return new NewTreePlan(each, stages, (planted != null) ? weeks(planted, days) : List.of(),
				amount(each, years, planted, days, count, litresPerMinute));
	}

	private static Stage stage(@Nullable LocalDate planted, int from, int end, String often) {
		return new Stage(from / 7 + 1, (end - 1) / 7 + 1, (planted != null) ? planted.plusDays(from) : null,
				(planted != null) ? planted.plusDays(end - 1L) : null, often);
	}

	/** Every two to three days is told as two and three by turns. */
	private static List<Week> weeks(LocalDate planted, int days) {
		List<Week> weeks = new ArrayList<>();
		int day = 0;
		boolean two = true;
		for (int week = 1; week <= WEEKS && (week - 1) * 7 < days; week++) {
			List<LocalDate> on = new ArrayList<>();
			while (day < week * 7 && day < days) {
				on.add(planted.plusDays(day));
				if (day < DAILY - 1) {
					day++;
				}
				else if (day < OFTEN) {
					day += two ? 2 : 3;
					two = !two;
				}
				else {
					day += 7;
				}
			}
			weeks.add(new Week(week, on));
		}
		return weeks;
	}

	private static Amount amount(TreeWatering each, double years, @Nullable LocalDate planted, int days, int count,
			@Nullable Double flow) {
		String litres = TreeWatering.range(each.lowLitres(), each.highLitres());
		String until = (planted != null) ? "until " + DayWords.of(planted.plusDays(days - 1L))
				: "for about %s years in all".formatted(Quantity.figure(years));
		String words = ("About %s%s%s for each watering: daily for two weeks, every two to three days to week 12, "
				+ "then once a week %s.")
			.formatted(TreeWatering.range(each.lowLitres(), each.highLitres()), (count > 1) ? " a tree" : "",
					TreeWatering.time(each.lowLitres(), each.highLitres(), flow), until);
		List<Explanation> steps = new ArrayList<>(each.amount().explanation().steps());
		steps.add(Explanation.of("Left out", "rain and frost")
			.withDetail(
					"A day after 25 mm (1 in) of rain while the root ball is still moist, and every day with frozen "
							+ "ground. The weeks after the twelfth go on in the next season."));
		return new Amount(words, Explanation.of("Watering a new tree", words).withSteps(steps));
	}

}
