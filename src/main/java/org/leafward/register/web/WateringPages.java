package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.register.NewWatering;
import org.leafward.register.OpenSites;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.leafward.register.WateringId;
import org.leafward.register.Waterings;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Records waterings and takes them back, from the page of a site's weather. */
@Controller
class WateringPages {

	private final Waterings waterings;

	private final RegisterWeatherPage weather;

	private final OpenSites sites;

	WateringPages(Waterings waterings, RegisterWeatherPage weather, OpenSites sites) {
		this.waterings = waterings;
		this.weather = weather;
		this.sites = sites;
	}

	@PostMapping("/sites/{id}/waterings")
	String record(@PathVariable UUID id, @ModelAttribute("watering") WateringRequest form,
			@RequestParam(required = false) @Nullable String rootDepthMetres,
			@RequestParam(required = false) @Nullable String plantFactor, Model model, HttpServletResponse response) {
		Site site = this.sites.own(id);
		try {
			NewWatering given = form.toWatering();
			this.waterings.record(site.id(), given, this.sites.actor(site));
			return "redirect:" + BedRequest.of(rootDepthMetres, plantFactor, form.planting()).address(site)
					+ "#waterings";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return this.weather.show(new SeenSite(site, true, null),
					BedRequest.of(rootDepthMetres, plantFactor, form.planting()), form, ex.byField(), 0, model,
					response);
		}
	}

	@PostMapping("/sites/{id}/waterings/{watering}/undo")
	String undo(@PathVariable UUID id, @PathVariable UUID watering) {
		Site site = this.sites.own(id);
		this.waterings.remove(site.id(), new WateringId(watering));
		return "redirect:/sites/" + site.id() + "/weather#waterings";
	}

}
