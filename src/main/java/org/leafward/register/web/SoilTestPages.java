package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.NewSoilTest;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTests;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Keeps the soil tests of a site, shows them and takes them back. */
@Controller
class SoilTestPages {

	private static final int PAGE = 10;

	private final Register register;

	private final SoilTests tests;

	private final People people;

	private final OpenSites sites;

	private final Clock clock;

	SoilTestPages(Register register, SoilTests tests, People people, OpenSites sites, Clock clock) {
		this.register = register;
		this.tests = tests;
		this.people = people;
		this.sites = sites;
		this.clock = clock;
	}

	/**
	 * A soil test in words.
	 *
	 * @param id identifier
	 * @param day of the sample
	 * @param where the whole site or a planting
	 * @param figures what was measured
	 * @param more drainage, note, and who entered it
	 */
	record Row(UUID id, String day, String where, String figures, String more) {
	}

	@GetMapping("/sites/{id}/soil-tests")
	String list(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page, Model model) {
		Site site = this.sites.own(id);
		return show(site, SoilTestForm.on(today(site)), Map.of(), Given.page(page), model);
	}

	@PostMapping("/sites/{id}/soil-tests")
	String keep(@PathVariable UUID id, @ModelAttribute("form") SoilTestForm form, Model model,
			HttpServletResponse response) {
		Site site = this.sites.own(id);
		try {
			NewSoilTest test = form.toTest();
			this.tests.keep(site.id(), test, this.sites.actor(site));
			return "redirect:/sites/" + site.id() + "/soil-tests#kept";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(site, form, ex.byField(), 0, model);
		}
	}

	@PostMapping("/sites/{id}/soil-tests/{test}/undo")
	String undo(@PathVariable UUID id, @PathVariable UUID test) {
		Site site = this.sites.own(id);
		this.tests.remove(site.id(), new SoilTestId(test));
		return "redirect:/sites/" + site.id() + "/soil-tests#kept";
	}

	private LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

	private String show(Site site, SoilTestForm form, Map<String, String> errors, int page, Model model) {
		Map<PlantingId, String> labels = this.register.plantingsOf(site.id())
			.stream()
			.collect(Collectors.toMap(Planting::id, Planting::label));
		List<KeptSoilTest> rows = this.tests.latest(site.id(), page, PAGE);
		Formats formats = new Formats(today(site).getYear());
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("beds", WateringPart.beds(this.register, site));
		model.addAttribute("extracts",
				Arrays.stream(SoilExtract.values())
					.map((one) -> new Choice(SiteAnswer.word(one), one.words()))
					.toList());
		model.addAttribute("drainages",
				Arrays.stream(SoilDrainage.values())
					.map((one) -> new Choice(SiteAnswer.word(one), one.words()))
					.toList());
		model.addAttribute("tests", rows.stream().map((one) -> row(one, labels, formats)).toList());
		model.addAttribute("here", "/sites/" + site.id() + "/soil-tests");
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				rows.size() == PAGE && !this.tests.latest(site.id(), (page + 1) * PAGE, 1).isEmpty());
		return "register/soil-tests";
	}

	private Row row(KeptSoilTest one, Map<PlantingId, String> labels, Formats formats) {
		String where = (one.planting() == null) ? "the whole site" : labels.getOrDefault(one.planting(), "a planting");
		String by = (one.by() == null) ? "an operator"
				: this.people.find(one.by()).map(Person::name).orElse("somebody");
		return new Row(one.id().value(), formats.day(one.day()), where, figures(one.figures(), formats),
				"%s cm deep; %s; %sentered by %s".formatted(formats.number(one.depthCentimetres(), 0),
						one.drainage().words(), one.note().isEmpty() ? "" : one.note() + "; ", by));
	}

	/** For example "pH 8.9, 2.1 dS/m in a saturated paste, SAR 24, CEC 18 meq/100 g". */
	private static String figures(SoilFigures figures, Formats formats) {
		Double ratio = figures.sodiumRatio();
		Double percent = figures.sodiumPercent();
		Double exchange = figures.exchange();
		return "pH %s, %s dS/m in %s%s%s%s".formatted(formats.number(figures.acidity(), 1),
				formats.number(figures.conductivity(), 1), figures.extract().words(),
				(ratio != null) ? ", SAR " + formats.number(ratio, 1) : "",
				(percent != null) ? ", ESP " + formats.number(percent, 1) + " %" : "",
				(exchange != null) ? ", CEC " + formats.number(exchange, 1) + " meq/100 g" : "");
	}

}
