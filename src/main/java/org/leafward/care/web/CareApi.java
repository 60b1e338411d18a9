package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.state.TaskLifecycle;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Tasks by API. */
@RestController
@Tag(name = "Tasks", description = "What is to be done, when, and why")
@RequestMapping("/api/v1")
class CareApi {

	private final TaskCalendar calendar;

	private final Mine mine;

	CareApi(TaskCalendar calendar, Mine mine) {
		this.calendar = calendar;
		this.mine = mine;
	}

	/**
	 * A task as answered.
	 *
	 * @param id identifier, also the UID of its calendar entry
	 * @param planting what it is for
	 * @param plant what readers call the planting
	 * @param rule {@code pack/rule}
	 * @param season year of the season
	 * @param occurrence which of several of the season, 0 where there is one
	 * @param kind do, hold-off, ramp-day or watch
	 * @param from first day
	 * @param to last day
	 * @param text the words
	 * @param state planned, withdrawn, done or skipped
	 * @param withdrawnBecause the reason, for withdrawn tasks
	 * @param sequence number of visible changes
	 * @param changedAt time of the last one
	 * @param doneFrom the first day on which it can be noted as done; null for hold-offs
	 * @param packVersion version of the pack in which its rule last changed when it was
	 * written; 0 where that is not known
	 */
	record TaskAnswer(UUID id, @Nullable UUID planting, String plant, String rule, int season, int occurrence,
			String kind, LocalDate from, LocalDate to, TaskText text, String state, @Nullable String withdrawnBecause,
			int sequence, Instant changedAt, @Nullable LocalDate doneFrom, int packVersion) {

		static TaskAnswer of(CareTask task) {
			return new TaskAnswer(task.id().value(), value(task.planting()), task.plant(), task.rule(), task.season(),
					task.occurrence(), Kinds.code(task.kind()), task.window().from(), task.window().to(), task.text(),
					Kinds.code(task.state()), task.withdrawnBecause(), task.sequence(), task.changedAt(),
					(task.kind() != TaskKind.HOLD_OFF) ? task.window().from().minusDays(TaskLifecycle.EARLY_DAYS)
							: null,
					task.packVersion());
		}

	}

	private static @Nullable UUID value(@Nullable PlantingId planting) {
		return (planting != null) ? planting.value() : null;
	}

	/**
	 * The tasks of a season.
	 *
	 * @param tasks by first day
	 * @param undated rules that can't be dated, and why
	 */
	record SeasonAnswer(List<TaskAnswer> tasks, List<UndatedAnswer> undated) {
	}

	/**
	 * A rule that can't be dated.
	 *
	 * @param planting the planting; null for the site as a whole
	 * @param rule {@code pack/rule}
	 * @param title title of the rule
	 * @param reason why
	 */
	record UndatedAnswer(@Nullable UUID planting, String rule, String title, String reason) {
	}

	/**
	 * A task with its explanation.
	 *
	 * @param task the task
	 * @param explanation how its dates came about
	 */
	record ExplainedAnswer(TaskAnswer task, @Nullable Explanation explanation) {
	}

	@Operation(summary = "The tasks of a season, and what could not be dated")
	@GetMapping("/sites/{id}/tasks")
	SeasonAnswer tasks(@PathVariable UUID id, @RequestParam int season) {
		SiteId site = this.mine.site(id).id();
		if (season < 1700 || season > 2199) {
			throw new BadInput("season %d is outside 1700 to 2199".formatted(season), "season",
					"give the year of its spring, for example 2027");
		}
		return new SeasonAnswer(this.calendar.ofSeason(site, season).stream().map(TaskAnswer::of).toList(),
				this.calendar.undated(site)
					.stream()
					.filter((undated) -> undated.season() == season)
					.map((undated) -> new UndatedAnswer(value(undated.planting()), undated.rule(), undated.title(),
							undated.reason()))
					.toList());
	}

	@Operation(summary = "One task with its explanation")
	@GetMapping("/tasks/{id}")
	ExplainedAnswer task(@PathVariable UUID id) {
		CareTask task = this.mine.task(id);
		return new ExplainedAnswer(TaskAnswer.of(task), this.calendar.explain(task.id()).orElse(null));
	}

}
