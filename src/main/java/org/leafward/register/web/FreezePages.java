package org.leafward.register.web;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.pages.Choice;
import org.leafward.register.OpenSites;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The freezes of a site, at any temperature and over several periods. */
@Controller
class FreezePages {

	private static final List<String> USUAL = List.of("36F", "32F", "28F", "24F", "20F");

	private final OpenSites sites;

	private final LocalClimate climate;

	FreezePages(OpenSites sites, LocalClimate climate) {
		this.sites = sites;
		this.climate = climate;
	}

	@GetMapping("/sites/{id}/freezes")
	String freezes(@PathVariable UUID id, @RequestParam(defaultValue = "32F") String threshold,
			@RequestParam(defaultValue = "latest-30") String period, Model model) {
		SeenSite seen = this.sites.seen(id);
		Site site = seen.site();
		FreezeClimatology freezes = this.climate.freezeClimatology(site.place(), TemperatureThreshold.parse(threshold),
				NormalsPeriod.parse(period));
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("seen", seen);
		model.addAttribute("threshold", freezes.threshold().code());
		model.addAttribute("period", freezes.period().code());
		model.addAttribute("thresholds",
				USUAL.stream().map((one) -> new Choice(one, TemperatureThreshold.parse(one).words())).toList());
		model.addAttribute("periodChoices",
				Arrays.stream(NormalsPeriod.values()).map((one) -> new Choice(one.code(), one.words())).toList());
		put(freezes, model);
		return "register/freezes";
	}

	static void put(FreezeClimatology freezes, Model model) {
		model.addAttribute("lead", FreezeWords.lead(freezes));
		model.addAttribute("words", freezes.threshold().words());
		model.addAttribute("invented", freezes.stations().stream().anyMatch((one) -> one.station().invented()));
		model.addAttribute("curve", FreezeWords.curve(freezes));
		model.addAttribute("chances", FreezeWords.chanceRows(freezes));
		model.addAttribute("stations", FreezeWords.stationRows(freezes));
		model.addAttribute("spread", FreezeWords.spread(freezes));
		model.addAttribute("check", FreezeWords.check(freezes.check()));
		model.addAttribute("periods", FreezeWords.periodRows(freezes));
		model.addAttribute("periodWords", freezes.period().words());
		model.addAttribute("effects", freezes.place().microclimate().effects());
	}

}
