package org.leafward.lookalikes.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CaseState;
import org.leafward.lookalikes.LookalikeKeys;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.FoundCount;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.pages.Viewer;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The help desk: what waits, what was found, and where. */
@Controller
class HelpDeskPages {

	private static final int PAGE = 20;

	private static final int MONTHS = 12;

	private static final int MAP_WIDTH = 344;

	private final CaseDesk desk;

	private final CaseAccess access;

	private final CasePage page;

	private final LookalikeKeys keys;

	private final Regions regions;

	private final Clock clock;

	HelpDeskPages(CaseDesk desk, CaseAccess access, CasePage page, LookalikeKeys keys, Regions regions, Clock clock) {
		this.desk = desk;
		this.access = access;
		this.page = page;
		this.keys = keys;
		this.regions = regions;
		this.clock = clock;
	}

	/**
	 * A case in the inbox.
	 *
	 * @param plant what it is about
	 * @param more who asked, where, since when, who looks after it
	 * @param thought what it may be by now
	 * @param href its page
	 */
	record Waiting(String plant, String more, String thought, String href) {
	}

	/**
	 * How often a cause was found.
	 *
	 * @param cause its name
	 * @param all in all of the counties
	 * @param where by county, in words
	 */
	record Found(String cause, int all, String where) {
	}

	@GetMapping("/help-desk")
	String desk(@RequestParam(defaultValue = "false") boolean closed, @RequestParam(defaultValue = "0") int page,
			Model model) {
		Viewer viewer = this.access.viewer();
		Collection<String> counties = viewer.operator()
				? this.regions.counties().stream().map(County::name).collect(Collectors.toSet()) : viewer.counties();
		PersonId handed = this.access.coordinates() ? this.access.me() : null;
		List<PlantCase> cases = this.desk.inbox(counties, handed, closed, Given.page(page), PAGE + 1);
		Key key = this.keys.current();
		model.addAttribute("section", "help-desk");
		model.addAttribute("lead", lead(counties, handed != null, closed, cases.size(), page));
		model.addAttribute("cases", cases.stream().limit(PAGE).map((one) -> waiting(one, key)).toList());
		model.addAttribute("closed", closed);
		model.addAttribute("page", page);
		model.addAttribute("hasNext", cases.size() > PAGE);
		LocalDate since = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusMonths(MONTHS);
		counts(this.desk.counts(counties, since), key, counties, model);
		return "lookalikes/desk";
	}

	private static String lead(Collection<String> counties, boolean coordinates, boolean closed, int found, int page) {
		if (counties.isEmpty() && !coordinates) {
			return "You serve no county, so nobody asks you here. An operator can grant you one.";
		}
		if (page > 0 || found > PAGE) {
			return closed ? "Closed cases, the latest first." : "Many cases wait; those that wait longest come first.";
		}
		String many = switch (found) {
			case 0 -> closed ? "No case was closed yet" : "No case waits for you";
			case 1 -> closed ? "One case was closed" : "One case waits";
			default -> found + (closed ? " cases were closed" : " cases wait");
		};
		return many + ((found > 1 && !closed) ? "; the one that waits longest comes first." : ".");
	}

	private Waiting waiting(PlantCase one, Key key) {
		PersonId assigned = one.assigned();
		String more = "%s in %s, first seen %s".formatted(this.page.firstName(one.person()), one.county(),
				DayWords.of(one.seen()))
				+ ((assigned != null) ? "; " + this.page.firstName(assigned) + " looks after it"
						: "; nobody looks after it yet")
				+ ((one.state() == CaseState.WAITING) ? "; a sample is at a laboratory" : "");
		String cause = (one.cause() != null) ? one.cause() : one.leading();
		String name = (cause != null) ? key.cause(cause).map(Cause::title).orElse(cause) : null;
		String thought = one.closed()
				? ((one.cause() != null) ? "Taken for: " + name : "Something else: " + one.result())
				: (name != null) ? "By the answers so far: " + name : "Nothing answered yet";
		return new Waiting(one.plant(), more, thought, "/cases/" + one.id());
	}

	private void counts(List<FoundCount> counts, Key key, Collection<String> counties, Model model) {
		Map<String, Map<String, Integer>> byCause = new LinkedHashMap<>();
		Map<String, Integer> byCounty = new HashMap<>();
		for (FoundCount one : counts) {
			byCause.computeIfAbsent(one.cause(), (cause) -> new LinkedHashMap<>())
				.merge(one.county(), one.cases(), Integer::sum);
			byCounty.merge(one.county().toLowerCase(Locale.ROOT), one.cases(), Integer::sum);
		}
		model.addAttribute("found",
				byCause.entrySet()
					.stream()
					.map((entry) -> new Found(key.cause(entry.getKey()).map(Cause::name).orElse(entry.getKey()),
							entry.getValue().values().stream().mapToInt(Integer::intValue).sum(),
							String.join(", ",
									entry.getValue()
										.entrySet()
										.stream()
										.map((one) -> one.getKey() + " " + one.getValue())
										.toList())))
					.sorted(Comparator.comparing(Found::all).reversed().thenComparing(Found::cause))
					.toList());
		Map<String, String> figures = new HashMap<>();
		for (County county : this.regions.counties()) {
			if (counties.stream().anyMatch(county.name()::equalsIgnoreCase)) {
				int cases = byCounty.getOrDefault(county.name().toLowerCase(Locale.ROOT), 0);
				figures.put(county.code(), (cases == 1) ? "1 case" : cases + " cases");
			}
		}
		model.addAttribute("map", figures.isEmpty() ? null
				: this.regions.map(MAP_WIDTH).map((map) -> map.telling(figures).svg()).orElse(null));
		model.addAttribute("counties", new TreeSet<>(counties));
		model.addAttribute("months", MONTHS);
	}

}
