package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.climate.Microclimate;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.register.OpenSites;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteSetting;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** The form that changes where a site is, what its nights are like and what it has. */
@Controller
class PlacePages {

	private final Register register;

	private final OpenSites sites;

	PlacePages(Register register, OpenSites sites) {
		this.register = register;
		this.sites = sites;
	}

	@GetMapping("/sites/{id}/place")
	String form(@PathVariable UUID id, Model model) {
		Site site = this.sites.own(id);
		return form(site, PlaceRequest.of(site), Map.of(), model);
	}

	@PostMapping("/sites/{id}/place")
	String change(@PathVariable UUID id, @ModelAttribute("form") PlaceRequest form, Model model,
			HttpServletResponse response) {
		Site site = this.sites.own(id);
		try {
			SiteSetting setting = form.toSetting();
			this.register.change(site.id(), (now) -> setting);
			return "redirect:/sites/" + site.id();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, form, ex.byField(), model);
		}
	}

	private static String form(Site site, PlaceRequest form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("lies", lies());
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
