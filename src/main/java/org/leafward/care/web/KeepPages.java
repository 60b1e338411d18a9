package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.KeptCalculations;
import org.leafward.care.core.keep.Keeping;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * Keeps an answer of a calculator: choose a planting, see what of it becomes figures of
 * that planting, confirm.
 */
@Controller
class KeepPages {

	private static final int PAGE = 20;

	private static final int LONGEST_SEARCH = 100;

	private final Calculations calculations;

	private final KeptCalculations kept;

	private final OpenSites sites;

	private final Register register;

	private final Catalogue catalogue;

	private final Clock clock;

	KeepPages(Calculations calculations, KeptCalculations kept, OpenSites sites, Register register, Catalogue catalogue,
			Clock clock) {
		this.calculations = calculations;
		this.kept = kept;
		this.sites = sites;
		this.register = register;
		this.catalogue = catalogue;
		this.clock = clock;
	}

	/**
	 * A planting to choose.
	 *
	 * @param label what its people call it
	 * @param species common name of its species
	 * @param site name of its site
	 * @param href where it is confirmed
	 */
	record Listed(String label, String species, String site, String href) {
	}

	/** What somebody searches for: one line, of bounded length. */
	static String searched(String q) {
		String words = Given.line("q", q.strip());
		if (words.length() > LONGEST_SEARCH) {
			throw new BadInput(
					"the search has %d characters; at most %d are used".formatted(words.length(), LONGEST_SEARCH), "q",
					"shorten it");
		}
		return words;
	}

	@GetMapping("/keep/{calculator}")
	String choose(@PathVariable String calculator, @RequestParam Map<String, String> given,
			@RequestParam(defaultValue = "") String q, @RequestParam(defaultValue = "0") int page, Model model) {
		Calculation calculation = this.calculations.of(calculator, given);
		String words = searched(q);
		List<Planting> found = this.sites.plantings(words, Given.page(page), PAGE);
		Map<SiteId, Site> places = this.register.find(found.stream().map(Planting::site).distinct().toList())
			.stream()
			.collect(Collectors.toMap(Site::id, Function.identity()));
		answer(calculation, model);
		model.addAttribute("plantings",
				found.stream().map((one) -> listed(one, places.get(one.site()), calculation)).toList());
		model.addAttribute("q", words);
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				found.size() == PAGE && !this.sites.plantings(words, (page + 1) * PAGE, 1).isEmpty());
		model.addAttribute("here",
				"/keep/" + calculator + "?" + and(calculation.query()) + Calculation.query(Map.of("q", words)));
		return "care/keep-choose";
	}

	private static String and(String query) {
		return query.isEmpty() ? "" : query + "&";
	}

	private Listed listed(Planting planting, @Nullable Site site, Calculation calculation) {
		return new Listed(planting.label(),
				this.catalogue.find(planting.species()).map(Species::commonName).orElse(planting.species().value()),
				(site != null) ? site.name() : "",
				"/plantings/%s/keep/%s?%s".formatted(planting.id(), calculation.calculator(), calculation.query()));
	}

	private void answer(Calculation calculation, Model model) {
		model.addAttribute("section", "calculators");
		model.addAttribute("title", this.calculations.titles().get(calculation.calculator()));
		model.addAttribute("calculator", calculation.calculator());
		model.addAttribute("words", calculation.words());
		model.addAttribute("inputs", calculation.inputs());
		model.addAttribute("back", "/calculators/" + calculation.calculator() + "?" + calculation.query());
	}

	@GetMapping("/plantings/{id}/keep/{calculator}")
	String look(@PathVariable UUID id, @PathVariable String calculator, @RequestParam Map<String, String> given,
			Model model, HttpServletResponse response) {
		Planting planting = this.sites.planting(id);
		Calculation calculation = this.calculations.of(calculator, given);
		return show(planting, calculation, given.get("day"), Map.of(), model, response);
	}

	@PostMapping("/plantings/{id}/keep/{calculator}")
	String keep(@PathVariable UUID id, @PathVariable String calculator, @RequestParam Map<String, String> given,
			Model model, RedirectAttributes flash, HttpServletResponse response) {
		Planting planting = this.sites.planting(id);
		Calculation calculation = this.calculations.of(calculator, given);
		try {
			LocalDate sampled = (calculation.figures().soil() != null) ? Given.date("day", given.get("day")) : null;
			Site site = this.register.require(planting.site());
			this.kept.keep(calculation, planting.id(), sampled, this.sites.actor(site));
			flash.addFlashAttribute("remarks", List.of("It is kept, and the tasks below go by it."));
			return "redirect:/plantings/" + planting.id() + "/amounts";
		}
		catch (BadInput ex) {
			return show(planting, calculation, given.get("day"), ex.byField(), model, response);
		}
	}

	private String show(Planting planting, Calculation calculation, @Nullable String day, Map<String, String> refused,
			Model model, HttpServletResponse response) {
		Site site = this.register.require(planting.site());
		// Only the day can be mended here; figures are mended in the calculator.
		Map<String, String> errors = new LinkedHashMap<>();
		Map<String, String> unfit = new LinkedHashMap<>();
		refused.forEach((field, words) -> (field.equals("day") ? errors : unfit).put(field, words));
		Optional<Keeping> keeping = Optional.empty();
		try {
			keeping = Optional.of(this.kept.look(calculation, planting.id(), null));
		}
		catch (BadInput ex) {
			ex.byField().forEach(unfit::putIfAbsent);
		}
		if (!errors.isEmpty() || !unfit.isEmpty()) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		answer(calculation, model);
		model.addAttribute("planting", planting);
		model.addAttribute("site", site);
		model.addAttribute("changes", keeping.map(Keeping::changes).orElse(List.of()));
		model.addAttribute("notes", keeping.map(Keeping::remarks).orElse(List.of()));
		model.addAttribute("fits", keeping.isPresent());
		model.addAttribute("tested", calculation.figures().soil() != null);
		model.addAttribute("day",
				(day != null) ? day : LocalDate.ofInstant(this.clock.instant(), site.zone()).toString());
		model.addAttribute("errors", errors);
		model.addAttribute("unfit", unfit.values());
		model.addAttribute("choose", "/keep/" + calculation.calculator() + "?" + calculation.query());
		return "care/keep";
	}

}
