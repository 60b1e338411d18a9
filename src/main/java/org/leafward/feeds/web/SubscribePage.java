package org.leafward.feeds.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
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

	private final Feeds feeds;

	private final Register register;

	private final People people;

	private final Viewers viewers;

	private final FeedAddresses addresses;

	SubscribePage(Feeds feeds, Register register, People people, Viewers viewers, FeedAddresses addresses) {
		this.feeds = feeds;
		this.register = register;
		this.people = people;
		this.viewers = viewers;
		this.addresses = addresses;
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
	 */
	record Fresh(String title, String address, String webcal) {
	}

	@GetMapping("/subscribe")
	String page(Model model) {
		return page(null, model);
	}

	@PostMapping("/subscribe")
	String make(@RequestParam(defaultValue = ALL) String what, Model model, HttpServletResponse response) {
		PersonId person = person();
		Fresh fresh;
		if (what.equals(ALL)) {
			NewFeed made = this.feeds.createForPerson(person, person);
			fresh = new Fresh("All my sites", this.addresses.address(made), this.addresses.webcal(made));
		}
		else {
			Site site = this.register.sitesOf(person)
				.stream()
				.filter((one) -> one.id().toString().equals(what))
				.findFirst()
				.orElseThrow(() -> new NotThere("There is no such site."));
			NewFeed made = this.feeds.createForSite(site.id(), person);
			fresh = new Fresh(site.name(), this.addresses.address(made), this.addresses.webcal(made));
		}
		// The page shows a secret: neither caches nor the next page's server may learn
		// it.
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
		return page(fresh, model);
	}

	@PostMapping("/subscribe/{feed}/stop")
	String stop(@PathVariable UUID feed) {
		this.feeds.revoke(new FeedId(feed), person());
		return "redirect:/subscribe";
	}

	private String page(@Nullable Fresh fresh, Model model) {
		PersonId person = person();
		ZoneId zone = this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		List<Site> sites = this.register.sitesOf(person);
		Map<SiteId, String> names = new LinkedHashMap<>();
		List<Choice> choices = new ArrayList<>(List.of(new Choice(ALL, "All my sites")));
		for (Site site : sites) {
			names.put(site.id(), site.name());
			choices.add(new Choice(site.id().toString(), site.name() + " only"));
		}
		model.addAttribute("section", "subscribe");
		model.addAttribute("fresh", fresh);
		model.addAttribute("noSites", sites.isEmpty());
		model.addAttribute("choices", choices);
		model.addAttribute("given",
				this.feeds.list(person)
					.stream()
					.filter((feed) -> feed.revokedAt() == null)
					.map((feed) -> given(feed, names, zone))
					.toList());
		return "feeds/subscribe";
	}

	private static Given given(FeedInfo feed, Map<SiteId, String> names, ZoneId zone) {
		String title = (feed.kind() == FeedKind.PERSON) ? "All my sites"
				: names.getOrDefault(new SiteId(feed.what()), "A site that is gone");
		String fetched = (feed.lastFetchedAt() == null) ? "not fetched yet"
				: "last fetched " + day(feed.lastFetchedAt(), zone);
		return new Given(feed.id().value(), title, "made %s, %s".formatted(day(feed.createdAt(), zone), fetched));
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
