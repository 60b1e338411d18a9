package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Beds by API. */
@RestController
@Tag(name = "Beds", description = "Parts of a site that share light, wind and water")
@RequestMapping("/api/v1")
class BedApi {

	private final Beds beds;

	private final OpenSites sites;

	BedApi(Beds beds, OpenSites sites) {
		this.beds = beds;
		this.sites = sites;
	}

	/**
	 * Where a planting stands.
	 *
	 * @param bed identifier of a bed; null for none
	 */
	record InBedRequest(@Nullable String bed) {
	}

	@Operation(summary = "The beds of a site, by name")
	@GetMapping("/sites/{id}/beds")
	List<BedAnswer> beds(@PathVariable UUID id) {
		return this.beds.ofSite(this.sites.own(id).id()).stream().map(BedAnswer::of).toList();
	}

	@Operation(summary = "Make a bed; what is left out is as at the site")
	@PostMapping("/sites/{id}/beds")
	@ResponseStatus(HttpStatus.CREATED)
	BedAnswer add(@PathVariable UUID id, @RequestBody BedForm request) {
		var site = this.sites.own(id);
		return BedAnswer.of(this.beds.add(site.id(), request.toBed()));
	}

	@Operation(summary = "Change a bed; what is left out is as at the site. Tasks are planned again when this answers")
	@PutMapping("/beds/{id}")
	BedAnswer change(@PathVariable UUID id, @RequestBody BedForm request) {
		var bed = this.sites.bed(id);
		NewBed wanted = request.toBed();
		return BedAnswer.of(this.beds.change(bed.id(), (now) -> wanted));
	}

	@Operation(summary = "Remove a bed; its plantings stay at the site")
	@DeleteMapping("/beds/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id) {
		this.beds.remove(this.sites.bed(id).id());
	}

	@Operation(summary = "Say in which bed of its site a planting stands")
	@PutMapping("/plantings/{id}/bed")
	PlantingAnswer put(@PathVariable UUID id, @RequestBody InBedRequest request) {
		Planting planting = this.sites.planting(id);
		return PlantingAnswer.of(this.beds.put(planting.id(), BedForm.id("bed", request.bed()).orElse(null)));
	}

}
