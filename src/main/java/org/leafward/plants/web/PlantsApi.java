package org.leafward.plants.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The species catalogue for programs. */
@RestController
@Tag(name = "Species", description = "The catalogue of plants")
@RequestMapping("/api/v1/species")
class PlantsApi {

	private static final int LARGEST_PAGE = 200;

	private static final int LONGEST_SEARCH = 80;

	private static final int MOST = 1000;

	private final Catalogue catalogue;

	PlantsApi(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/**
	 * Lists species.
	 * @param search part of a name, at most 80 characters; blank for all
	 * @param page number of the page, from 0
	 * @param size species per page, 1 to 200
	 * @return the page; empty beyond the last one
	 */
	@Operation(summary = "List or search species")
	@GetMapping
	SpeciesList list(@RequestParam(defaultValue = "") String search, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		if (search.length() > LONGEST_SEARCH) {
			throw new BadInput("the search has %d characters".formatted(search.length()), "search",
					"use %d or fewer".formatted(LONGEST_SEARCH));
		}
		if (page < 0) {
			throw new BadInput("page %d is below 0".formatted(page), "page", "count pages from 0");
		}
		if (size < 1 || size > LARGEST_PAGE) {
			throw new BadInput("size %d is outside 1 to %d".formatted(size, LARGEST_PAGE), "size",
					"ask for fewer species per page");
		}
		List<Species> found = search.isBlank() ? this.catalogue.all() : this.catalogue.search(search, MOST);
		List<SpeciesView> items = found.stream().skip((long) page * size).limit(size).map(SpeciesView::of).toList();
		return new SpeciesList(items, page, size, found.size());
	}

	/**
	 * One species.
	 * @param id its identifier
	 * @return the species
	 */
	@Operation(summary = "One species")
	@GetMapping("/{id}")
	SpeciesView one(@PathVariable String id) {
		return this.catalogue.find(new SpeciesId(id))
			.map(SpeciesView::of)
			.orElseThrow(() -> new NotThere("There is no species '%s' in the catalogue.".formatted(id)));
	}

}
