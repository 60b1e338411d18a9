package org.leafward.counties;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
import org.leafward.climate.PlaceLabels;
import org.leafward.climate.Stations;
import org.leafward.counties.store.GardenTable;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.quick.QuickPlantings;
import org.leafward.quick.core.PlantedWhen;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * A garden for each county, in which one of everything grows that gardeners there grow:
 * open ground of loam in full sun, at the typical height. Its tasks are the county's
 * calendar. It is a site of the register like any other, owned by the server, so weather
 * and rules move its dates as they move everybody's.
 */
@Service
public class ModelGardens {

	private static final Logger LOG = LoggerFactory.getLogger(ModelGardens.class);

	/** Days by which the next season's planting may move before it is made anew. */
	private static final int MOVED = 7;

	/** Days between plantings of two seasons, at least. */
	private static final int SEASON = 150;

	private static final int LONGEST_NAME = 100;

	private final Regions regions;

	private final GardenTable table;

	private final People people;

	private final Register register;

	private final Catalogue catalogue;

	private final QuickPlantings plantings;

	private final PlaceLabels labels;

	private final Stations stations;

	private final Clock clock;

	ModelGardens(Regions regions, GardenTable table, People people, Register register, Catalogue catalogue,
			QuickPlantings plantings, PlaceLabels labels, Stations stations, Clock clock) {
		this.regions = regions;
		this.table = table;
		this.people = people;
		this.register = register;
		this.catalogue = catalogue;
		this.plantings = plantings;
		this.labels = labels;
		this.stations = stations;
		this.clock = clock;
	}

	/**
	 * Makes the gardens that are missing, and looks after the plants of each once a day:
	 * what lives a season is planted anew, new species come, dead ones go. Again does
	 * nothing. A garden that fails holds up no other.
	 * @return how many were made or looked after
	 */
	public int tend() {
		if (this.stations.page(0, 1).stations().isEmpty()) {
			// A server that is being set up: nothing could be dated yet.
			return 0;
		}
		int tended = 0;
		for (County county : this.regions.counties()) {
			try {
				tended += tend(county) ? 1 : 0;
			}
			catch (RuntimeException ex) {
				LOG.warn("The model garden of {} was not tended; it is tried again", county.name(), ex);
			}
		}
		return tended;
	}

	private boolean tend(County county) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), county.zone());
		if (done(county, today)) {
			return false;
		}
		// Asked before the transaction, as the climate of a place takes a while.
		PlantedWhen when = this.plantings.at(county.somewhere(), today);
		Integer zone = zone(county, today);
		return this.register.together(() -> {
			this.table.lock(county.code());
			if (done(county, today)) {
				return false;
			}
			Optional<Garden> garden = this.table.find(county.code());
			SiteId site = garden.map(Garden::site).orElseGet(() -> make(county));
			if (garden.isEmpty()) {
				this.table.add(county.code(), site, today, this.clock.instant().truncatedTo(ChronoUnit.SECONDS));
			}
			this.register.change(site,
					(now) -> new SiteSetting(Place.of(county.somewhere()), county.region(), Set.of(), null));
			boolean changed = plant(site, county.somewhere().hemisphere(), when, zone);
			// Looked at again soon while no station tells what is hardy.
			this.table.tended(county.code(), (zone != null) ? today : today.minusDays(1), changed);
			return true;
		});
	}

	private boolean done(County county, LocalDate today) {
		return this.table.find(county.code()).filter((one) -> !one.tendedOn().isBefore(today)).isPresent();
	}

	private SiteId make(County county) {
		this.people.ofTheServer();
		String name = "Model garden of " + county.name();
		Site site = this.register.addSite(PersonId.SERVER,
				new NewSite(name.substring(0, Math.min(name.length(), LONGEST_NAME)), county.name(), county.somewhere(),
						county.zone(), SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE, Microclimate.NONE, county.region(),
						Set.of()));
		return site.id();
	}

	/** The number of the hardiness zone; null when no station tells. */
	private @Nullable Integer zone(County county, LocalDate today) {
		String zone = this.labels.of(county.somewhere(), today, county.zone()).zone();
		return (zone != null) ? Integer.valueOf(zone.replaceAll("\\D", "")) : null;
	}

	private boolean plant(SiteId site, Hemisphere hemisphere, PlantedWhen when, @Nullable Integer zone) {
		Map<SpeciesId, List<Planting>> growing = this.register.plantingsOf(site)
			.stream()
			.sorted(Comparator.comparing(Planting::plantedOn))
			.collect(Collectors.groupingBy(Planting::species, HashMap::new, Collectors.toList()));
		List<NewPlanting> added = new ArrayList<>();
		List<Planting> removed = new ArrayList<>();
		for (Species species : this.catalogue.all()) {
			List<Planting> here = Objects.requireNonNullElse(growing.remove(species.id()), List.of());
			if (PlantedWhen.lastsASeason(species)) {
				sow(here, this.plantings.planting(species.id(), false, when), when.today(), hemisphere, added, removed);
			}
			else if (here.isEmpty() && hardy(species, zone, 0)) {
				added.add(this.plantings.planting(species.id(), false, when));
			}
			else if (!hardy(species, zone, 1)) {
				// One zone of slack, or what stands on the line would come and go.
				removed.addAll(here);
			}
		}
		growing.values().forEach(removed::addAll);
		removed.forEach((one) -> this.register.removePlanting(one.id()));
		if (!added.isEmpty()) {
			this.register.addPlantings(site, added);
		}
		return !added.isEmpty() || !removed.isEmpty();
	}

	private static boolean hardy(Species species, @Nullable Integer zone, int slack) {
		return zone == null || species.zones() == null || QuickPlantings.indoors(species)
				|| species.zones().coldest() <= zone + slack;
	}

	/** This season's stays until the next one has begun. */
	private static void sow(List<Planting> here, NewPlanting next, LocalDate today, Hemisphere hemisphere,
			List<NewPlanting> added, List<Planting> removed) {
		if (here.isEmpty()) {
			added.add(next);
			return;
		}
		Planting newest = here.get(here.size() - 1);
		long days = ChronoUnit.DAYS.between(newest.plantedOn(), next.plantedOn());
		boolean moved = newest.plantedOn().isAfter(today) && next.plantedOn().isAfter(today) && Math.abs(days) > MOVED;
		if (days > SEASON || moved) {
			added.add(next);
		}
		if (moved) {
			removed.add(newest);
		}
		int season = Season.containing(today, hemisphere).year();
		here.stream()
			.filter((one) -> one != newest && Season.containing(one.plantedOn(), hemisphere).year() < season)
			.forEach(removed::add);
	}

}
