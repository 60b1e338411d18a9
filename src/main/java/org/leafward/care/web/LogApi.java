package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.AmountUnit;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.LogId;
import org.leafward.care.Logged;
import org.leafward.care.TaskId;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** What was done, by API. */
@RestController
@Tag(name = "Care log", description = "What was done and left out; everything can be taken back")
@RequestMapping("/api/v1")
class LogApi {

	private final CareLog log;

	private final Mine mine;

	private final Clock clock;

	LogApi(CareLog log, Mine mine, Clock clock) {
		this.log = log;
		this.mine = mine;
		this.clock = clock;
	}

	/**
	 * An entry as answered.
	 *
	 * @param id identifier; a watering that entered the water balance has the same one
	 * @param planting what it was done for; null for the whole site
	 * @param task the task that it was done for; null on one's own account
	 * @param work the kind of work
	 * @param day on which
	 * @param by id of the person who logged it; null for an operator
	 * @param amount how much
	 * @param unit what the amount is in
	 * @param note for those who read it later
	 * @param enteredAt when it was logged
	 * @param insideHoldOff the hold-off that asked for none of this work on that day
	 * @param remarks sentences for the person who logs it; only right after logging
	 */
	record EntryAnswer(UUID id, @Nullable UUID planting, @Nullable UUID task, String work, LocalDate day,
			@Nullable UUID by, @Nullable Double amount, @Nullable String unit, String note, Instant enteredAt,
			@Nullable UUID insideHoldOff, List<String> remarks) {

		static EntryAnswer of(LogEntry entry, List<String> remarks) {
			return new EntryAnswer(entry.id().value(),
					Optional.ofNullable(entry.planting()).map(PlantingId::value).orElse(null), value(entry.task()),
					entry.work().code(), entry.day(), Optional.ofNullable(entry.by()).map(PersonId::value).orElse(null),
					entry.amount(), Optional.ofNullable(entry.unit()).map(AmountUnit::code).orElse(null), entry.note(),
					entry.enteredAt(), value(entry.insideHoldOff()), remarks);
		}

		private static @Nullable UUID value(@Nullable TaskId id) {
			return (id != null) ? id.value() : null;
		}

	}

	/**
	 * Why a task is left out.
	 *
	 * @param reason one line of 1 to 300 characters
	 */
	record SkipRequest(@Nullable String reason) {
	}

	@Operation(summary = "Note a task as done")
	@PostMapping("/tasks/{id}/done")
	EntryAnswer done(@PathVariable UUID id, @RequestBody(required = false) @Nullable WorkRequest request) {
		CareTask task = this.mine.task(id);
		Site site = this.mine.site(task.site().value());
		WorkRequest given = (request != null) ? request : WorkRequest.NOTHING;
		Logged logged = this.log.done(List.of(task.id()), given.toWork(today(site)), this.mine.by(site)).get(0);
		return EntryAnswer.of(logged.entry(), logged.remarks());
	}

	@Operation(summary = "Leave a task out this time")
	@PostMapping("/tasks/{id}/skip")
	CareApi.TaskAnswer skip(@PathVariable UUID id, @RequestBody SkipRequest request) {
		CareTask task = this.mine.task(id);
		this.log.skip(List.of(task.id()), Given.text("reason", request.reason()), this.mine.by(task));
		return CareApi.TaskAnswer.of(this.mine.task(id));
	}

	@Operation(summary = "Take back what was last said of a task")
	@PostMapping("/tasks/{id}/undo")
	CareApi.TaskAnswer undo(@PathVariable UUID id) {
		CareTask task = this.mine.task(id);
		this.log.undo(List.of(task.id()), this.mine.by(task));
		return CareApi.TaskAnswer.of(this.mine.task(id));
	}

	@Operation(summary = "The care log of a site, the latest day first")
	@GetMapping("/sites/{id}/log")
	List<EntryAnswer> list(@PathVariable UUID id, @RequestParam(required = false) @Nullable String planting,
			@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		SiteId site = this.mine.site(id).id();
		return this.log.latest(site, Mine.planting("planting", planting), Given.page(page), Given.size(size))
			.stream()
			.map((entry) -> EntryAnswer.of(entry, List.of()))
			.toList();
	}

	@Operation(summary = "Log work on one's own account")
	@PostMapping("/sites/{id}/log")
	@ResponseStatus(HttpStatus.CREATED)
	EntryAnswer add(@PathVariable UUID id, @RequestBody LogRequest request) {
		Site site = this.mine.site(id);
		Logged logged = this.log.log(site.id(), Mine.planting("planting", request.planting()),
				Given.text("work", request.work()), request.done().toWork(today(site)), this.mine.by(site));
		return EntryAnswer.of(logged.entry(), logged.remarks());
	}

	@Operation(summary = "Take an entry back, and the task that it was for with it")
	@DeleteMapping("/sites/{id}/log/{entry}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id, @PathVariable UUID entry) {
		Site site = this.mine.site(id);
		this.log.remove(site.id(), new LogId(entry), this.mine.by(site));
	}

	private LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

}
