package org.leafward.register.web;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.SeenSite;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The sites in the counties that a specialist serves. */
@Controller
class CountyPages {

	private static final int PAGE = 50;

	private final OpenSites sites;

	private final Register register;

	private final Viewers viewers;

	CountyPages(OpenSites sites, Register register, Viewers viewers) {
		this.sites = sites;
		this.register = register;
		this.viewers = viewers;
	}

	@GetMapping("/sites/counties")
	String list(@RequestParam(defaultValue = "0") int page, Model model) {
		Set<String> counties = new TreeSet<>(this.viewers.current().counties());
		if (counties.isEmpty()) {
			throw new NotThere("This page is for specialists, and you serve no county.");
		}
		List<SeenSite> found = this.sites.inMyCounties(Given.page(page), PAGE);
		Map<SiteId, List<Planting>> plantings = this.register
			.plantingsOf(found.stream().map((one) -> one.site().id()).toList());
		model.addAttribute("section", "sites");
		model.addAttribute("lead", "You serve " + String.join(", ", counties) + ".");
		model.addAttribute("sites",
				found.stream()
					.map((one) -> listed(one, plantings.getOrDefault(one.site().id(), List.of()).size()))
					.toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				found.size() == PAGE && !this.sites.inMyCounties(page * PAGE + PAGE, 1).isEmpty());
		return "register/counties";
	}

	private static RegisterPages.Listed listed(SeenSite one, int plantings) {
		return new RegisterPages.Listed(one.site().id().value(), one.site().name(), "%s, looked after by %s, %s"
			.formatted(one.site().county(), one.ownerFirstName(), RegisterPages.count(plantings)));
	}

}
