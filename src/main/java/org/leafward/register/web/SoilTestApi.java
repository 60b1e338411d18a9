package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.leafward.measure.Given;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTests;
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

/** Soil tests by API. */
@RestController
@Tag(name = "Soil tests", description = "Salt and sodium as a laboratory found them; tasks follow the latest of a bed")
@RequestMapping("/api/v1/sites/{id}/soil-tests")
class SoilTestApi {

	private final OpenSites sites;

	private final SoilTests tests;

	SoilTestApi(OpenSites sites, SoilTests tests) {
		this.sites = sites;
		this.tests = tests;
	}

	@Operation(summary = "Keep a soil test, of the whole site or of one planting's bed")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	SoilTestAnswer add(@PathVariable UUID id, @RequestBody SoilTestForm request) {
		Site site = this.sites.own(id);
		return SoilTestAnswer.of(this.tests.keep(site.id(), request.toTest(), this.sites.actor(site)));
	}

	@Operation(summary = "The soil tests of a site, the latest day first")
	@GetMapping
	List<SoilTestAnswer> list(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		SiteId site = this.sites.own(id).id();
		return this.tests.latest(site, Given.page(page), Given.size(size)).stream().map(SoilTestAnswer::of).toList();
	}

	@Operation(summary = "Take a soil test back")
	@DeleteMapping("/{test}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id, @PathVariable UUID test) {
		this.tests.remove(this.sites.own(id).id(), new SoilTestId(test));
	}

}
