package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.plants.NameLookup;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.NewPlanting;
import org.leafward.register.OpenSites;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.core.list.DayOrder;
import org.leafward.register.core.list.ListFile;
import org.leafward.register.core.list.PlantList;
import org.leafward.register.core.list.PlantedDay;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * Many plantings at once: a list, then what was understood of it, then all of it is
 * added. The list travels in the form from step to step and is kept nowhere.
 */
@Controller
class SeveralPages {

	/** Of the lines that need somebody, at the head of the page; the others are below. */
	private static final int LISTED = 20;

	private final Register register;

	private final Beds beds;

	private final OpenSites sites;

	private final Catalogue catalogue;

	private final Clock clock;

	SeveralPages(Register register, Beds beds, OpenSites sites, Catalogue catalogue, Clock clock) {
		this.register = register;
		this.beds = beds;
		this.sites = sites;
		this.catalogue = catalogue;
		this.clock = clock;
	}

	@GetMapping("/sites/{id}/plantings/several")
	String form(@PathVariable UUID id, Model model) {
		return form(this.sites.own(id), "", "", Map.of(), model);
	}

	@PostMapping("/sites/{id}/plantings/several")
	String step(@PathVariable UUID id, @RequestParam(required = false) @Nullable MultipartFile file,
			@RequestParam Map<String, String> given, Model model, HttpServletResponse response,
			RedirectAttributes flash) throws IOException {
		Site site = this.sites.own(id);
		String text = given.getOrDefault("text", "");
		String usual = given.getOrDefault("usual", "");
		try {
			return switch (given.getOrDefault("go", "read")) {
				case "add" -> add(site, text, given, model, response, flash);
				case "look" -> preview(site, text, given, given, Map.of(), model, response);
				case "list" -> form(site, text, usual, Map.of(), model);
				default -> preview(site, list(text, file), Map.of("usual", usual), Map.of(), Map.of(), model, response);
			};
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, text, usual, ex.byField(), model);
		}
	}

	private static String list(String text, @Nullable MultipartFile file) throws IOException {
		if (file == null || file.isEmpty()) {
			return text;
		}
		if (!text.isBlank()) {
			throw new BadInput("there are a list and a file", "text", "send one of them, then come back for the other");
		}
		return ListFile.text(file.getBytes());
	}

	private String form(Site site, String text, String usual, Map<String, String> errors, Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("text", text);
		model.addAttribute("usual", usual);
		model.addAttribute("most", PlantList.MOST_LINES);
		model.addAttribute("errors", errors);
		return "register/several";
	}

	private PlantList read(String text) {
		Map<String, Boolean> names = new HashMap<>();
		return PlantList.read(text,
				(name) -> names.computeIfAbsent(name, (one) -> NameLookup.isName(this.catalogue, one)));
	}

	private ListPreview lay(Site site, PlantList list, Map<String, String> settings, Map<String, String> given) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		DayOrder order = order(settings);
		return new ListPreview(list, given, this.catalogue,
				this.beds.ofSite(site.id()).stream().map(Bed::name).toList(), today, order,
				usual(settings, order, today));
	}

	private static DayOrder order(Map<String, String> settings) {
		return switch (settings.getOrDefault("order", "")) {
			case "month-first" -> DayOrder.MONTH_FIRST;
			case "day-first" -> DayOrder.DAY_FIRST;
			default -> DayOrder.UNKNOWN;
		};
	}

	private static @Nullable PlantedDay usual(Map<String, String> settings, DayOrder order, LocalDate today) {
		String text = settings.getOrDefault("usual", "").strip();
		if (text.isEmpty()) {
			return null;
		}
		return PlantedDay.read(text, order, today)
			.filter((day) -> day.taken() != PlantedDay.Taken.EITHER)
			.orElseThrow(() -> new BadInput("“%s” can’t be read as a date".formatted(text), "usual",
					"write it like 2019-05-01, May 2019, or 2019"));
	}

	private String preview(Site site, String text, Map<String, String> settings, Map<String, String> given,
			Map<String, String> errors, Model model, HttpServletResponse response) {
		PlantList list = read(text);
		ListPreview preview;
		Map<String, String> wrong = new LinkedHashMap<>(errors);
		try {
			preview = lay(site, list, settings, given);
		}
		catch (BadInput ex) {
			Map<String, String> without = new HashMap<>(settings);
			without.remove("usual");
			preview = lay(site, list, without, given);
			ex.byField().forEach(wrong::putIfAbsent);
		}
		if (!wrong.isEmpty()) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		return show(site, text, list, preview, settings, given, wrong, model);
	}

	private String show(Site site, String text, PlantList list, ListPreview preview, Map<String, String> settings,
			Map<String, String> given, Map<String, String> errors, Model model) {
		Map<String, String> open = preview.open();
		Map<String, String> first = new LinkedHashMap<>();
		open.entrySet().stream().limit(LISTED).forEach((one) -> first.put(one.getKey(), one.getValue()));
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("key", errors.containsKey("key") ? UUID.randomUUID() : key(given));
		model.addAttribute("text", text);
		model.addAttribute("usual", settings.getOrDefault("usual", ""));
		model.addAttribute("order", settings.getOrDefault("order", ""));
		model.addAttribute("orders",
				List.of(new Choice("", "Nobody said yet"),
						new Choice("month-first", "The month: 3/4/2021 is 4 March 2021"),
						new Choice("day-first", "The day: 3/4/2021 is 3 April 2021")));
		model.addAttribute("asked", preview.undecided() || order(settings) != DayOrder.UNKNOWN);
		model.addAttribute("header", list.header());
		model.addAttribute("unused", list.unused());
		model.addAttribute("rows", preview.rows());
		model.addAttribute("areas", preview.rows().stream().anyMatch((row) -> !row.area().isEmpty()));
		model.addAttribute("bedded", !this.beds.ofSite(site.id()).isEmpty()
				|| preview.rows().stream().anyMatch((row) -> !row.bed().isEmpty()));
		model.addAttribute("wanted", preview.rows().size() - preview.left());
		model.addAttribute("open", first);
		model.addAttribute("further", open.size() - first.size());
		Map<String, String> told = new LinkedHashMap<>();
		errors.forEach((field, words) -> told.putIfAbsent(field.equals("usual") ? field : "lines", words));
		model.addAttribute("errors", told);
		model.addAttribute("placements", List.of(new Choice("ground", Placement.GROUND.words()),
				new Choice("container", Placement.CONTAINER.words())));
		return "register/several-check";
	}

	private static UUID key(Map<String, String> given) {
		try {
			return UUID.fromString(given.getOrDefault("key", ""));
		}
		catch (IllegalArgumentException ex) {
			return UUID.randomUUID();
		}
	}

	private String add(Site site, String text, Map<String, String> given, Model model, HttpServletResponse response,
			RedirectAttributes flash) {
		PlantList list = read(text);
		Map<String, String> errors;
		try {
			ListPreview preview = lay(site, list, given, given);
			if (preview.open().isEmpty() && !preview.ready().isEmpty()) {
				boolean now = this.register
					.together(() -> this.register.addList(site.id(), key(given), inBeds(site, preview.ready())));
				flash.addFlashAttribute("remarks", List.of(added(preview, now)));
				return "redirect:/sites/" + site.id();
			}
			errors = Map.of("lines",
					preview.open().isEmpty()
							? "Every line is left out: take the tick away where something is to be added."
							: "Some lines can’t be added yet: mend them, or leave them out.");
		}
		catch (BadInput ex) {
			errors = ex.byField();
		}
		return preview(site, text, given, given, errors, model, response);
	}

	/** Beds that aren't there yet come with the list, or not at all. */
	private List<NewPlanting> inBeds(Site site, List<ListPreview.Ready> ready) {
		Map<String, BedId> known = new HashMap<>();
		List<NewPlanting> all = new ArrayList<>();
		for (ListPreview.Ready one : ready) {
			all.add(one.bed().isEmpty() ? one.planting() : one.planting()
				.in(known.computeIfAbsent(Beds.key(one.bed()), (key) -> this.beds.named(site.id(), one.bed()).id())));
		}
		return all;
	}

	private static String added(ListPreview preview, boolean now) {
		int count = preview.ready().size();
		String words = (count == 1) ? "One planting was added." : "%d plantings were added.".formatted(count);
		String left = (preview.left() == 0) ? "" : (preview.left() == 1) ? " One line was left out."
				: " %d lines were left out.".formatted(preview.left());
		return words + left + (now ? "" : " The list came twice and was added once.");
	}

}
