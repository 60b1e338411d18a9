package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareTask;
import org.leafward.care.SiteYears;
import org.leafward.care.TaskId;
import org.leafward.care.core.review.Reviewed;
import org.leafward.care.core.review.Tally;
import org.leafward.care.core.review.YearReview;
import org.leafward.climate.WeatherYear;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** A year looked back on, by API. */
@RestController
@Tag(name = "Tasks", description = "What is to be done, when, and why")
@RequestMapping("/api/v1")
class ReviewApi {

	private final SiteYears years;

	private final Mine mine;

	ReviewApi(SiteYears years, Mine mine) {
		this.years = years;
		this.mine = mine;
	}

	/**
	 * A year of a site.
	 *
	 * @param year the calendar year
	 * @param over whether its last day has passed
	 * @param total what became of the tasks whose first day is in it
	 * @param works the same for each kind of work
	 * @param plantings the same for each planting, the whole site being one
	 * @param tasks the tasks one by one, hold-offs left out
	 * @param missed what was missed
	 * @param done what was done, by day
	 * @param watered water for each place
	 * @param weather what the weather did; null when no station can tell
	 */
	record ReviewAnswer(int year, boolean over, TallyAnswer total, List<RowAnswer> works, List<RowAnswer> plantings,
			List<OutcomeAnswer> tasks, List<MissedAnswer> missed, List<DoneAnswer> done, List<WateredAnswer> watered,
			@Nullable WeatherAnswer weather) {
	}

	/**
	 * Counts of tasks.
	 *
	 * @param onTime done on time
	 * @param late done late
	 * @param leftOut left out with a reason
	 * @param missed missed
	 * @param notNeeded no longer needed
	 * @param open still open
	 */
	record TallyAnswer(int onTime, int late, int leftOut, int missed, int notNeeded, int open) {

		static TallyAnswer of(Tally tally) {
			return new TallyAnswer(tally.onTime(), tally.late(), tally.leftOut(), tally.missed(), tally.notNeeded(),
					tally.open());
		}

	}

	/**
	 * Counts of tasks under a name.
	 *
	 * @param name a kind of work in words, or what people call a planting
	 * @param tally the counts
	 */
	record RowAnswer(String name, TallyAnswer tally) {
	}

	/**
	 * What became of a task.
	 *
	 * @param task the task
	 * @param planting what it is for; null for the whole site
	 * @param rule {@code pack/rule}
	 * @param title what was to be done
	 * @param from first day
	 * @param to last day
	 * @param outcome on-time, late, left-out, missed, not-needed or open
	 * @param doneOn the day on which it was done
	 * @param reason why it was left out or no longer needed
	 */
	record OutcomeAnswer(UUID task, @Nullable UUID planting, String rule, String title, LocalDate from, LocalDate to,
			String outcome, @Nullable LocalDate doneOn, @Nullable String reason) {
	}

	/**
	 * What was missed.
	 *
	 * @param task the last task that was missed
	 * @param title what was to be done
	 * @param plant what readers call the planting
	 * @param from first day
	 * @param to last day
	 * @param times how often in the year
	 * @param otherwise what it may lead to
	 * @param why the reason for it
	 * @param next first day of the next one that is not over, when it is planned
	 */
	record MissedAnswer(UUID task, String title, String plant, LocalDate from, LocalDate to, int times,
			@Nullable String otherwise, String why, @Nullable LocalDate next) {
	}

	/**
	 * What was done.
	 *
	 * @param id identifier of the log entry, or of the watering
	 * @param day on which
	 * @param work the kind of work
	 * @param where what people call the planting, or the whole site
	 * @param amount how much
	 * @param unit what the amount is in
	 * @param note for those who read it later
	 * @param task the task that it was done for
	 * @param insideHoldOff the hold-off that asked for none of this work on that day
	 */
	record DoneAnswer(UUID id, LocalDate day, String work, String where, @Nullable Double amount, @Nullable String unit,
			String note, @Nullable UUID task, @Nullable UUID insideHoldOff) {
	}

	/**
	 * Water for a place.
	 *
	 * @param where what people call the planting, or the whole site
	 * @param times how often it was watered
	 * @param millimetres depth in total
	 */
	record WateredAnswer(String where, int times, double millimetres) {
	}

	/**
	 * What the weather did.
	 *
	 * @param station whose temperatures these are
	 * @param stationName its name
	 * @param invented whether it is made up for a demonstration
	 * @param distanceKilometres distance to it
	 * @param to last day that was observed
	 * @param missingDays days of the year up to then without a minimum or a maximum
	 * @param normalsFrom year of the first season that is normal
	 * @param normalsTo year of the last one
	 * @param lastSpringFreeze at 32 °F
	 * @param firstFallFreeze at 32 °F
	 * @param hottest highest maximum, °C
	 * @param coldest lowest minimum, °C
	 * @param degreeDays above 50 °F, in °F
	 * @param rain mm, melted snow included
	 */
	record WeatherAnswer(String station, String stationName, boolean invented, double distanceKilometres, LocalDate to,
			int missingDays, int normalsFrom, int normalsTo, FreezeAnswer lastSpringFreeze,
			FreezeAnswer firstFallFreeze, WeatherYear.@Nullable Extreme hottest, WeatherYear.@Nullable Extreme coldest,
			@Nullable HeatAnswer degreeDays, @Nullable RainAnswer rain) {
	}

	/**
	 * A freeze.
	 *
	 * @param seen observed, none, not-yet or unknown
	 * @param date the day, when it was observed
	 * @param settled whether it stays
	 * @param median middle date of past seasons
	 * @param early one past season in ten had it earlier
	 * @param late one in ten later
	 */
	record FreezeAnswer(String seen, @Nullable LocalDate date, boolean settled, @Nullable LocalDate median,
			@Nullable LocalDate early, @Nullable LocalDate late) {

		static FreezeAnswer of(WeatherYear.Freeze freeze) {
			return new FreezeAnswer(Kinds.code(freeze.seen()), freeze.date(), freeze.settled(), freeze.median(),
					freeze.early(), freeze.late());
		}

	}

	/**
	 * Degree-days.
	 *
	 * @param from first day that counts
	 * @param to last day that counts
	 * @param sum the sum
	 * @param normal median of past seasons by the same day
	 * @param low one past season in ten had less
	 * @param high one in ten more
	 */
	record HeatAnswer(LocalDate from, LocalDate to, double sum, @Nullable Double normal, @Nullable Double low,
			@Nullable Double high) {
	}

	/**
	 * Rain.
	 *
	 * @param station who measured it
	 * @param to last day with a measurement
	 * @param millimetres the sum
	 * @param missingDays days without a measurement
	 * @param normal median of the same days of past years
	 * @param low one past year in ten had less
	 * @param high one in ten more
	 * @param driest longest dry spell
	 */
	record RainAnswer(String station, LocalDate to, double millimetres, int missingDays, @Nullable Double normal,
			@Nullable Double low, @Nullable Double high, WeatherYear.@Nullable Spell driest) {
	}

	@Operation(summary = "What was done and missed in a calendar year, and what the weather did")
	@GetMapping("/sites/{id}/review/{year}")
	ReviewAnswer review(@PathVariable UUID id, @PathVariable String year) {
		Site site = this.mine.site(id);
		int asked = this.years.check(site, Given.whole("year", year));
		YearReview review = this.years.review(site, asked);
		return new ReviewAnswer(asked, review.over(), TallyAnswer.of(review.total()), rows(review.works()),
				rows(review.plantings()), review.tasks().stream().flatMap((one) -> outcome(one).stream()).toList(),
				review.missed()
					.stream()
					.map((one) -> new MissedAnswer(one.task().value(), one.title(), one.plant(), one.window().from(),
							one.window().to(), one.times(), one.otherwise(), one.why(), one.next()))
					.toList(),
				review.months().stream().flatMap((month) -> month.done().stream()).map(ReviewApi::done).toList(),
				review.watered()
					.stream()
					.map((one) -> new WateredAnswer(one.where(), one.times(), one.millimetres()))
					.toList(),
				this.years.weather(site, asked).map(ReviewApi::weather).orElse(null));
	}

	private static List<RowAnswer> rows(List<YearReview.Row> rows) {
		return rows.stream().map((row) -> new RowAnswer(row.name(), TallyAnswer.of(row.tally()))).toList();
	}

	private static Optional<OutcomeAnswer> outcome(Reviewed one) {
		CareTask task = one.task();
		return Optional.ofNullable(one.outcome())
			.map((outcome) -> new OutcomeAnswer(task.id().value(),
					Optional.ofNullable(task.planting()).map(PlantingId::value).orElse(null), task.rule(),
					task.text().title(), task.window().from(), task.window().to(), outcome.code(), one.doneOn(),
					task.withdrawnBecause()));
	}

	private static DoneAnswer done(YearReview.Done one) {
		return new DoneAnswer(one.id(), one.day(), one.work().code(), one.where(), one.amount(),
				Optional.ofNullable(one.unit()).map(AmountUnit::code).orElse(null), one.note(),
				Optional.ofNullable(one.task()).map(TaskId::value).orElse(null),
				Optional.ofNullable(one.holdOffTask()).map(TaskId::value).orElse(null));
	}

	private static WeatherAnswer weather(WeatherYear weather) {
		return new WeatherAnswer(weather.station().id().value(), weather.station().name(), weather.station().invented(),
				weather.distance(), weather.to(), weather.missing(), weather.normalsFrom(), weather.normalsTo(),
				FreezeAnswer.of(weather.spring()), FreezeAnswer.of(weather.fall()), weather.hottest(),
				weather.coldest(),
				Optional.ofNullable(weather.heat())
					.map((heat) -> new HeatAnswer(heat.from(), heat.to(), heat.sum(), heat.normal(), heat.low(),
							heat.high()))
					.orElse(null),
				Optional.ofNullable(weather.rain())
					.map((rain) -> new RainAnswer(rain.station().id().value(), rain.to(), rain.millimetres(),
							rain.missing(), rain.normal(), rain.low(), rain.high(), rain.driest()))
					.orElse(null));
	}

}
