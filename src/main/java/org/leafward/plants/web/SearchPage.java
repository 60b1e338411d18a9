package org.leafward.plants.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.leafward.pages.Fragments;
import org.leafward.plants.SpeciesSearch;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Species by name: the list below a field while somebody types, or a page. */
@Controller
class SearchPage {

	private final SpeciesSearch species;

	SearchPage(SpeciesSearch species) {
		this.species = species;
	}

	/**
	 * Searches.
	 * @param q the name
	 * @param species the name, as the field of a form calls it, when there is no q
	 */
	@GetMapping("/plants/search")
	String search(@RequestParam(defaultValue = "") String q, @RequestParam(defaultValue = "") String species,
			Model model, HttpServletRequest request, HttpServletResponse response) {
		String text = q.isBlank() ? species : q;
		model.addAttribute("section", "sites");
		model.addAttribute("searched", text);
		model.addAttribute("found", this.species.suggest(text));
		return Fragments.wanted(request, response) ? "plants/parts :: answered" : "plants/search";
	}

}
