package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.leafward.climate.Microclimate;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.pages.Choice;
import org.leafward.register.FoundPlace;
import org.leafward.register.GivenPlace;
import org.leafward.register.OpenSites;
import org.leafward.register.PlaceReader;
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

/**
 * The form that changes where a site is, what its nights and its soil are like and what
 * it has.
 */
@Controller
class PlacePages {

	private static final HandTests NO_TESTS = new HandTests("", "", "", "", "");

	private final Register register;

	private final OpenSites sites;

	private final PlaceReader places;

	PlacePages(Register register, OpenSites sites, PlaceReader places) {
		this.register = register;
		this.sites = sites;
		this.places = places;
	}

	@GetMapping("/sites/{id}/place")
	String form(@PathVariable UUID id, Model model) {
		Site site = this.sites.own(id);
		return form(site, PlaceRequest.of(site), NO_TESTS, Map.of(), model);
	}

	@PostMapping("/sites/{id}/place")
	String change(@PathVariable UUID id, @ModelAttribute("form") PlaceRequest form,
			@ModelAttribute("tests") HandTests tests, @RequestParam Map<String, String> parameters, Model model,
			HttpServletResponse response) {
		Site site = this.sites.own(id);
		if (PlaceReader.pointed(parameters) || "county".equals(parameters.get("go"))) {
			return move(site, form, tests, parameters, model, response);
		}
		try {
			Findings all = new Findings();
			Supplier<PlaceRequest> worked = all.read(() -> form.worked(tests));
			if (!"try".equals(parameters.get("go"))) {
				all.check(() -> form.beforeTests().read(site));
				all.give(worked).read(site).save(this.register, site);
				return "redirect:/sites/" + site.id();
			}
			all.end();
			return form(site, form, tests, Map.of(), model);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, form, tests, ex.byField(), model);
		}
	}

	/** The form with another place filled in; nothing is saved yet. */
	private String move(Site site, PlaceRequest form, HandTests tests, Map<String, String> parameters, Model model,
			HttpServletResponse response) {
		try {
			FoundPlace found = this.places.read(whereTo(form, parameters));
			model.addAttribute("found", found);
			return form(site, form.at(found), tests, Map.of(), model);
		}
		catch (BadInput ex) {
			// The fields of these names hold what the site is now.
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, form, tests, Map.of("moveTo", ex.byField().values().iterator().next()), model);
		}
	}

	private GivenPlace whereTo(PlaceRequest form, Map<String, String> parameters) {
		if (!PlaceReader.pointed(parameters)) {
			return new GivenPlace(parameters.get("moveTo"), "", "", "", "", form.zone());
		}
		GivenPlace clicked = this.places.clicked(parameters);
		return new GivenPlace("", clicked.latitude(), clicked.longitude(), "", "", form.zone());
	}

	private String form(Site site, PlaceRequest form, HandTests tests, Map<String, String> errors, Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("form", form);
		model.addAttribute("tests", tests);
		model.addAttribute("errors", errors);
		model.addAttribute("lies", lies());
		model.addAttribute("soils", HandTests.soils());
		model.addAttribute("counties", this.places.counties());
		model.addAttribute("maps", this.places.maps());
		HandTests.choices(model);
		tests.told(model);
		return "register/place-form";
	}

	static List<Choice> lies() {
		return Arrays.stream(Microclimate.Lie.values()).map((lie) -> new Choice(SiteAnswer.word(lie), switch (lie) {
			case FLAT -> "It lies on level, open ground";
			case HOLLOW -> "It lies in a hollow where cold air gathers";
			case SLOPE -> "It lies in the middle of a slope, where cold air flows off";
			case HILLTOP -> "It lies on top of a hill";
		})).toList();
	}

}
