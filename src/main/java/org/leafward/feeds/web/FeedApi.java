package org.leafward.feeds.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedAddresses;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedOptions;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.leafward.workdays.GroupId;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
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

	private final Beds beds;

	FeedApi(Feeds feeds, OpenSites sites, Viewers viewers, FeedAddresses addresses, Beds beds) {
		this.feeds = feeds;
		this.sites = sites;
		this.viewers = viewers;
		this.addresses = addresses;
		this.beds = beds;
	}

	/**
	 * Where to subscribe.
	 *
	 * @param id identifier of the feed, to revoke it
	 * @param address to copy into a calendar program
	 * @param webcal the same for programs that open such links
	 * @param todos address of the same as to-dos, for programs with a list of tasks
	 * @param note what to know about it
	 */
	record FeedAddress(UUID id, String address, String webcal, String todos, String note) {
	}

	@Operation(summary = "Make a feed of a site; its address is shown only in this answer")
	@PostMapping("/api/v1/sites/{site}/feed")
	@ResponseStatus(HttpStatus.CREATED)
	FeedAddress create(@PathVariable UUID site, @RequestBody(required = false) @Nullable OptionsForm options) {
		Site found = this.sites.own(site);
		return told(this.feeds.createForSite(found.id(), found.owner(), wanted(options)));
	}

	@Operation(
			summary = "Make a feed of all own sites, of an own bed, or of a group one belongs to; its address is shown only in "
					+ "this answer")
	@PostMapping("/api/v1/feeds")
	@ResponseStatus(HttpStatus.CREATED)
	FeedAddress createForAll(@RequestParam(required = false) @Nullable UUID group,
			@RequestParam(required = false) @Nullable UUID bed,
			@RequestBody(required = false) @Nullable OptionsForm options) {
		PersonId person = person();
		if (bed != null) {
			Bed own = this.beds.find(new BedId(bed)).orElseThrow(() -> new NotThere("There is no bed " + bed));
			this.sites.own(own.site().value());
			return told(this.feeds.createForBed(own.id(), person, wanted(options)));
		}
		if (group != null) {
			return told(this.feeds.createForGroup(new GroupId(group), person, wanted(options)));
		}
		return told(this.feeds.createForPerson(person, person, wanted(options)));
	}

	@Operation(summary = "Own feeds, without their addresses")
	@GetMapping("/api/v1/feeds")
	List<FeedView> own() {
		return this.feeds.list(person()).stream().map(FeedView::of).toList();
	}

	@Operation(summary = "Change what a feed holds and how it speaks; its address stays")
	@PutMapping("/api/v1/feeds/{feed}")
	FeedView change(@PathVariable UUID feed, @RequestBody OptionsForm options) {
		FeedId id = new FeedId(feed);
		this.feeds.change(id, owner(feed), options.options());
		return this.feeds.find(id).map(FeedView::of).orElseThrow(() -> new NotThere("There is no feed " + feed));
	}

	@Operation(summary = "Take another address; the former one is dead from then on")
	@PostMapping("/api/v1/feeds/{feed}/address")
	@ResponseStatus(HttpStatus.CREATED)
	FeedAddress rotate(@PathVariable UUID feed) {
		return told(this.feeds.rotate(new FeedId(feed), owner(feed)));
	}

	private FeedAddress told(NewFeed made) {
		return new FeedAddress(made.id().value(), this.addresses.address(made), this.addresses.webcal(made),
				this.addresses.todos(made), NOTE);
	}

	private static FeedOptions wanted(@Nullable OptionsForm options) {
		return (options != null) ? options.options() : FeedOptions.USUAL;
	}

	private PersonId person() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere(
					"A feed of all sites is for their owner. For one site use POST /api/v1/sites/{id}/feed.");
		}
		return new PersonId(person);
	}

	private PersonId owner(UUID feed) {
		return this.feeds.ownerOf(new FeedId(feed))
			.filter((person) -> this.viewers.current().mayOpen(person.value()))
			.orElseThrow(() -> new NotThere("There is no feed " + feed));
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
		this.feeds.revoke(new FeedId(feed), owner(feed));
	}

}
