package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.Observation;
import org.leafward.care.ObservationId;
import org.leafward.care.PhenologyLog;
import org.leafward.care.RulePacks;
import org.leafward.care.core.phase.LoggedEvent;
import org.leafward.care.core.phase.Phase;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Phases and events that were seen at a site. */
@Controller
class ObservationPages {

	private static final int PAGE = 20;

	private static final String PHASE = "phase:";

	private static final String EVENT = "event:";

	private final PhenologyLog log;

	private final RulePacks packs;

	private final LogWords words;

	private final Mine mine;

	ObservationPages(PhenologyLog log, RulePacks packs, LogWords words, Mine mine) {
		this.log = log;
		this.packs = packs;
		this.words = words;
		this.mine = mine;
	}

	/**
	 * The form.
	 *
	 * @param planting on which planting; the whole site when empty
	 * @param what {@code phase:} or {@code event:} and the name
	 * @param day on which
	 */
	record Form(@Nullable String planting, @Nullable String what, @Nullable String day) {

		ObservationRequest request() {
			String given = (this.what != null) ? this.what : "";
			int colon = given.indexOf(':');
			return new ObservationRequest(this.planting, given.substring(0, Math.max(0, colon)),
					given.substring(colon + 1), this.day);
		}

	}

	/**
	 * An observation in words.
	 *
	 * @param id identifier
	 * @param what the phase or event
	 * @param day on which
	 * @param where the whole site or a planting
	 * @param by who entered it
	 */
	record Row(UUID id, String what, String day, String where, String by) {
	}

	@GetMapping("/sites/{id}/observations")
	String show(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page, Model model) {
		Site site = this.mine.site(id);
		return show(site, page, new Form("", null, this.words.today(site).toString()), Map.of(), model);
	}

	private String show(Site site, int page, Form form, Map<String, String> errors, Model model) {
		List<Observation> seen = this.log.latest(site.id(), Given.page(page), PAGE);
		Map<PlantingId, String> labels = this.words.labels(site);
		Formats formats = new Formats(this.words.today(site).getYear());
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("rows",
				seen.stream()
					.map((one) -> new Row(one.id().value(), name(one), formats.day(one.day()),
							LogWords.where(one.planting(), labels), this.words.nameOf(one.by())))
					.toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext",
				seen.size() == PAGE && !this.log.latest(site.id(), (page + 1) * PAGE, 1).isEmpty());
		model.addAttribute("here", "/sites/" + site.id() + "/observations");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("places", this.words.places(site, "the whole site"));
		model.addAttribute("whats", choices());
		model.addAttribute("phases", this.packs.phenology().phases());
		return "care/observations";
	}

	private List<Choice> choices() {
		List<Choice> choices = new ArrayList<>();
		for (Phase phase : this.packs.phenology().phases()) {
			choices.add(new Choice(PHASE + phase.name(), phase.words()));
		}
		for (LoggedEvent event : this.packs.phenology().events()) {
			choices.add(new Choice(EVENT + event.name(), event.words()));
		}
		return choices;
	}

	private String name(Observation one) {
		return ((one.kind() == Observation.Kind.PHASE) ? this.packs.phenology().phase(one.name()).map(Phase::words)
				: this.packs.phenology().event(one.name()).map(LoggedEvent::words))
			.orElse(one.name().replace('-', ' '));
	}

	@PostMapping("/sites/{id}/observations")
	String add(@PathVariable UUID id, @ModelAttribute("form") Form form, Model model, HttpServletResponse response) {
		Site site = this.mine.site(id);
		try {
			this.log.observe(site.id(), form.request().toObservation(this.words.today(site)), this.mine.by(site));
			return "redirect:/sites/" + site.id() + "/observations";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			Map<String, String> errors = new LinkedHashMap<>();
			ex.byField()
				.forEach((field, words) -> errors
					.putIfAbsent((field.equals("kind") || field.equals("name")) ? "what" : field, words));
			return show(site, 0, form, errors, model);
		}
	}

	@PostMapping("/sites/{id}/observations/{observation}/undo")
	String undo(@PathVariable UUID id, @PathVariable UUID observation) {
		Site site = this.mine.site(id);
		this.log.remove(site.id(), new ObservationId(observation), this.mine.by(site));
		return "redirect:/sites/" + site.id() + "/observations";
	}

}
