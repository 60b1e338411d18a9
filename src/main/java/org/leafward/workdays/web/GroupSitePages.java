package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.WalkStop;
import org.leafward.workdays.core.list.Sketch;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Sites of a group: given and taken back by their owners, walked by everybody. */
@Controller
class GroupSitePages {

	private final Ours ours;

	private final OpenSites sites;

	private final GroupDesk desk;

	private final Checklists lists;

	GroupSitePages(Ours ours, OpenSites sites, GroupDesk desk, Checklists lists) {
		this.ours = ours;
		this.sites = sites;
		this.desk = desk;
		this.lists = lists;
	}

	@PostMapping("/groups/{id}/sites")
	String give(@PathVariable UUID id, @RequestParam(required = false) @Nullable String site,
			@RequestParam(required = false, defaultValue = "") String address) {
		Group group = this.ours.group(id);
		Site own = this.sites.own(Fields.id("site", site));
		this.desk.give(group.id(), own, address);
		return "redirect:/groups/%s#sites".formatted(group.id());
	}

	@PostMapping("/groups/{id}/sites/{site}/back")
	String takeBack(@PathVariable UUID id, @PathVariable UUID site) {
		Group group = this.ours.group(id);
		GroupSite given = site(group, site);
		PersonId me = this.ours.me();
		if (!given.owner().equals(me) && !this.ours.leads(group)) {
			throw new NotThere("There is no site %s of yours in this group".formatted(site));
		}
		this.desk.takeBack(group.id(), given.site());
		return "redirect:/groups/%s#sites".formatted(group.id());
	}

	private static GroupSite site(Group group, UUID site) {
		return group.sites()
			.stream()
			.filter((one) -> one.site().value().equals(site))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no site %s in this group".formatted(site)));
	}

	/** A planting in the walk. */
	record Walked(UUID id, String label, String place, String square, @Nullable String wrong) {
	}

	@GetMapping("/groups/{id}/sites/{site}/walk")
	String walk(@PathVariable UUID id, @PathVariable UUID site, Model model) {
		Group group = this.ours.led(id);
		GroupSite given = site(group, site);
		List<Walked> rows = new ArrayList<>();
		this.lists.walk(given.site())
			.forEach((planting, stop) -> rows.add(new Walked(planting.id().value(), planting.label(),
					stop.map((one) -> String.valueOf(one.place())).orElse(""), square(stop), null)));
		return walk(group, given, rows, Map.of(), model);
	}

	private static String square(Optional<WalkStop> stop) {
		Integer square = stop.map(WalkStop::square).orElse(null);
		return (square != null) ? Sketch.name(square) : "";
	}

	private static String walk(Group group, GroupSite site, List<Walked> rows, Map<String, String> errors,
			Model model) {
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("site", site);
		model.addAttribute("rows", rows);
		model.addAttribute("errors", errors);
		return "workdays/walk";
	}

	@PostMapping("/groups/{id}/sites/{site}/walk")
	String draw(@PathVariable UUID id, @PathVariable UUID site, @RequestParam Map<String, String> form, Model model,
			HttpServletResponse response) {
		Group group = this.ours.led(id);
		GroupSite given = site(group, site);
		Map<PlantingId, WalkStop> stops = new HashMap<>();
		Findings all = new Findings();
		for (Planting planting : this.lists.walk(given.site()).keySet()) {
			String place = form.getOrDefault("place-" + planting.id(), "").strip();
			String square = form.getOrDefault("square-" + planting.id(), "").strip();
			if (!place.isEmpty() || !square.isEmpty()) {
				all.check(() -> stops.put(planting.id(),
						new WalkStop(place.isEmpty() ? 999 : place("place-" + planting.id(), place),
								square.isEmpty() ? null : square("square-" + planting.id(), square))));
			}
		}
		try {
			all.end();
			this.lists.draw(given.site(), stops);
			return "redirect:/groups/%s/sites/%s/walk".formatted(group.id(), given.site());
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			List<Walked> rows = this.lists.walk(given.site())
				.keySet()
				.stream()
				.map((one) -> new Walked(one.id().value(), one.label(), form.getOrDefault("place-" + one.id(), ""),
						form.getOrDefault("square-" + one.id(), ""),
						ex.byField().getOrDefault("place-" + one.id(), ex.byField().get("square-" + one.id()))))
				.toList();
			return walk(group, given, rows, ex.byField(), model);
		}
	}

	private static int place(String field, String text) {
		int place = Fields.called("stop", field, (words) -> Given.whole(words, text));
		if (place < 1 || place > 1000) {
			throw new BadInput("%d is outside 1 to 1000".formatted(place), field, "number the stops from 1");
		}
		return place;
	}

	private static int square(String field, String text) {
		String name = text.toUpperCase(Locale.ROOT);
		if (!name.matches("[A-H][1-6]")) {
			throw new BadInput("'%s' is no square".formatted(text.substring(0, Math.min(10, text.length()))), field,
					"write A1 (upper left) to H6 (lower right)");
		}
		return (name.charAt(1) - '1') * Sketch.COLUMNS + name.charAt(0) - 'A';
	}

}
