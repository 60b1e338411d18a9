package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PlacePreview;
import org.leafward.care.PlacePreviews;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Microclimate;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.MinimumReading;
import org.leafward.climate.Place;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteSetting;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * The thermometer of a site beside the estimate, and how its dates would move. Readings
 * stay in the form; only their mean is kept, when somebody says so.
 */
@Controller
class ThermometerPages {

	private final Mine mine;

	private final LocalClimate climate;

	private final Register register;

	private final PlacePreviews previews;

	private final Clock clock;

	ThermometerPages(Mine mine, LocalClimate climate, Register register, PlacePreviews previews, Clock clock) {
		this.mine = mine;
		this.climate = climate;
		this.register = register;
		this.previews = previews;
		this.clock = clock;
	}

	/**
	 * What was given.
	 *
	 * @param readings a date and degrees on each line
	 * @param unit C or F, for lines without their own
	 */
	record Form(String readings, String unit) {

		boolean fahrenheit() {
			return this.unit.equals("F");
		}

	}

	@GetMapping("/sites/{id}/thermometer")
	String show(@PathVariable UUID id, Model model) {
		return show(this.mine.site(id), new Form("", "C"), Map.of(), model);
	}

	@PostMapping("/sites/{id}/thermometer")
	String post(@PathVariable UUID id, @RequestParam(defaultValue = "compare") String go,
			@RequestParam(defaultValue = "") String readings, @RequestParam(defaultValue = "C") String unit,
			Model model, RedirectAttributes flash, HttpServletResponse response) {
		Site site = this.mine.site(id);
		Form form = new Form(readings, unit);
		try {
			return switch (go) {
				case "forget" -> use(site, null, flash);
				case "use" -> use(site, offset(compared(site, form)), flash);
				default -> compare(site, form, model);
			};
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(site, form, ex.byField(), model);
		}
	}

	private MinimumComparison compared(Site site, Form form) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return this.climate.compare(site.point(), MinimumReading.list(form.readings(), form.fahrenheit(), today));
	}

	/** What of it a site can keep. */
	static double offset(MinimumComparison compared) {
		Double offset = compared.offset();
		if (compared.mean() == null) {
			throw new BadInput("no weather station has any of these nights", "readings",
					"give nights of which there is a record");
		}
		if (offset == null) {
			throw new BadInput("the mean difference is larger than 10 °C (18 °F)", "readings",
					"look at the unit, the dates and where the thermometer hangs");
		}
		return offset;
	}

	private String compare(Site site, Form form, Model model) {
		MinimumComparison compared = compared(site, form);
		model.addAttribute("compared", compared);
		Formats formats = new Formats(LocalDate.ofInstant(this.clock.instant(), site.zone()).getYear());
		model.addAttribute("nights", ThermometerWords.rows(compared, formats));
		model.addAttribute("sure", ThermometerWords.sure(compared));
		Double offset = compared.offset();
		if (offset != null) {
			model.addAttribute("offset", ThermometerWords.offset(offset));
			Microclimate nights = site.microclimate().measuring(offset);
			PlacePreview preview = this.previews.of(site.id(), nights);
			model.addAttribute("preview", preview);
			model.addAttribute("markers", ThermometerWords.markers(preview, formats));
		}
		return show(site, form, Map.of(), model);
	}

	private String use(Site site, @Nullable Double offset, RedirectAttributes flash) {
		this.register.change(site.id(), (now) -> measuring(now, offset));
		flash.addFlashAttribute("remarks",
				List.of((offset != null) ? "It is used from now on, and the tasks have moved."
						: "It is forgotten, and the tasks have moved back."));
		return "redirect:/sites/" + site.id() + "/thermometer";
	}

	/** A site whose nights are shifted by so much, or by nothing. */
	static SiteSetting measuring(SiteSetting now, @Nullable Double offset) {
		Place place = new Place(now.place().point(), now.place().microclimate().measuring(offset));
		return new SiteSetting(place, now.region(), now.features(), now.litresPerMinute());
	}

	private static String show(Site site, Form form, Map<String, String> errors, Model model) {
		Double measured = site.microclimate().measuredOffsetCelsius();
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("most", MinimumReading.MOST);
		model.addAttribute("units", List.of(new Choice("C", "°C"), new Choice("F", "°F")));
		model.addAttribute("inUse", (measured != null) ? ThermometerWords.offset(measured) : null);
		model.addAttribute("effects",
				(measured != null) ? List.of() : ThermometerWords.effects(site.microclimate().effects()));
		return "care/thermometer";
	}

}
