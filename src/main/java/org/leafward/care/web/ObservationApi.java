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
import org.leafward.care.Observation;
import org.leafward.care.ObservationId;
import org.leafward.care.PhenologyLog;
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

/** Observed phases and events by API. */
@RestController
@Tag(name = "Observations", description = "Phases and events that were seen; dates move with them")
@RequestMapping("/api/v1/sites/{id}/observations")
class ObservationApi {

	private final PhenologyLog log;

	private final Mine mine;

	private final Clock clock;

	ObservationApi(PhenologyLog log, Mine mine, Clock clock) {
		this.log = log;
		this.mine = mine;
		this.clock = clock;
	}

	/**
	 * An observation as answered.
	 *
	 * @param id identifier
	 * @param planting on which planting; null for the whole site
	 * @param kind phase or event
	 * @param name its name in config/phenology
	 * @param day on which
	 * @param season year of the season that it belongs to
	 * @param by id of the person who entered it; null for an operator
	 * @param enteredAt when
	 */
	record ObservationAnswer(UUID id, @Nullable UUID planting, String kind, String name, LocalDate day, int season,
			@Nullable UUID by, Instant enteredAt) {

		static ObservationAnswer of(Observation seen) {
			return new ObservationAnswer(seen.id().value(),
					Optional.ofNullable(seen.planting()).map(PlantingId::value).orElse(null), Kinds.code(seen.kind()),
					seen.name(), seen.day(), seen.season(),
					Optional.ofNullable(seen.by()).map(PersonId::value).orElse(null), seen.enteredAt());
		}

	}

	@Operation(summary = "What was seen at a site, the latest day first")
	@GetMapping
	List<ObservationAnswer> list(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		SiteId site = this.mine.site(id).id();
		return this.log.latest(site, Given.page(page), Given.size(size)).stream().map(ObservationAnswer::of).toList();
	}

	@Operation(summary = "Enter a phase or an event; dates that hang on it move at once")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	ObservationAnswer add(@PathVariable UUID id, @RequestBody ObservationRequest request) {
		Site site = this.mine.site(id);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return ObservationAnswer.of(this.log.observe(site.id(), request.toObservation(today), this.mine.by(site)));
	}

	@Operation(summary = "Take an observation back")
	@DeleteMapping("/{observation}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id, @PathVariable UUID observation) {
		Site site = this.mine.site(id);
		this.log.remove(site.id(), new ObservationId(observation), this.mine.by(site));
	}

}
