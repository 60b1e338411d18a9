package org.leafward.feeds.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedAddresses;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Feeds as JSON: make one, see which there are, revoke one. */
@RestController
@Tag(name = "Feeds", description = "Calendars to subscribe to")
class FeedApi {

	private static final String NOTE = "This address is shown only now. Whoever knows it can read the calendar; "
			+ "revoke it when it got about. A calendar service that subscribes keeps a copy.";

	private final Feeds feeds;

	private final OpenSites sites;

	private final Viewers viewers;

	private final FeedAddresses addresses;

	FeedApi(Feeds feeds, OpenSites sites, Viewers viewers, FeedAddresses addresses) {
		this.feeds = feeds;
		this.sites = sites;
		this.viewers = viewers;
		this.addresses = addresses;
	}

	/**
	 * Where to subscribe.
	 *
	 * @param id identifier of the feed, to revoke it
	 * @param address to copy into a calendar program
	 * @param webcal the same for programs that open such links
	 * @param note what to know about it
	 */
	record FeedAddress(UUID id, String address, String webcal, String note) {
	}

	@Operation(summary = "Make a feed; its address is shown only in this answer")
	@PostMapping("/api/v1/sites/{site}/feed")
	@ResponseStatus(HttpStatus.CREATED)
	FeedAddress create(@PathVariable UUID site) {
		Site found = this.sites.own(site);
		NewFeed made = this.feeds.createForSite(found.id(), found.owner());
		return new FeedAddress(made.id().value(), this.addresses.address(made), this.addresses.webcal(made), NOTE);
	}

	@Operation(summary = "The feeds of a site, without their addresses")
	@GetMapping("/api/v1/sites/{site}/feeds")
	List<FeedView> list(@PathVariable UUID site) {
		return this.feeds.ofSite(this.sites.own(site).id()).stream().map(FeedView::of).toList();
	}

	@Operation(summary = "Revoke a feed for good")
	@DeleteMapping("/api/v1/feeds/{feed}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void revoke(@PathVariable UUID feed) {
		FeedId id = new FeedId(feed);
		PersonId owner = this.feeds.ownerOf(id)
			.filter((person) -> this.viewers.current().mayOpen(person.value()))
			.orElseThrow(() -> new NotThere("There is no feed " + feed));
		this.feeds.revoke(id, owner);
	}

}
