package org.leafward.lookalikes.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.NewCase;
import org.leafward.lookalikes.PlantCase;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.plants.NameLookup;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The list of somebody's cases, and the two steps to a new one: which plant, since when.
 */
@Controller
class NewCasePages {

	private static final int PAGE = 20;

	private static final int LONGEST = 100;

	private final Cases cases;

	private final CaseAccess access;

	private final OpenSites sites;

	private final Register register;

	private final Catalogue catalogue;

	private final Regions regions;

	private final People people;

	private final Clock clock;

	NewCasePages(Cases cases, CaseAccess access, OpenSites sites, Register register, Catalogue catalogue,
			Regions regions, People people, Clock clock) {
		this.cases = cases;
		this.access = access;
		this.sites = sites;
		this.register = register;
		this.catalogue = catalogue;
		this.regions = regions;
		this.people = people;
		this.clock = clock;
	}

	/**
	 * A planting to choose, or a case.
	 *
	 * @param name what readers call it
	 * @param more a line below it
	 * @param where a name of people below it; empty for none
	 * @param href where it leads
	 */
	record Listed(String name, String more, String where, String href) {
	}

	@GetMapping("/cases")
	String list(@RequestParam(defaultValue = "0") int page, Model model) {
		PersonId me = this.access.me();
		List<PlantCase> own = (me != null) ? this.cases.ofPerson(me, Given.page(page), PAGE + 1) : List.of();
		model.addAttribute("section", "cases");
		model.addAttribute("cases", own.stream().limit(PAGE).map(NewCasePages::listed).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", own.size() > PAGE);
		model.addAttribute("desk", !this.access.viewer().counties().isEmpty() || this.access.viewer().operator()
				|| this.access.coordinates());
		return "lookalikes/cases";
	}

	static Listed listed(PlantCase one) {
		LocalDate closed = one.closedOn();
		String more = "first seen %s, %s".formatted(DayWords.of(one.seen()),
				(closed != null) ? "closed " + DayWords.of(closed) : one.state().words());
		return new Listed(one.plant(), more, "", "/cases/" + one.id());
	}

	@GetMapping("/cases/new")
	String begin(@RequestParam(required = false) @Nullable UUID planting, @RequestParam(defaultValue = "") String q,
			@RequestParam(defaultValue = "0") int page, Model model) {
		if (planting != null) {
			return since(this.sites.planting(planting), null, Map.of(), model);
		}
		return which(q, Given.page(page), new Stranger("", "", ""), Map.of(), model);
	}

	/** A plant that is in no register, as it was typed. */
	record Stranger(String plant, String county, String seen) {
	}

	private String which(String q, int page, Stranger typed, Map<String, String> errors, Model model) {
		String words = Given.line("q", q.strip());
		if (words.length() > LONGEST) {
			throw new BadInput("the search has %d characters".formatted(words.length()), "q", "shorten it");
		}
		List<Planting> found = this.sites.plantings(words, page, PAGE + 1);
		Map<SiteId, Site> places = this.register.find(found.stream().map(Planting::site).distinct().toList())
			.stream()
			.collect(Collectors.toMap(Site::id, Function.identity()));
		List<Choice> counties = new ArrayList<>();
		counties.add(new Choice("", "I’d rather not say"));
		this.regions.counties().forEach((one) -> counties.add(new Choice(one.code(), one.name())));
		model.addAttribute("section", "cases");
		model.addAttribute("plantings", found.stream().limit(PAGE).map((one) -> {
			Site site = places.get(one.site());
			return new Listed(one.label(), species(one), (site != null) ? site.name() : "",
					"/cases/new?planting=" + one.id());
		}).toList());
		model.addAttribute("q", words);
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() > PAGE);
		model.addAttribute("counties", counties);
		model.addAttribute("typed",
				typed.seen().isEmpty() ? new Stranger(typed.plant(), typed.county(), today(zone()).toString()) : typed);
		model.addAttribute("errors", errors);
		return "lookalikes/new";
	}

	private String species(Planting one) {
		return this.catalogue.find(one.species()).map(Species::commonName).orElse(one.species().value());
	}

	private String since(Planting planting, @Nullable String seen, Map<String, String> errors, Model model) {
		Site site = this.register.require(planting.site());
		model.addAttribute("section", "cases");
		model.addAttribute("planting", planting);
		model.addAttribute("species", species(planting));
		model.addAttribute("site", site);
		model.addAttribute("seen", (seen != null) ? seen : today(site.zone()).toString());
		model.addAttribute("errors", errors);
		model.addAttribute("earlier",
				this.cases.ofPlanting(planting.id(), 5)
					.stream()
					.filter((one) -> this.access.viewer().mayOpen(one.person().value()))
					.map(NewCasePages::listed)
					.toList());
		return "lookalikes/since";
	}

	@PostMapping("/cases")
	String open(@RequestParam(required = false) @Nullable UUID planting, @RequestParam(defaultValue = "") String plant,
			@RequestParam(defaultValue = "") String county, @RequestParam(defaultValue = "") String seen, Model model,
			HttpServletResponse response) {
		try {
			PlantCase one = (planting != null) ? ofPlanting(this.sites.planting(planting), Given.date("seen", seen))
					: ofStranger(plant, county, seen);
			return "redirect:/cases/" + one.id() + "/ask";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return (planting != null) ? since(this.sites.planting(planting), seen, ex.byField(), model)
					: which("", 0, new Stranger(plant, county, seen), ex.byField(), model);
		}
	}

	PlantCase ofPlanting(Planting planting, LocalDate seen) {
		Site site = this.register.require(planting.site());
		return this.cases.open(site.owner(), new NewCase(site.id(), planting.id(), planting.species(),
				"%s (%s)".formatted(planting.label(), species(planting)), site.county(), site.zone(), seen, null));
	}

	PlantCase ofStranger(String plant, String county, String seen) {
		PersonId me = this.access.me();
		if (me == null) {
			throw new BadInput("nobody is signed in whose case it would be", "plant",
					"sign in as a person, or begin with a planting");
		}
		Findings findings = new Findings();
		var name = findings.read(() -> plant(plant));
		var day = findings.read(() -> Given.date("seen", seen));
		var place = findings.read(() -> county(county));
		return findings.give(() -> {
			Optional<County> found = place.get();
			NameLookup lookup = NameLookup.of(this.catalogue, name.get());
			SpeciesId species = lookup.sure() ? lookup.fitting().get(0).id() : null;
			return this.cases.open(me, new NewCase(null, null, species, name.get(), found.map(County::name).orElse(""),
					found.map(County::zone).orElse(zone()), day.get(), null));
		});
	}

	private static String plant(String plant) {
		String name = Given.line("plant", Given.text("plant", plant));
		if (name.length() > LONGEST) {
			throw new BadInput("the plant’s name has %d characters".formatted(name.length()), "plant",
					"use at most %d".formatted(LONGEST));
		}
		return name;
	}

	/** By its code in the form; by its name from programs. */
	private Optional<County> county(String given) {
		String wanted = given.strip();
		if (wanted.isEmpty()) {
			return Optional.empty();
		}
		return Optional.of(this.regions.find(wanted.toLowerCase(Locale.ROOT))
			.or(() -> this.regions.counties().stream().filter((one) -> one.name().equalsIgnoreCase(wanted)).findFirst())
			.orElseThrow(() -> new BadInput("there is no county “%s” here".formatted(wanted), "county",
					"choose one from the list, or none")));
	}

	private ZoneId zone() {
		PersonId me = this.access.me();
		return Optional.ofNullable(me).flatMap(this.people::find).map(Person::zone).orElse(ZoneId.of("UTC"));
	}

	private LocalDate today(ZoneId zone) {
		return LocalDate.ofInstant(this.clock.instant(), zone);
	}

}
