package org.leafward.register;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.store.BedEntity;
import org.leafward.register.store.BedRepository;
import org.leafward.register.store.PlantingEntity;
import org.leafward.register.store.PlantingRepository;
import org.leafward.register.store.SiteRepository;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The beds of sites: parts that share light, wind and water. A site needs none, and a
 * planting need not stand in one.
 */
@Service
public class Beds {

	/** A bound against scripts. */
	private static final int MOST_BEDS = 200;

	private final BedRepository beds;

	private final PlantingRepository plantings;

	private final SiteRepository sites;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	private final Turns turns;

	Beds(BedRepository beds, PlantingRepository plantings, SiteRepository sites, ApplicationEventPublisher events,
			Clock clock, Turns turns) {
		this.beds = beds;
		this.plantings = plantings;
		this.sites = sites;
		this.events = events;
		this.clock = clock;
		this.turns = turns;
	}

	/**
	 * The beds of a site.
	 * @param site the site
	 * @return by name, at most {@value #MOST_BEDS}
	 */
	@Transactional(readOnly = true)
	public List<Bed> ofSite(SiteId site) {
		return this.beds.ofSite(site.value()).stream().map(BedEntity::toBed).toList();
	}

	/**
	 * The beds of several sites, by name.
	 * @param sites the sites, at most 1,000
	 * @return without the sites that have none
	 */
	@Transactional(readOnly = true)
	public Map<SiteId, List<Bed>> ofSites(Collection<SiteId> sites) {
		return this.beds.ofSites(sites.stream().map(SiteId::value).toArray(UUID[]::new))
			.stream()
			.map(BedEntity::toBed)
			.collect(Collectors.groupingBy(Bed::site));
	}

	/**
	 * A site with its beds.
	 * @param site the site
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public SiteBeds with(Site site) {
		return new SiteBeds(site, ofSite(site.id()));
	}

	/**
	 * One bed.
	 * @param bed its identifier
	 * @return empty when it is not there
	 */
	@Transactional(readOnly = true)
	public Optional<Bed> find(BedId bed) {
		return this.beds.findById(bed.value()).map(BedEntity::toBed);
	}

	/**
	 * The plantings that stand in a bed.
	 * @param bed the bed
	 * @return by label; empty when there is no such bed
	 */
	@Transactional(readOnly = true)
	public List<Planting> plantingsIn(BedId bed) {
		return this.plantings.inBed(bed.value()).stream().map(PlantingEntity::toPlanting).toList();
	}

	/**
	 * Makes a bed.
	 * @param site the site
	 * @param bed what is known of it
	 * @return the bed
	 * @throws NotThere when there is no such site
	 * @throws BadInput when another bed of the site has this name, whatever the case, or
	 * the site has {@value #MOST_BEDS} beds
	 */
	public Bed add(SiteId site, NewBed bed) {
		return this.turns.change(() -> {
			hold(site);
			if (this.beds.countBySite(site.value()) >= MOST_BEDS) {
				throw new BadInput("one site has at most %d beds".formatted(MOST_BEDS), "name",
						"remove one in which nothing stands");
			}
			checkName(site, bed.name(), null);
			Bed saved = this.beds.save(new BedEntity(UUID.randomUUID(), site, bed, this.clock.instant())).toBed();
			this.events.publishEvent(new BedsChanged(site.value()));
			return saved;
		});
	}

	/**
	 * The bed of a name, which is made if it isn't there.
	 * @param site the site
	 * @param name its name, whatever the case
	 * @return the bed
	 * @throws NotThere when there is no such site
	 * @throws BadInput as {@link #add}
	 */
	public Bed named(SiteId site, String name) {
		NewBed wanted = NewBed.named(name);
		return this.turns.change(() -> {
			hold(site);
			return ofSite(site).stream()
				.filter((one) -> key(one.name()).equals(key(wanted.name())))
				.findFirst()
				.orElseGet(() -> add(site, wanted));
		});
	}

	/**
	 * Changes a bed; the tasks of its site are derived again. Nothing happens when it is
	 * so already.
	 * @param bed the bed
	 * @param change from what it is to what it is to be
	 * @return the bed as it is now
	 * @throws NotThere when there is no such bed
	 * @throws BadInput when another bed of the site has its name, whatever the case
	 */
	public Bed change(BedId bed, UnaryOperator<NewBed> change) {
		return this.turns.change(() -> {
			BedEntity row = row(bed);
			SiteId site = row.toBed().site();
			hold(site);
			NewBed now = row.toBed().setting();
			NewBed next = change.apply(now);
			if (!next.equals(now)) {
				checkName(site, next.name(), bed);
				row.put(next);
				this.beds.save(row);
				this.events.publishEvent(new BedsChanged(site.value()));
			}
			return row.toBed();
		});
	}

	/**
	 * Removes a bed. Its plantings stay at the site; waterings and soil tests that were
	 * entered for the bed go with it.
	 * @param bed the bed
	 * @throws NotThere when there is no such bed
	 */
	public void remove(BedId bed) {
		this.turns.change(() -> {
			BedEntity row = row(bed);
			this.plantings.leaveBed(bed.value());
			this.beds.delete(row);
			this.events.publishEvent(new BedsChanged(row.toBed().site().value()));
			return bed;
		});
	}

	/**
	 * Says in which bed a planting stands; tasks follow. Nothing happens when it stands
	 * there already.
	 * @param planting the planting
	 * @param bed a bed of the same site; null for none
	 * @return the planting as it is now
	 * @throws NotThere when there is no such planting
	 * @throws BadInput when the bed is none of its site's
	 */
	public Planting put(PlantingId planting, @Nullable BedId bed) {
		return this.turns.change(() -> {
			PlantingEntity row = this.plantings.findById(planting.value())
				.orElseThrow(() -> new NotThere("There is no planting " + planting));
			SiteId site = row.toPlanting().site();
			check(site, bed);
			if (row.put(bed)) {
				this.plantings.save(row);
				this.events.publishEvent(new BedsChanged(site.value()));
			}
			return row.toPlanting();
		});
	}

	/**
	 * Says what stands in a bed: these plantings and no others. What was in it besides
	 * stands in none afterwards.
	 * @param bed the bed
	 * @param wanted plantings of its site
	 * @throws NotThere when there is no such bed
	 * @throws BadInput when a planting is none of its site's
	 */
	public void fill(BedId bed, Set<PlantingId> wanted) {
		this.turns.change(() -> {
			SiteId site = row(bed).toBed().site();
			List<PlantingEntity> all = this.plantings.ofSite(site.value());
			long there = all.stream().filter((one) -> wanted.contains(new PlantingId(one.getId()))).count();
			if (there < wanted.size()) {
				throw new BadInput("one of them is not a planting of this site", "planting",
						"look at the site again and tick those that are there");
			}
			boolean moved = false;
			for (PlantingEntity one : all) {
				boolean in = wanted.contains(new PlantingId(one.getId()));
				if ((in || bed.equals(one.toPlanting().bed())) && one.put(in ? bed : null)) {
					this.plantings.save(one);
					moved = true;
				}
			}
			if (moved) {
				this.events.publishEvent(new BedsChanged(site.value()));
			}
			return bed;
		});
	}

	/**
	 * Refuses a bed of another site.
	 * @param site the site
	 * @param bed one of its beds, or null
	 * @throws BadInput when it is none of its beds
	 */
	void check(SiteId site, @Nullable BedId bed) {
		if (bed != null && find(bed).filter((one) -> one.site().equals(site)).isEmpty()) {
			throw new BadInput("%s is not a bed of this site".formatted(bed), "bed", "choose one of its beds, or none");
		}
	}

	/** Names are looked at one after the other. */
	private void hold(SiteId site) {
		this.sites.hold(site.value()).orElseThrow(() -> new NotThere("There is no site " + site));
	}

	private BedEntity row(BedId bed) {
		return this.beds.findById(bed.value()).orElseThrow(() -> new NotThere("There is no bed " + bed));
	}

	private void checkName(SiteId site, String name, @Nullable BedId but) {
		if (ofSite(site).stream().anyMatch((one) -> !one.id().equals(but) && key(one.name()).equals(key(name)))) {
			throw new BadInput("a bed of this site is called “%s” already".formatted(name), "name",
					"give it a name of its own");
		}
	}

	/**
	 * What two names have in common that are the same but for capitals.
	 * @param name a name
	 * @return the name to compare
	 */
	public static String key(String name) {
		return name.strip().toLowerCase(Locale.ROOT);
	}

}
