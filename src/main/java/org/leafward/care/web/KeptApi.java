package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.KeptCalculation;
import org.leafward.care.KeptCalculations;
import org.leafward.care.core.keep.Keeping;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.Site;
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

/** Answers of calculators that are kept for plantings, by API. */
@RestController
@Tag(name = "Kept calculations", description = "From a calculator's answer to the tasks of a planting")
@RequestMapping("/api/v1")
class KeptApi {

	private final Calculations calculations;

	private final KeptCalculations kept;

	private final OpenSites sites;

	KeptApi(Calculations calculations, KeptCalculations kept, OpenSites sites) {
		this.calculations = calculations;
		this.kept = kept;
		this.sites = sites;
	}

	/**
	 * What is to be kept.
	 *
	 * @param calculator its name in addresses, such as {@code water}
	 * @param inputs what it is asked, by the names of its parameters
	 * @param day of the sample, for a soil test
	 */
	record KeepRequest(@Schema(requiredMode = RequiredMode.REQUIRED) @Nullable String calculator,
			@Schema(requiredMode = RequiredMode.REQUIRED,
					example = "{\"what\": \"pot\", \"pot\": \"5\"}") @Nullable Map<String, @Nullable String> inputs,
			@Schema(types = "string", format = "date") @Nullable String day) {
	}

	/**
	 * A kept calculation.
	 *
	 * @param id identifier
	 * @param site where the planting grows
	 * @param planting for which it was kept
	 * @param calculator its name in addresses
	 * @param inputs what it was asked
	 * @param words the answer of then
	 * @param day on which it was kept
	 * @param by who kept it; null for an operator
	 * @param keptAt when
	 */
	record KeptAnswer(UUID id, UUID site, UUID planting, String calculator, Map<String, String> inputs, String words,
			LocalDate day, @Nullable UUID by, Instant keptAt) {

		static KeptAnswer of(KeptCalculation one) {
			PersonId by = one.by();
			return new KeptAnswer(one.id(), one.site().value(), one.planting().value(), one.calculator(),
					Calculation.inputs(one.inputs()), one.words(), one.day(), (by != null) ? by.value() : null,
					one.keptAt());
		}

	}

	/**
	 * What keeping changes.
	 *
	 * @param words the calculator's answer
	 * @param changes figures that are set
	 * @param remarks what can't become a figure
	 */
	record KeepAnswer(String words, List<Keeping.Change> changes, List<String> remarks) {
	}

	@Operation(summary = "What was kept for a planting, the latest first")
	@GetMapping("/plantings/{id}/kept")
	List<KeptAnswer> list(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		Planting planting = this.sites.planting(id);
		return this.kept.latest(planting.id(), Given.page(page), Given.size(size))
			.stream()
			.map(KeptAnswer::of)
			.toList();
	}

	@Operation(summary = "What keeping an answer would change; nothing is changed")
	@PostMapping("/plantings/{id}/kept/looked-at")
	KeepAnswer look(@PathVariable UUID id, @RequestBody KeepRequest request) {
		Planting planting = this.sites.planting(id);
		Calculation calculation = calculation(request);
		return changes(calculation, this.kept.look(calculation, planting.id(), sampled(calculation, request)));
	}

	@Operation(summary = "Keep an answer for a planting; its tasks go by it when this answers")
	@PostMapping("/plantings/{id}/kept")
	@ResponseStatus(HttpStatus.CREATED)
	KeepAnswer keep(@PathVariable UUID id, @RequestBody KeepRequest request) {
		Planting planting = this.sites.planting(id);
		Site site = this.sites.own(planting.site().value());
		Calculation calculation = calculation(request);
		return changes(calculation,
				this.kept.keep(calculation, planting.id(), sampled(calculation, request), this.sites.actor(site)));
	}

	@Operation(summary = "Delete a kept calculation; the figures of the planting stay")
	@DeleteMapping("/sites/{id}/kept/{kept}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id, @PathVariable("kept") UUID one) {
		this.kept.remove(this.sites.own(id).id(), one);
	}

	private Calculation calculation(KeepRequest request) {
		String calculator = Given.text("calculator", request.calculator());
		if (!this.calculations.titles().containsKey(calculator)) {
			throw new BadInput("there is no calculator of this name", "calculator",
					"write one of: " + String.join(", ", this.calculations.titles().keySet()));
		}
		Map<String, String> inputs = new LinkedHashMap<>();
		if (request.inputs() != null) {
			request.inputs().forEach((name, value) -> {
				if (value != null) {
					inputs.put(name, value);
				}
			});
		}
		return this.calculations.of(calculator, inputs);
	}

	private static @Nullable LocalDate sampled(Calculation calculation, KeepRequest request) {
		return (calculation.figures().soil() != null) ? Given.date("day", request.day()) : null;
	}

	private static KeepAnswer changes(Calculation calculation, Keeping keeping) {
		return new KeepAnswer(calculation.words(), keeping.changes(), keeping.remarks());
	}

}
