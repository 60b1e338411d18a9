package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.leafward.measure.Given;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.WateringId;
import org.leafward.register.Waterings;
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

/** Waterings by API. */
@RestController
@Tag(name = "Waterings", description = "Water that was given; it enters the water balance")
@RequestMapping("/api/v1/sites/{id}/waterings")
class WateringApi {

	private final OpenSites sites;

	private final Waterings waterings;

	WateringApi(OpenSites sites, Waterings waterings) {
		this.sites = sites;
		this.waterings = waterings;
	}

	@Operation(summary = "Record a watering: a depth, or a volume with its area")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	WateringAnswer add(@PathVariable UUID id, @RequestBody WateringRequest request) {
		Site site = this.sites.own(id);
		return WateringAnswer.of(this.waterings.record(site.id(), request.toWatering(), this.sites.actor(site)));
	}

	@Operation(summary = "The waterings of a site, the latest day first")
	@GetMapping
	List<WateringAnswer> list(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		SiteId site = this.sites.own(id).id();
		return this.waterings.latest(site, Given.page(page), Given.size(size))
			.stream()
			.map(WateringAnswer::of)
			.toList();
	}

	@Operation(summary = "Take a watering back")
	@DeleteMapping("/{watering}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id, @PathVariable UUID watering) {
		this.waterings.remove(this.sites.own(id).id(), new WateringId(watering));
	}

}
