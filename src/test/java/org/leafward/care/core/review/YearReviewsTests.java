package org.leafward.care.core.review;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.LogId;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.Watering;
import org.leafward.register.WateringId;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Small years, counted by hand. */
class YearReviewsTests {

	private static final SiteId SITE = new SiteId(new UUID(0, 1));

	private static final PlantingId HEDGE = new PlantingId(new UUID(0, 2));

	private static final PlantingId MAPLE = new PlantingId(new UUID(0, 3));

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 12);

	private final List<CareTask> tasks = new ArrayList<>();

	private final List<CareTask> ahead = new ArrayList<>();

	private final List<LogEntry> log = new ArrayList<>();

	private final List<Watering> waterings = new ArrayList<>();

	private final Map<TaskId, LocalDate> doneOn = new HashMap<>();

	private int made = 100;

	/**
	 * The hedge: pruned on its last day, watered a day late, one mulching missed and one
	 * left out, one spray withdrawn. The maple: one watering done before its first day,
	 * one still open.
	 */
	@Test
	void everyTaskIsCountedOnceByWhatBecameOfIt() {
		done(task(HEDGE, Work.PRUNE, "2026-03-01", "2026-03-20", TaskState.DONE), "2026-03-20");
		done(task(HEDGE, Work.WATER, "2026-06-01", "2026-06-10", TaskState.DONE), "2026-06-11");
		task(HEDGE, Work.MULCH, "2026-05-01", "2026-05-10", TaskState.PLANNED);
		task(HEDGE, Work.MULCH, "2026-10-01", "2026-10-10", TaskState.SKIPPED);
		task(HEDGE, Work.TREAT, "2026-04-01", "2026-04-02", TaskState.WITHDRAWN);
		done(task(MAPLE, Work.WATER, "2026-07-05", "2026-07-08", TaskState.DONE), "2026-07-01");
		task(MAPLE, Work.WATER, "2026-11-10", "2026-11-20", TaskState.PLANNED);
		YearReview review = review(2026);
		assertThat(review.total()).isEqualTo(new Tally(2, 1, 1, 1, 1, 1));
		assertThat(review.total().total()).isEqualTo(7);
		assertThat(review.total().asked()).isEqualTo(6);
		assertThat(review.total().done()).isEqualTo(3);
		assertThat(review.over()).isFalse();
		assertThat(review.works()).containsExactly(new YearReview.Row("watering", false, new Tally(1, 1, 0, 0, 0, 1)),
				new YearReview.Row("mulching", false, new Tally(0, 0, 1, 1, 0, 0)),
				new YearReview.Row("pruning", false, new Tally(1, 0, 0, 0, 0, 0)),
				new YearReview.Row("treating", false, new Tally(0, 0, 0, 0, 1, 0)));
		assertThat(review.plantings()).containsExactly(
				new YearReview.Row("hedge (boxwood)", true, new Tally(1, 1, 1, 1, 1, 0)),
				new YearReview.Row("maple (red maple)", true, new Tally(1, 0, 0, 0, 0, 1)));
	}

	@Test
	void whatAsksForNothingIsNotCounted() {
		kind(HEDGE, TaskKind.HOLD_OFF, "2026-03-01", "2026-05-01", TaskState.PLANNED, "2026-01-01");
		kind(HEDGE, TaskKind.WATCH, "2026-03-01", "2026-05-01", TaskState.PLANNED, "2026-01-01");
		// Planned when its days were over.
		kind(HEDGE, TaskKind.DO, "2026-03-01", "2026-05-01", TaskState.PLANNED, "2026-05-02");
		YearReview review = review(2026);
		assertThat(review.total().total()).isZero();
		assertThat(review.tasks()).hasSize(3).allSatisfy((one) -> assertThat(one.outcome()).isNull());
		assertThat(review.empty()).isTrue();
		// Somebody who notes that they looked has done something.
		done(kind(HEDGE, TaskKind.WATCH, "2026-06-01", "2026-06-09", TaskState.DONE, "2026-01-01"), "2026-06-02");
		assertThat(review(2026).total()).isEqualTo(new Tally(1, 0, 0, 0, 0, 0));
	}

	@Test
	void aTaskBelongsToTheYearOfItsFirstDay() {
		task(HEDGE, Work.PRUNE, "2025-12-20", "2026-02-10", TaskState.PLANNED);
		assertThat(review(2026).total().total()).isZero();
		assertThat(review(2025).total()).isEqualTo(new Tally(0, 0, 0, 1, 0, 0));
		assertThat(review(2025).over()).isTrue();
		assertThat(review(2024).empty()).isTrue();
	}

	@Test
	void whatWasMissedOftenStandsOnceWithWhatItMayLeadToAndItsNextTime() {
		task(HEDGE, Work.WATER, "2026-06-01", "2026-06-02", TaskState.PLANNED);
		CareTask last = task(HEDGE, Work.WATER, "2026-08-01", "2026-08-03", TaskState.PLANNED);
		task(MAPLE, Work.WATER, "2026-07-01", "2026-07-02", TaskState.PLANNED);
		// Over, not needed, later, and the first that is neither.
		for (String from : List.of("2026-11-01", "2027-07-01", "2027-06-01")) {
			this.ahead.add(made(HEDGE, TaskKind.DO, Work.WATER, from, from, TaskState.PLANNED, "2026-01-01"));
		}
		this.ahead
			.add(made(HEDGE, TaskKind.DO, Work.WATER, "2027-05-01", "2027-05-01", TaskState.WITHDRAWN, "2026-01-01"));
		List<YearReview.Missed> missed = review(2026).missed();
		assertThat(missed).hasSize(2);
		assertThat(missed.get(0)).isEqualTo(new YearReview.Missed("Title", "hedge (boxwood)", true, last.id(),
				last.window(), 2, "It may die.", "It helps.", LocalDate.of(2027, 6, 1)));
		assertThat(missed.get(1).times()).isOne();
		assertThat(missed.get(1).next()).isNull();
	}

	@Test
	void leftOutKeepsItsReason() {
		task(HEDGE, Work.WATER, "2026-06-01", "2026-06-02", TaskState.SKIPPED);
		assertThat(review(2026).leftOut()).extracting(YearReview.LeftOut::reason).containsExactly("because");
	}

	/**
	 * 12 mm from the log are a watering of the same identifier; 8 mm were entered
	 * elsewhere.
	 */
	@Test
	void whatWasDoneStandsByMonthAndWaterIsCountedOnce() {
		entry("2026-03-20", Work.PRUNE, HEDGE, 2.0, AmountUnit.BAGS, null);
		UUID shared = entry("2026-07-04", Work.WATER, null, 12.0, AmountUnit.MM, null);
		watering(shared, null, "2026-07-04", 12);
		watering(UUID.randomUUID(), null, "2026-07-02", 8);
		watering(UUID.randomUUID(), MAPLE, "2026-07-09", 25.5);
		YearReview review = review(2026);
		assertThat(review.months()).extracting(YearReview.MonthDone::month).containsExactly(Month.MARCH, Month.JULY);
		YearReview.MonthDone july = review.months().get(1);
		assertThat(july.sums()).containsExactly(new YearReview.WorkCount(Work.WATER, 3));
		assertThat(july.done()).extracting((one) -> one.day().getDayOfMonth()).containsExactly(2, 4, 9);
		assertThat(july.done()).extracting(YearReview.Done::where)
			.containsExactly("the whole site", "the whole site", "maple");
		assertThat(review.watered()).hasSize(2);
		assertThat(review.watered().get(0).where()).isEqualTo("maple");
		assertThat(review.watered().get(0).millimetres()).isCloseTo(25.5, within(1e-9));
		assertThat(review.watered().get(1).millimetres()).isCloseTo(20, within(1e-9));
		assertThat(review.watered().get(1).times()).isEqualTo(2);
	}

	@Test
	void workInsideAHoldOffStandsOut() {
		TaskId hold = new TaskId(UUID.randomUUID());
		entry("2026-05-20", Work.PRUNE, HEDGE, null, null, null);
		entry("2026-05-21", Work.PRUNE, HEDGE, null, null, hold);
		assertThat(review(2026).atBadTimes()).hasSize(1).first().satisfies((one) -> {
			assertThat(one.day()).isEqualTo(LocalDate.of(2026, 5, 21));
			assertThat(one.holdOffTask()).isEqualTo(hold);
			assertThat(one.holdOff()).isEqualTo("Leave it unpruned");
		});
	}

	private YearReview review(int year) {
		return YearReviews.of(new YearInputs(year, TODAY, ZoneId.of("America/Chicago"), this.tasks, this.ahead,
				this.log, this.doneOn, this.waterings, Map.of(HEDGE, "hedge", MAPLE, "maple")));
	}

	private void done(CareTask task, String day) {
		this.doneOn.put(task.id(), LocalDate.parse(day));
	}

	private CareTask task(PlantingId planting, Work work, String from, String to, TaskState state) {
		CareTask task = made(planting, TaskKind.DO, work, from, to, state, "2025-01-01");
		this.tasks.add(task);
		return task;
	}

	private CareTask kind(PlantingId planting, TaskKind kind, String from, String to, TaskState state, String since) {
		CareTask task = made(planting, kind, Work.SCOUT, from, to, state, since);
		this.tasks.add(task);
		return task;
	}

	private CareTask made(PlantingId planting, TaskKind kind, Work work, String from, String to, TaskState state,
			String since) {
		Instant at = LocalDate.parse(since).atTime(12, 0).toInstant(ZoneOffset.UTC);
		boolean gone = state == TaskState.SKIPPED || state == TaskState.WITHDRAWN;
		return new CareTask(new TaskId(new UUID(0, this.made++)), planting,
				planting.equals(HEDGE) ? "hedge (boxwood)" : "maple (red maple)", SITE, "Garden",
				new PersonId(new UUID(0, 9)), "trees/" + work.code(), 2026, 0, kind,
				new DayWindow(LocalDate.parse(from), LocalDate.parse(to)),
				new TaskText("Title", "Do it.", null, "It helps.", "It may die.", null), state, gone ? "because" : null,
				0, at, at, work, 1);
	}

	private UUID entry(String day, Work work, @Nullable PlantingId planting, @Nullable Double amount,
			@Nullable AmountUnit unit, @Nullable TaskId hold) {
		LogId id = new LogId(UUID.randomUUID());
		this.log.add(new LogEntry(id, SITE, planting, null, work, LocalDate.parse(day), null, amount, unit, "",
				Instant.EPOCH, hold, (hold != null) ? "Leave it unpruned" : null));
		return id.value();
	}

	private void watering(UUID id, @Nullable PlantingId planting, String day, double millimetres) {
		this.waterings.add(new Watering(new WateringId(id), SITE, planting, LocalDate.parse(day), millimetres, "", null,
				Instant.EPOCH));
	}

}
