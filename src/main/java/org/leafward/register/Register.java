package org.leafward.register;

import java.time.Clock;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Place;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.register.store.PlantingEntity;
import org.leafward.register.store.PlantingRepository;
import org.leafward.register.store.SiteEntity;
import org.leafward.register.store.SiteRepository;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The register of sites and plantings: what is entered, changed and looked up. */
@Service
public class Register {

	/** More sites than one person can look after; a bound against scripts. */
	private static final int MOST_SITES = 500;

	/**
	 * Length of one degree of latitude, km, rounded down so that boxes come out too
	 * large.
	 */
	private static final double KM_PER_DEGREE = 110.5;

	private final SiteRepository sites;

	private final PlantingRepository plantings;

	private final People people;

	private final Catalogue catalogue;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	private final Turns turns;

	private final PlantingCommands commands;

	Register(SiteRepository sites, PlantingRepository plantings, PlantingCommands commands, People people,
			Catalogue catalogue, ApplicationEventPublisher events, Clock clock, Turns turns) {
		this.sites = sites;
		this.plantings = plantings;
		this.commands = commands;
		this.people = people;
		this.catalogue = catalogue;
		this.events = events;
		this.clock = clock;
		this.turns = turns;
	}

	/**
	 * Makes several changes in one transaction; whoever listens hears of them once all
	 * are made.
	 * @param <T> what comes of them
	 * @param changes the changes
	 * @return what came of them
	 */
	public <T> T together(Supplier<T> changes) {
		return this.turns.change(changes);
	}

	/**
	 * Registers a site.
	 * @param owner whose site it is
	 * @param site what is known of it
	 * @return the site
	 * @throws BadInput when the person is unknown or has {@value #MOST_SITES} sites
	 */
	public Site addSite(PersonId owner, NewSite site) {
		return this.turns.change(() -> add(owner, site));
	}

	private Site add(PersonId owner, NewSite site) {
		if (this.people.find(owner).isEmpty()) {
			throw new BadInput("there is no person %s".formatted(owner), "owner", "add the person first");
		}
		if (this.sites.countByOwner(owner.value()) >= MOST_SITES) {
			throw new BadInput("one person has at most %d sites".formatted(MOST_SITES), "owner",
					"remove a site that is no longer looked after");
		}
		Site saved = this.sites.save(new SiteEntity(UUID.randomUUID(), owner, site, this.clock.instant())).toSite();
		this.events.publishEvent(new SiteRegistered(saved.id().value(), owner.value()));
		return saved;
	}

	/**
	 * Changes where a site is and what its nights are like; the rest stays.
	 * @param site the site
	 * @param place the new place
	 * @return the site as it is now
	 * @throws NotThere when there is no such site
	 */
	public Site changePlace(SiteId site, Place place) {
		return change(site, (now) -> new SiteSetting(place, now.region(), now.features(), now.litresPerMinute()));
	}

	/**
	 * Changes where a site is, what its nights are like, its region and what it has; its
	 * tasks are derived again. Nothing happens when it is so already.
	 * @param site the site
	 * @param change from what it is to what it is to be
	 * @return the site as it is now
	 * @throws NotThere when there is no such site
	 */
	public Site change(SiteId site, UnaryOperator<SiteSetting> change) {
		return this.turns.change(() -> {
			SiteEntity row = this.sites.findById(site.value())
				.orElseThrow(() -> new NotThere("There is no site " + site));
			SiteSetting now = row.toSite().setting();
			SiteSetting next = change.apply(now);
			if (!next.equals(now)) {
				row.put(next);
				this.sites.save(row);
				this.events.publishEvent(new SitePlaceChanged(site.value()));
			}
			return row.toSite();
		});
	}

	/**
	 * Changes in which county and time zone a site lies and what its soil is; its tasks
	 * are derived again. Nothing happens when it is so already.
	 * @param site the site
	 * @param county county or district, at most 100 characters, may be empty
	 * @param zone time zone
	 * @param soil soil texture
	 * @return the site as it is now
	 * @throws NotThere when there is no such site
	 * @throws BadInput when the county is no line of text, or the zone no region
	 */
	public Site change(SiteId site, String county, ZoneId zone, SoilTexture soil) {
		return this.turns.change(() -> {
			SiteEntity row = this.sites.findById(site.value())
				.orElseThrow(() -> new NotThere("There is no site " + site));
			Site now = row.toSite();
			String district = NewSite.county(county);
			if (!district.equals(now.county()) || !zone.equals(now.zone()) || soil != now.soil()) {
				row.put(district, NewSite.zone(zone), soil);
				this.sites.save(row);
				this.events.publishEvent(new SitePlaceChanged(site.value()));
			}
			return row.toSite();
		});
	}

	/**
	 * Adds plantings to a site.
	 * @param site the site
	 * @param added the plantings, at least one
	 * @return the plantings in the same order
	 * @throws NotThere when there is no such site
	 * @throws BadInput when a species is not in the catalogue, a bed is none of the
	 * site's, or the site has too many plantings
	 */
	public List<Planting> addPlantings(SiteId site, List<NewPlanting> added) {
		return this.turns.change(() -> {
			require(site);
			return this.commands.add(site, added);
		});
	}

	/**
	 * Adds a list of plantings once, however often it is sent; all or nothing.
	 * @param site the site
	 * @param key names the form that it was sent by
	 * @param added the plantings, at least one
	 * @return whether they were added now; false when the same list was added under this
	 * key before
	 * @throws NotThere when there is no such site
	 * @throws BadInput when a species is not in the catalogue, the site has too many
	 * plantings, or another list was added under this key
	 */
	public boolean addList(SiteId site, UUID key, List<NewPlanting> added) {
		return this.turns.change(() -> {
			require(site);
			return this.commands.addList(site, key, added);
		});
	}

	/**
	 * Changes what the amounts and ramps of a planting go by; its tasks are derived
	 * again. Nothing happens when it is so already.
	 * @param planting the planting
	 * @param size how large it is
	 * @param raised where it stands before it goes out; null when nobody told
	 * @return the planting as it is now
	 * @throws NotThere when there is no such planting
	 */
	public Planting changeSize(PlantingId planting, PlantingSize size, @Nullable Raised raised) {
		return changeFigures(planting, (now) -> new PlantingFigures(now.plantedOn(), now.saltExposed(), size, raised));
	}

	/**
	 * Changes what the days, amounts and ramps of a planting go by; its tasks are derived
	 * again. Nothing happens when it is so already.
	 * @param planting the planting
	 * @param change from what it is to what it is to be
	 * @return the planting as it is now
	 * @throws NotThere when there is no such planting
	 */
	public Planting changeFigures(PlantingId planting, UnaryOperator<PlantingFigures> change) {
		return this.turns.change(() -> this.commands.changeFigures(planting, change));
	}

	/**
	 * Takes a planting out of the register.
	 * @param planting the planting
	 * @throws NotThere when there is no such planting
	 */
	public void removePlanting(PlantingId planting) {
		this.turns.change(() -> this.commands.remove(planting));
	}

	@Transactional(readOnly = true)
	public Optional<Site> find(SiteId site) {
		return this.sites.findById(site.value()).map(SiteEntity::toSite);
	}

	/**
	 * Several sites.
	 * @param sites their identifiers, at most 1,000
	 * @return those that are there, in no order
	 */
	@Transactional(readOnly = true)
	public List<Site> find(Collection<SiteId> sites) {
		return this.sites.among(values(sites)).stream().map(SiteEntity::toSite).toList();
	}

	private static UUID[] values(Collection<SiteId> sites) {
		return sites.stream().map(SiteId::value).toArray(UUID[]::new);
	}

	/**
	 * Identifiers of all sites, piece by piece.
	 * @param after the last one of the piece before; null begins
	 * @param size 1 to 10,000
	 * @return empty after the last
	 */
	@Transactional(readOnly = true)
	public List<SiteId> idsAfter(@Nullable SiteId after, int size) {
		UUID start = (after != null) ? after.value() : new UUID(0, 0);
		return this.sites.idsAfter(start, PageRequest.of(0, size)).stream().map(SiteId::new).toList();
	}

	/**
	 * A site that must be there.
	 * @param site its identifier
	 * @return the site
	 * @throws NotThere when it is not
	 */
	@Transactional(readOnly = true)
	public Site require(SiteId site) {
		return find(site).orElseThrow(() -> new NotThere("There is no site " + site));
	}

	@Transactional(readOnly = true)
	public Optional<Planting> find(PlantingId planting) {
		return this.plantings.findById(planting.value()).map(PlantingEntity::toPlanting);
	}

	/**
	 * Sites of a person by name.
	 * @param owner the person
	 * @return at most {@value #MOST_SITES}
	 */
	@Transactional(readOnly = true)
	public List<Site> sitesOf(PersonId owner) {
		return this.sites.ofOwner(owner.value(), PageRequest.of(0, MOST_SITES))
			.stream()
			.map(SiteEntity::toSite)
			.toList();
	}

	/**
	 * Removes all sites of a person with all that hangs on them, and their name from what
	 * they entered at sites of others. Nobody is told: who keeps something about sites
	 * forgets it in the same transaction.
	 * @param owner the person
	 */
	@Transactional
	public void removeSitesOf(PersonId owner) {
		this.sites.deleteOfOwner(owner.value());
		this.sites.renameInWaterings(owner.value(), null);
		this.sites.renameInSoilTests(owner.value(), null);
	}

	/**
	 * Gives all sites of a person to another one.
	 * @param from who has them
	 * @param into who gets them
	 */
	@Transactional
	public void handOver(PersonId from, PersonId into) {
		List<Site> moved = sitesOf(from);
		this.sites.handOver(from.value(), into.value());
		this.sites.renameInWaterings(from.value(), into.value());
		this.sites.renameInSoilTests(from.value(), into.value());
		moved.forEach((site) -> this.events.publishEvent(new SitePlaceChanged(site.id().value())));
	}

	/**
	 * A page of a person's sites by name.
	 * @param owner the person
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<Site> sitesOf(PersonId owner, int page, int size) {
		return this.sites.ofOwner(owner.value(), PageRequest.of(page, size)).stream().map(SiteEntity::toSite).toList();
	}

	/**
	 * A page of the sites in some counties, by county and name, without the server's own.
	 * @param counties names of counties; case doesn't matter
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<Site> sitesIn(Set<String> counties, int page, int size) {
		if (counties.isEmpty()) {
			return List.of();
		}
		Set<String> keys = counties.stream().map((one) -> one.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
		return this.sites.inCounties(keys, PersonId.SERVER.value(), PageRequest.of(page, size))
			.stream()
			.map(SiteEntity::toSite)
			.toList();
	}

	/**
	 * A page of all sites by name, without the server's own.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<Site> sites(int page, int size) {
		return this.sites.all(PersonId.SERVER.value(), PageRequest.of(page, size))
			.stream()
			.map(SiteEntity::toSite)
			.toList();
	}

	/**
	 * Plantings of a site by label.
	 * @param site the site
	 * @return at most 1,000
	 */
	@Transactional(readOnly = true)
	public List<Planting> plantingsOf(SiteId site) {
		return this.plantings.ofSite(site.value()).stream().map(PlantingEntity::toPlanting).toList();
	}

	/**
	 * Plantings of several sites by label.
	 * @param sites the sites, at most 1,000
	 * @return without the sites that have none
	 */
	@Transactional(readOnly = true)
	public Map<SiteId, List<Planting>> plantingsOf(Collection<SiteId> sites) {
		return this.plantings.ofSites(values(sites))
			.stream()
			.map(PlantingEntity::toPlanting)
			.collect(Collectors.groupingBy(Planting::site));
	}

	/**
	 * A page of the plantings of one person or of everybody, by name of the site, then
	 * label.
	 * @param owner whose; null for all but the server's own
	 * @param words part of the label, of the name of the site or of the common name of
	 * the species, whatever the case; empty for all
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<Planting> searchPlantings(@Nullable PersonId owner, String words, int page, int size) {
		String part = words.strip().toLowerCase(Locale.ROOT);
		String[] species = part.isEmpty() ? new String[0]
				: this.catalogue.all()
					.stream()
					.filter((one) -> one.commonName().toLowerCase(Locale.ROOT).contains(part))
					.map((one) -> one.id().value())
					.toArray(String[]::new);
		String pattern = "%" + part.replaceAll("([%_\\\\])", "\\\\$1") + "%";
		return this.plantings
			.search(owner == null, ((owner != null) ? owner : PersonId.SERVER).value(), pattern, species, size,
					(long) page * size)
			.stream()
			.map(PlantingEntity::toPlanting)
			.toList();
	}

	/**
	 * Sites around a point.
	 * @param centre the point; its height is ignored
	 * @param kilometres great-circle radius
	 * @return all of them, by identifier
	 */
	@Transactional(readOnly = true)
	public List<SiteId> sitesNear(GeoPoint centre, double kilometres) {
		double high = kilometres / KM_PER_DEGREE;
		double shrink = Math.cos(Math.toRadians(Math.min(89, Math.abs(centre.latitude()) + high)));
		double wide = Math.min(180, high / shrink);
		return this.sites
			.inside(centre.latitude() - high, centre.latitude() + high, centre.longitude() - wide,
					centre.longitude() + wide)
			.stream()
			.map(SiteEntity::toSite)
			.filter((site) -> site.point().distanceKilometres(centre) <= kilometres)
			.map(Site::id)
			.toList();
	}

}
