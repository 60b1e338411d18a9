package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.plants.SpeciesId;
import org.leafward.plants.SpeciesSearch;
import org.leafward.register.Beds;
import org.leafward.register.OpenSites;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of sites, and the form that adds a planting. */
@Controller
class RegisterPages {

	private static final int PAGE = 50;

	private final Register register;

	private final Beds beds;

	private final SpeciesSearch species;

	private final Viewers viewers;

	private final OpenSites sites;

	RegisterPages(Register register, Beds beds, SpeciesSearch species, Viewers viewers, OpenSites sites) {
		this.register = register;
		this.beds = beds;
		this.species = species;
		this.viewers = viewers;
		this.sites = sites;
	}

	/**
	 * A site in a list.
	 *
	 * @param id identifier
	 * @param name what its people call it
	 * @param more where it is and what grows there
	 */
	record Listed(UUID id, String name, String more) {
	}

	@GetMapping("/sites")
	String sites(@RequestParam(defaultValue = "0") int page, Model model) {
		Viewer viewer = this.viewers.current();
		List<Site> sites = (viewer.person() != null)
				? (Given.page(page) == 0) ? this.register.sitesOf(new PersonId(viewer.person())) : List.of()
				: this.register.sites(Given.page(page), PAGE);
		model.addAttribute("section", "sites");
		model.addAttribute("lead", lead(viewer, sites.size()));
		model.addAttribute("sites", sites.stream().map(this::listed).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", viewer.person() == null && sites.size() == PAGE);
		model.addAttribute("mayAdd", true);
		model.addAttribute("serves", !viewer.counties().isEmpty());
		return "register/sites";
	}

	private static String lead(Viewer viewer, int count) {
		if (viewer.person() == null) {
			return (count == 0) ? "No site is registered yet." : "All sites of this server, by name.";
		}
		return switch (count) {
			case 0 -> "You look after no site yet.";
			case 1 -> "You look after one site.";
			default -> "You look after %d sites.".formatted(count);
		};
	}

	private Listed listed(Site site) {
		int plantings = this.register.plantingsOf(site.id()).size();
		String county = site.county().isEmpty() ? "" : site.county() + ", ";
		return new Listed(site.id().value(), site.name(), county + count(plantings));
	}

	static String count(int plantings) {
		return (plantings == 1) ? "1 planting" : plantings + " plantings";
	}

	@GetMapping("/sites/{id}/plantings/new")
	String plantingForm(@PathVariable UUID id, Model model) {
		return plantingForm(this.sites.own(id), new PlantingRequest(null, null, "1", null, "ground", null, null, null,
				null, null, null, null, null, null), null, Map.of(), model);
	}

	/**
	 * Adds a planting, or looks the plant's name up and keeps what was typed.
	 * @param picked the species that was picked of a list
	 * @param pickedFor the name for which that list was made; when another one stands in
	 * the field now, the pick is out of date
	 * @param find present when the button that looks up was pressed
	 */
	@PostMapping("/sites/{id}/plantings/new")
	String addPlanting(@PathVariable UUID id, @ModelAttribute("form") PlantingRequest form,
			@RequestParam(required = false) @Nullable String picked, @RequestParam(defaultValue = "") String pickedFor,
			@RequestParam(required = false) @Nullable String find, Model model, HttpServletResponse response) {
		Site site = this.sites.own(id);
		String typed = Objects.requireNonNullElse(form.species(), "").strip();
		String pick = pickedFor.strip().equals(typed) ? picked : null;
		if (find != null) {
			return plantingForm(site, form, pick, Map.of(), model);
		}
		Optional<SpeciesId> species = this.species.sure(Objects.requireNonNullElse(pick, typed));
		try {
			PlantingRequest meant = species.map((one) -> form.of(one.value())).orElse(form);
			this.register.addPlantings(site.id(), List.of(meant.toPlanting()));
			return "redirect:/sites/" + site.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			Map<String, String> errors = ex.byField();
			if (species.isEmpty() && !typed.isEmpty()) {
				errors.put("species", which(typed));
			}
			return plantingForm(site, form, pick, errors, model);
		}
	}

	private String which(String typed) {
		if (typed.length() > SpeciesSearch.LONGEST) {
			return "The name has %d characters: write at most %d.".formatted(typed.length(), SpeciesSearch.LONGEST);
		}
		return this.species.suggest(typed).isEmpty()
				? "No plant of the catalogue is called “%s”: look at its spelling, or try its botanical name."
					.formatted(typed)
				: "“%s” is not one plant’s name without doubt: pick one of the list below it.".formatted(typed);
	}

	private String plantingForm(Site site, PlantingRequest form, @Nullable String picked, Map<String, String> errors,
			Model model) {
		String typed = Objects.requireNonNullElse(form.species(), "").strip();
		model.addAttribute("section", "sites");
		model.addAttribute("live", true);
		model.addAttribute("site", site);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("searched", typed);
		model.addAttribute("found", (typed.length() > SpeciesSearch.LONGEST) ? List.of() : this.species.suggest(typed));
		model.addAttribute("picked", picked);
		model.addAttribute("beds", BedForm.choices(this.beds.ofSite(site.id())));
		model.addAttribute("placements", choices(Placement.values(), Placement::words));
		model.addAttribute("raisedIn", SizePages.places());
		return "register/planting-form";
	}

	static <E extends Enum<E>> List<Choice> choices(E[] constants, Function<E, String> words) {
		List<Choice> choices = new ArrayList<>();
		for (E constant : constants) {
			choices.add(new Choice(SiteAnswer.word(constant), words.apply(constant)));
		}
		return choices;
	}

}
