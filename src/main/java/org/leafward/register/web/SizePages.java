package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.RaisedIn;
import org.leafward.register.Register;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** The form that says how large a planting is and where it stands before it goes out. */
@Controller
class SizePages {

	private final Register register;

	private final OpenSites sites;

	SizePages(Register register, OpenSites sites) {
		this.register = register;
		this.sites = sites;
	}

	@GetMapping("/plantings/{id}/size")
	String form(@PathVariable UUID id, Model model) {
		Planting planting = this.sites.planting(id);
		return form(planting, SizeRequest.of(planting), Map.of(), model);
	}

	@PostMapping("/plantings/{id}/size")
	String change(@PathVariable UUID id, @ModelAttribute("form") SizeRequest form, Model model,
			HttpServletResponse response) {
		Planting planting = this.sites.planting(id);
		try {
			SizeRequest.Read read = form.read();
			this.register.changeSize(planting.id(), read.size(), read.raised());
			return "redirect:/sites/" + planting.site();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(planting, form, ex.byField(), model);
		}
	}

	private static String form(Planting planting, SizeRequest form, Map<String, String> errors, Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("planting", planting);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("raisedIn", places());
		return "register/size-form";
	}

	/** Where plants may stand before they go out, nothing told first. */
	static List<Choice> places() {
		List<Choice> places = new ArrayList<>();
		places.add(new Choice("", "It doesn’t, or I can’t say"));
		for (RaisedIn place : RaisedIn.values()) {
			places.add(new Choice(SiteAnswer.word(place), place.words()));
		}
		return places;
	}

}
