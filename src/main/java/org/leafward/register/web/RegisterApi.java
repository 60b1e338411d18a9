package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.plants.Catalogue;
import org.leafward.register.NewPlanting;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Sites and plantings by API. */
@RestController
@Tag(name = "Sites and plantings", description = "What grows where")
@RequestMapping("/api/v1")
class RegisterApi {

	private static final int MOST_AT_ONCE = 500;

	private final Register register;

	private final OpenSites sites;

	private final Viewers viewers;

	private final Catalogue catalogue;

	RegisterApi(Register register, OpenSites sites, Viewers viewers, Catalogue catalogue) {
		this.catalogue = catalogue;
		this.register = register;
		this.sites = sites;
		this.viewers = viewers;
	}

	@Operation(summary = "Add a site")
	@PostMapping("/sites")
	@ResponseStatus(HttpStatus.CREATED)
	SiteAnswer addSite(@RequestBody SiteRequest request) {
		return SiteAnswer.of(this.register.addSite(owner(request.owner()), request.toSite()));
	}

	/** Whoever asks, if nobody is named; only the operator enters sites for others. */
	private PersonId owner(@Nullable String text) {
		Viewer viewer = this.viewers.current();
		UUID person = viewer.person();
		if (person != null && (text == null || text.isBlank() || text.strip().equalsIgnoreCase(person.toString()))) {
			return new PersonId(person);
		}
		if (!viewer.operator()) {
			throw new BadInput("owner is somebody else", "owner", "leave it out: the site will be yours");
		}
		String given = Given.text("owner", text);
		try {
			return new PersonId(UUID.fromString(given));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("owner '%s' is not a person's id".formatted(given), "owner",
					"add the person with POST /api/v1/people and use the id it answers");
		}
	}

	@Operation(summary = "List your sites by name, all for the operator")
	@GetMapping("/sites")
	List<SiteAnswer> sites(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		return this.sites.list(Given.page(page), Given.size(size)).stream().map(SiteAnswer::of).toList();
	}

	@Operation(summary = "One site")
	@GetMapping("/sites/{id}")
	SiteAnswer site(@PathVariable UUID id) {
		return SiteAnswer.of(this.sites.own(id));
	}

	@Operation(
			summary = "Change where a site is, what its nights and soil are like and what it has; what is left out stays, "
					+ "and its tasks are planned again when this answers")
	@PatchMapping("/sites/{id}")
	SiteAnswer changePlace(@PathVariable UUID id, @RequestBody PlaceRequest request) {
		Site site = this.sites.own(id);
		return SiteAnswer.of(request.over(site).read(site).save(this.register, site));
	}

	@Operation(summary = "Add a planting; its tasks are planned when this answers")
	@PostMapping("/sites/{id}/plantings")
	@ResponseStatus(HttpStatus.CREATED)
	PlantingAnswer addPlanting(@PathVariable UUID id, @RequestBody PlantingRequest request) {
		Site site = this.sites.own(id);
		return PlantingAnswer.of(this.register.addPlantings(site.id(), List.of(request.toPlanting())).get(0));
	}

	@Operation(summary = "Add up to 500 plantings, all or none; what can't be used is named by its index, such as "
			+ "[3].species. Their tasks are planned when this answers")
	@PostMapping("/sites/{id}/plantings/batch")
	@ResponseStatus(HttpStatus.CREATED)
	List<PlantingAnswer> addPlantings(@PathVariable UUID id, @RequestBody List<@Nullable PlantingRequest> requests) {
		Site site = this.sites.own(id);
		if (requests.isEmpty() || requests.size() > MOST_AT_ONCE) {
			throw new BadInput(
					"the list has %,d plantings; 1 to %d are allowed".formatted(requests.size(), MOST_AT_ONCE),
					"plantings", "send them in several calls");
		}
		Findings all = new Findings();
		List<Supplier<NewPlanting>> read = new ArrayList<>();
		for (int i = 0; i < requests.size(); i++) {
			String where = "[%d]".formatted(i);
			PlantingRequest request = requests.get(i);
			read.add(all.read(() -> planting(request, where)));
		}
		return all.give(() -> this.register.addPlantings(site.id(), read.stream().map(Supplier::get).toList()))
			.stream()
			.map(PlantingAnswer::of)
			.toList();
	}

	private NewPlanting planting(@Nullable PlantingRequest request, String where) {
		if (request == null) {
			throw new BadInput("there is no planting", where, "write an object, or leave it out");
		}
		try {
			NewPlanting planting = request.toPlanting();
			if (this.catalogue.find(planting.species()).isEmpty()) {
				throw new BadInput("species '%s' is not in the catalogue".formatted(planting.species().value()),
						"species", "look it up with GET /api/v1/species?search=");
			}
			return planting;
		}
		catch (BadInput ex) {
			throw BadInput.of(ex.all()
				.stream()
				.map((one) -> new BadInput(one.what(), where + "." + one.where(), one.mend()))
				.toList());
		}
	}

	@Operation(summary = "The plantings of a site")
	@GetMapping("/sites/{id}/plantings")
	List<PlantingAnswer> plantings(@PathVariable UUID id) {
		return this.register.plantingsOf(this.sites.own(id).id()).stream().map(PlantingAnswer::of).toList();
	}

	@Operation(summary = "Set how large a planting is and where it stands before it goes out; what is left out is no "
			+ "longer known. Its amounts are worked out again when this answers")
	@PutMapping("/plantings/{id}/size")
	PlantingAnswer changeSize(@PathVariable UUID id, @RequestBody SizeRequest request) {
		Planting planting = this.sites.planting(id);
		SizeRequest.Read read = request.read();
		return PlantingAnswer.of(this.register.changeSize(planting.id(), read.size(), read.raised()));
	}

	@Operation(summary = "Remove a planting; its coming tasks are withdrawn")
	@DeleteMapping("/plantings/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void removePlanting(@PathVariable UUID id) {
		this.register.removePlanting(this.sites.planting(id).id());
	}

}
