package org.leafward.register;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.store.SiteEntity;
import org.leafward.register.store.SiteRepository;
import org.leafward.register.store.WateringEntity;
import org.leafward.register.store.WateringRepository;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The waterings of sites. They enter the water balance of a bed when it is asked for, and
 * so the tasks that wait for dry or moist soil.
 */
@Service
public class Waterings {

	/** A bound against scripts. */
	private static final int MOST_A_DAY = 20;

	private static final int LONGEST_YEARS = 4;

	private final WateringRepository waterings;

	private final SiteRepository sites;

	private final OwnPlantings plantings;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	Waterings(WateringRepository waterings, SiteRepository sites, OwnPlantings plantings, Clock clock,
			ApplicationEventPublisher events) {
		this.waterings = waterings;
		this.sites = sites;
		this.plantings = plantings;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Records a watering.
	 * @param site where
	 * @param watering what was given
	 * @param by who enters it; null for an operator
	 * @return the watering
	 * @throws NotThere when there is no such site
	 * @throws BadInput when the day is to come or more than a year ago, the planting is
	 * not one of the site's, or the place got more than 200 mm on the day
	 */
	@Transactional
	public Watering record(SiteId site, NewWatering watering, @Nullable PersonId by) {
		Site found = this.sites.hold(site.value())
			.map(SiteEntity::toSite)
			.orElseThrow(() -> new NotThere("There is no site " + site));
		checkDay(watering.day(), LocalDate.ofInstant(this.clock.instant(), found.zone()));
		return add(site, watering, by);
	}

	/**
	 * Records a watering of any time, which somebody had recorded before and brings back.
	 * @param site where
	 * @param watering what was given
	 * @param by who brings it
	 * @return the watering
	 * @throws NotThere when there is no such site
	 * @throws BadInput as {@link #record}, but for the year
	 */
	@Transactional
	public Watering bringBack(SiteId site, NewWatering watering, PersonId by) {
		Site found = this.sites.hold(site.value())
			.map(SiteEntity::toSite)
			.orElseThrow(() -> new NotThere("There is no site " + site));
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), found.zone());
		checkDay(watering.day().isBefore(today) ? today : watering.day(), today);
		return add(site, watering, by);
	}

	private Watering add(SiteId site, NewWatering watering, @Nullable PersonId by) {
		PlantingId planting = watering.planting();
		this.plantings.check(site, planting);
		List<Watering> sameDay = between(site, watering.day(), watering.day());
		if (sameDay.size() >= MOST_A_DAY) {
			throw new BadInput("one site has at most %d waterings on a day".formatted(MOST_A_DAY), "day",
					"enter the sum of several as one");
		}
		double already = sameDay.stream()
			.filter((one) -> Objects.equals(one.planting(), planting))
			.mapToDouble(Watering::millimetres)
			.sum();
		if (already + watering.millimetres() > NewWatering.MOST_MILLIMETRES) {
			throw new BadInput(
					"with the %.1f mm that are recorded already, %s would have got more than %.0f mm".formatted(already,
							watering.day(), NewWatering.MOST_MILLIMETRES),
					"amount", "check the amount, or undo one of the others");
		}
		Watering saved = this.waterings
			.save(new WateringEntity(UUID.randomUUID(), site, watering, by,
					this.clock.instant().truncatedTo(ChronoUnit.MICROS)))
			.toWatering();
		this.events.publishEvent(new WateringsChanged(site.value()));
		return saved;
	}

	private static void checkDay(LocalDate day, LocalDate today) {
		if (day.isAfter(today)) {
			throw new BadInput("%s is still to come".formatted(day), "day", "record a watering once it is done");
		}
		if (day.isBefore(today.minusYears(1))) {
			throw new BadInput("%s is more than a year ago".formatted(day), "day",
					"give a day from %s on".formatted(today.minusYears(1)));
		}
	}

	/**
	 * Takes a watering back.
	 * @param site where it was recorded
	 * @param watering the watering
	 * @throws NotThere when the site has no such watering
	 */
	@Transactional
	public void remove(SiteId site, WateringId watering) {
		if (!removeIfThere(site, watering)) {
			throw new NotThere("There is no watering " + watering);
		}
	}

	/**
	 * Takes a watering back, if it is there.
	 * @param site where it was recorded
	 * @param watering the watering
	 * @return whether it was there
	 */
	@Transactional
	public boolean removeIfThere(SiteId site, WateringId watering) {
		Optional<WateringEntity> row = this.waterings.findById(watering.value())
			.filter((found) -> found.toWatering().site().equals(site));
		row.ifPresent((found) -> {
			this.waterings.delete(found);
			this.events.publishEvent(new WateringsChanged(site.value()));
		});
		return row.isPresent();
	}

	/**
	 * The waterings of a period.
	 * @param site where
	 * @param from first day
	 * @param to last day, at most four years later
	 * @return by day, then as they were entered
	 * @throws BadInput when the period is longer
	 */
	@Transactional(readOnly = true)
	public List<Watering> between(SiteId site, LocalDate from, LocalDate to) {
		if (to.isAfter(from.plusYears(LONGEST_YEARS))) {
			throw new BadInput("%s to %s is longer than %d years".formatted(from, to, LONGEST_YEARS), "from, to",
					"ask for less at a time");
		}
		return this.waterings.between(site.value(), from, to).stream().map(WateringEntity::toWatering).toList();
	}

	/**
	 * A page of the waterings, the latest day first.
	 * @param site where
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<Watering> latest(SiteId site, int page, int size) {
		return this.waterings.latest(site.value(), PageRequest.of(page, size))
			.stream()
			.map(WateringEntity::toWatering)
			.toList();
	}

	/**
	 * What a bed got: the waterings of the whole site and its own.
	 * @param site where
	 * @param planting whose bed; null for ground that only gets what the whole site gets
	 * @param from first day
	 * @param to last day, at most four years later
	 * @return mm by day, for days with a watering
	 */
	@Transactional(readOnly = true)
	public Map<LocalDate, Double> depths(SiteId site, @Nullable PlantingId planting, LocalDate from, LocalDate to) {
		Map<LocalDate, Double> depths = new HashMap<>();
		between(site, from, to).stream()
			.filter((one) -> one.planting() == null || one.planting().equals(planting))
			.forEach((one) -> depths.merge(one.day(), one.millimetres(), Double::sum));
		return depths;
	}

	/**
	 * What the ground of several sites got.
	 * @param sites where, at most 1,000
	 * @param from first day
	 * @param to last day, at most four years later
	 * @return by site, without those that got nothing
	 */
	@Transactional(readOnly = true)
	public Map<SiteId, WateredDepths> depths(Collection<SiteId> sites, LocalDate from, LocalDate to) {
		Map<SiteId, List<Watering>> waterings = this.waterings
			.ofSites(sites.stream().map(SiteId::value).toArray(UUID[]::new), from, to)
			.stream()
			.map(WateringEntity::toWatering)
			.collect(Collectors.groupingBy(Watering::site));
		Map<SiteId, WateredDepths> depths = new HashMap<>();
		waterings.forEach((site, all) -> depths.put(site, depths(all)));
		return depths;
	}

	private static WateredDepths depths(List<Watering> waterings) {
		Map<LocalDate, Double> whole = new HashMap<>();
		Map<PlantingId, Map<LocalDate, Double>> beds = new HashMap<>();
		for (Watering one : waterings) {
			PlantingId planting = one.planting();
			((planting == null) ? whole : beds.computeIfAbsent(planting, (bed) -> new HashMap<>())).merge(one.day(),
					one.millimetres(), Double::sum);
		}
		return new WateredDepths(whole, beds);
	}

}
