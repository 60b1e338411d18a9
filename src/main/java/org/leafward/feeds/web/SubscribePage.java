package org.leafward.feeds.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedAddresses;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedInfo;
import org.leafward.feeds.FeedOptions;
import org.leafward.language.Language;
import org.leafward.measure.BadInput;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.Site;
import org.leafward.workdays.Group;
import org.leafward.workdays.Groups;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * Where a person gets the address of their calendar, and sees and stops the ones given
 * out.
 */
@Controller
class SubscribePage {

	/** What stands for all sites of the person in the form. */
	private static final String ALL = "all";

	/** What a group's identifier is preceded by in the form. */
	private static final String OF_GROUP = "group:";

	/** What a bed's identifier is preceded by in the form. */
	private static final String OF_BED = "bed:";

	private static final String GONE = "A site that is gone";

	private final Feeds feeds;

	private final Register register;

	private final People people;

	private final Viewers viewers;

	private final FeedAddresses addresses;

	private final Groups groups;

	private final Beds beds;

	SubscribePage(Feeds feeds, Register register, People people, Viewers viewers, FeedAddresses addresses,
			Groups groups, Beds beds) {
		this.feeds = feeds;
		this.register = register;
		this.people = people;
		this.viewers = viewers;
		this.addresses = addresses;
		this.groups = groups;
		this.beds = beds;
	}

	/**
	 * A calendar that was given out.
	 *
	 * @param id identifier
	 * @param title whose tasks it holds
	 * @param more when it was made and last fetched
	 */
	record Given(UUID id, String title, String more) {
	}

	/**
	 * An address just made.
	 *
	 * @param title whose tasks it holds
	 * @param address to copy
	 * @param webcal to open
	 * @param todos address of the same as to-dos
	 */
	record Fresh(String title, String address, String webcal, String todos) {
	}

	@GetMapping("/subscribe")
	String page(Model model) {
		return page(null, ALL, OptionsForm.usual(), Map.of(), model);
	}

	@PostMapping("/subscribe")
	String make(@RequestParam(defaultValue = ALL) String what, @ModelAttribute("options") OptionsForm wanted,
			Model model, HttpServletResponse response) {
		PersonId person = person();
		FeedOptions options;
		try {
			options = wanted.options();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return page(null, what, wanted, ex.byField(), model);
		}
		if (what.equals(ALL)) {
			return shown("All my sites", this.feeds.createForPerson(person, person, options), wanted, model, response);
		}
		if (what.startsWith(OF_GROUP)) {
			Group group = this.groups.ofPerson(person)
				.stream()
				.filter((one) -> what.equals(OF_GROUP + one.id()))
				.findFirst()
				.orElseThrow(() -> new NotThere("There is no such group."));
			return shown(group.name(), this.feeds.createForGroup(group.id(), person, options), wanted, model, response);
		}
		if (what.startsWith(OF_BED)) {
			Bed bed = bedsOf(person).stream()
				.filter((one) -> what.equals(OF_BED + one.id()))
				.findFirst()
				.orElseThrow(() -> new NotThere("There is no such bed."));
			return shown(bed.name(), this.feeds.createForBed(bed.id(), person, options), wanted, model, response);
		}
		Site site = this.register.sitesOf(person)
			.stream()
			.filter((one) -> one.id().toString().equals(what))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no such site."));
		return shown(site.name(), this.feeds.createForSite(site.id(), person, options), wanted, model, response);
	}

	private String shown(String title, NewFeed made, OptionsForm form, Model model, HttpServletResponse response) {
		// The page shows a secret: neither caches nor the next page's server may learn
		// it.
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
		Fresh fresh = new Fresh(title, this.addresses.address(made), this.addresses.webcal(made),
				this.addresses.todos(made));
		return page(fresh, ALL, form, Map.of(), model);
	}

	@GetMapping("/subscribe/{feed}")
	String options(@PathVariable UUID feed, Model model) {
		return options(feed, null, Map.of(), model);
	}

	@PostMapping("/subscribe/{feed}")
	String change(@PathVariable UUID feed, @ModelAttribute("options") OptionsForm wanted, Model model,
			HttpServletResponse response) {
		PersonId person = person();
		try {
			this.feeds.change(new FeedId(feed), person, wanted.options());
			return "redirect:/subscribe";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return options(feed, wanted, ex.byField(), model);
		}
	}

	private String options(UUID feed, @Nullable OptionsForm form, Map<String, String> errors, Model model) {
		PersonId person = person();
		FeedInfo found = this.feeds.list(person)
			.stream()
			.filter((one) -> one.id().value().equals(feed) && one.revokedAt() == null)
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no such calendar."));
		model.addAttribute("section", "subscribe");
		model.addAttribute("feed", given(found, names(person), zone(person)));
		form((form != null) ? form : OptionsForm.of(found.options()), errors, model);
		return "feeds/options";
	}

	@PostMapping("/subscribe/{feed}/address")
	String rotate(@PathVariable UUID feed, Model model, HttpServletResponse response) {
		PersonId person = person();
		NewFeed made = this.feeds.rotate(new FeedId(feed), person);
		String title = this.feeds.find(made.id()).map((one) -> title(one, names(person))).orElse("Your calendar");
		return shown(title, made, OptionsForm.usual(), model, response);
	}

	private static void form(OptionsForm form, Map<String, String> errors, Model model) {
		model.addAttribute("options", form);
		model.addAttribute("errors", errors);
		model.addAttribute("languages", OptionsForm.languages());
		model.addAttribute("systems", OptionsForm.systems());
		model.addAttribute("offers", OptionsForm.offers());
	}

	@PostMapping("/subscribe/{feed}/stop")
	String stop(@PathVariable UUID feed) {
		this.feeds.revoke(new FeedId(feed), person());
		return "redirect:/subscribe";
	}

	private String page(@Nullable Fresh fresh, String what, OptionsForm form, Map<String, String> errors, Model model) {
		PersonId person = person();
		List<Site> sites = this.register.sitesOf(person);
		List<Group> groups = this.groups.ofPerson(person);
		Map<UUID, String> names = names(person);
		List<Choice> choices = new ArrayList<>(List.of(new Choice(ALL, "All my sites")));
		sites.forEach((site) -> choices.add(new Choice(site.id().toString(), site.name() + " only")));
		bedsOf(person).forEach(
				(bed) -> choices.add(new Choice(OF_BED + bed.id(), names.get(bed.site().value()) + ": " + bed.name())));
		groups.forEach((group) -> choices.add(new Choice(OF_GROUP + group.id(), "Group: " + group.name())));
		form(form, errors, model);
		model.addAttribute("section", "subscribe");
		model.addAttribute("fresh", fresh);
		model.addAttribute("noSites", sites.isEmpty() && groups.isEmpty());
		model.addAttribute("what", what);
		model.addAttribute("choices", choices);
		model.addAttribute("given",
				this.feeds.list(person)
					.stream()
					.filter((feed) -> feed.revokedAt() == null)
					.map((feed) -> given(feed, names, zone(person)))
					.toList());
		return "feeds/subscribe";
	}

	private Map<UUID, String> names(PersonId person) {
		Map<UUID, String> names = new HashMap<>();
		this.register.sitesOf(person).forEach((site) -> names.put(site.id().value(), site.name()));
		bedsOf(person).forEach((bed) -> names.put(bed.id().value(), bed.name()));
		this.groups.ofPerson(person).forEach((group) -> names.put(group.id().value(), group.name()));
		return names;
	}

	private List<Bed> bedsOf(PersonId person) {
		List<SiteId> sites = this.register.sitesOf(person).stream().map(Site::id).toList();
		return this.beds.ofSites(sites).values().stream().flatMap(List::stream).toList();
	}

	private ZoneId zone(PersonId person) {
		return this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
	}

	private static String title(FeedInfo feed, Map<UUID, String> names) {
		return switch (feed.kind()) {
			case PERSON -> "All my sites";
			case SITE, BED -> names.getOrDefault(feed.what(), GONE);
			case GROUP -> names.getOrDefault(feed.what(), "A group that you left");
		};
	}

	private static Given given(FeedInfo feed, Map<UUID, String> names, ZoneId zone) {
		String fetched = (feed.lastFetchedAt() == null) ? "not fetched yet"
				: "last fetched " + day(feed.lastFetchedAt(), zone);
		String language = (feed.options().speech().language() == Language.ENGLISH) ? ""
				: ", " + feed.options().speech().language().words();
		return new Given(feed.id().value(), title(feed, names),
				"made %s, %s%s".formatted(day(feed.createdAt(), zone), fetched, language));
	}

	private static String day(Instant instant, ZoneId zone) {
		return DayWords.of(LocalDate.ofInstant(instant, zone));
	}

	/** A calendar belongs to a person; the operator makes one for a site by API. */
	private PersonId person() {
		Viewer viewer = this.viewers.current();
		if (viewer.person() == null) {
			throw new NotThere(
					"This page is for the people of the sites. As operator, use POST /api/v1/sites/{id}/feed.");
		}
		return new PersonId(viewer.person());
	}

}
