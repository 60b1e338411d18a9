package org.leafward.care.core.review;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AmountUnit;
import org.leafward.care.TaskId;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;

/**
 * What was asked for at a site in a calendar year, and what was done. A task belongs to
 * the year of its first day.
 *
 * @param year the year
 * @param over whether its last day has passed
 * @param tasks the tasks of the year with what became of them, by first day
 * @param total counts of those that asked for something
 * @param works counts for each kind of work, most first
 * @param plantings counts for each planting, most first; the site as a whole is one
 * @param missed what was missed, most often first
 * @param leftOut what was left out, by first day
 * @param months what was done, month by month, without empty months
 * @param watered water for each place, most first
 */
public record YearReview(int year, boolean over, List<Reviewed> tasks, Tally total, List<Row> works,
		List<Row> plantings, List<Missed> missed, List<LeftOut> leftOut, List<MonthDone> months,
		List<Watered> watered) {

	/** What is done for no planting. */
	public static final String WHOLE_SITE = "the whole site";

	public YearReview {
		tasks = List.copyOf(tasks);
		works = List.copyOf(works);
		plantings = List.copyOf(plantings);
		missed = List.copyOf(missed);
		leftOut = List.copyOf(leftOut);
		months = List.copyOf(months);
		watered = List.copyOf(watered);
	}

	/**
	 * Whether nothing is known of the year.
	 * @return true without a task that asked for something, and without anything done
	 */
	public boolean empty() {
		return this.total.total() == 0 && this.months.isEmpty();
	}

	/**
	 * What was done inside a hold-off of the same work.
	 * @return by day
	 */
	public List<Done> atBadTimes() {
		return this.months.stream()
			.flatMap((month) -> month.done().stream())
			.filter((one) -> one.holdOff() != null)
			.toList();
	}

	/**
	 * A row of a table of counts.
	 *
	 * @param name a kind of work, or what people call a planting
	 * @param own whether the name is theirs
	 * @param tally the counts
	 */
	public record Row(String name, boolean own, Tally tally) {
	}

	/**
	 * What was missed, once or several times in the year.
	 *
	 * @param title what was to be done
	 * @param plant what readers call the planting
	 * @param own whether that is their own name for it
	 * @param task the last one that was missed
	 * @param window its days
	 * @param times how often
	 * @param otherwise what goes wrong without it; null when the rule doesn't say
	 * @param why the reason for it
	 * @param next first day of the next one, which is not over; null when none is planned
	 */
	public record Missed(String title, String plant, boolean own, TaskId task, DayWindow window, int times,
			@Nullable String otherwise, String why, @Nullable LocalDate next) {
	}

	/**
	 * What was left out on purpose.
	 *
	 * @param title what was to be done
	 * @param plant what readers call the planting
	 * @param own whether that is their own name for it
	 * @param task the task
	 * @param window its days
	 * @param reason why, in their words; may be empty
	 */
	public record LeftOut(String title, String plant, boolean own, TaskId task, DayWindow window, String reason) {
	}

	/**
	 * What was done in a month.
	 *
	 * @param month the month
	 * @param sums how often each kind of work was done, most often first
	 * @param done one by one, by day
	 */
	public record MonthDone(Month month, List<WorkCount> sums, List<Done> done) {

		public MonthDone {
			sums = List.copyOf(sums);
			done = List.copyOf(done);
		}

	}

	/**
	 * How often a kind of work was done.
	 *
	 * @param work the work
	 * @param times how often
	 */
	public record WorkCount(Work work, int times) {
	}

	/**
	 * Something that was done.
	 *
	 * @param id identifier of the log entry, or of the watering
	 * @param day on which
	 * @param work the kind of work
	 * @param where what people call the planting, or the whole site
	 * @param own whether that is their own name for it
	 * @param amount how much; null when nobody measured
	 * @param unit what the amount is in; null without one
	 * @param note may be empty
	 * @param task the task that it was done for; null on one's own account
	 * @param holdOffTask the hold-off that it fell into; null when it fell into none
	 * @param holdOff title of that hold-off; null without
	 */
	public record Done(UUID id, LocalDate day, Work work, String where, boolean own, @Nullable Double amount,
			@Nullable AmountUnit unit, String note, @Nullable TaskId task, @Nullable TaskId holdOffTask,
			@Nullable String holdOff) {
	}

	/**
	 * The water that a place got. Depths of different places don't add up.
	 *
	 * @param where what people call the planting, or the whole site
	 * @param own whether that is their own name for it
	 * @param times how often it was watered
	 * @param millimetres depth in total, mm
	 */
	public record Watered(String where, boolean own, int times, double millimetres) {
	}

}
