package org.leafward.care;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.store.ExplanationTable;
import org.leafward.care.store.ReplanTable;
import org.leafward.care.store.TaskTable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.PlaceMarkers;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Derives the tasks of sites and writes the difference. Deriving twice writes nothing the
 * second time.
 */
@Service
public class Replanning {

	private static final Logger LOG = LoggerFactory.getLogger(Replanning.class);

	private static final Duration RETRY_AFTER = Duration.ofMinutes(5);

	private final Register register;

	private final Catalogue catalogue;

	private final LocalClimate climate;

	private final RulePacks packs;

	private final TaskTable tasks;

	private final ExplanationTable explanations;

	private final ReplanTable queue;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	private final TransactionTemplate transaction;

	Replanning(Register register, Catalogue catalogue, LocalClimate climate, RulePacks packs, TaskTable tasks,
			ExplanationTable explanations, ReplanTable queue, ApplicationEventPublisher events, Clock clock,
			PlatformTransactionManager transactions) {
		this.register = register;
		this.catalogue = catalogue;
		this.climate = climate;
		this.packs = packs;
		this.tasks = tasks;
		this.explanations = explanations;
		this.queue = queue;
		this.events = events;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
		this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
	}

	/**
	 * Derives the tasks of one site in a transaction of its own.
	 * @param site the site; nothing happens when it is not there
	 * @return what was written
	 */
	public Optional<PlanDiff> derive(SiteId site) {
		Optional<PlanDiff> diff = this.transaction.execute((status) -> {
			this.tasks.lock(site);
			return this.register.find(site).map(this::derive);
		});
		return (diff != null) ? diff : Optional.empty();
	}

	private PlanDiff derive(Site site) {
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		LocalDate today = LocalDate.ofInstant(now, site.zone());
		List<Planting> plantings = this.register.plantingsOf(site.id());
		Plan plan = plan(site, plantings, today);
		Set<PlantingId> present = plantings.stream().map(Planting::id).collect(Collectors.toSet());
		PlanDiff diff = PlanDiff.between(this.tasks.stored(site.id()), plan, present, today, this.explanations::nameOf);
		if (!plan.gaps().equals(this.tasks.gaps(site.id()))) {
			this.tasks.replaceGaps(site.id(), plan.gaps());
		}
		if (!diff.isEmpty()) {
			write(site, diff, now);
		}
		return diff;
	}

	private Plan plan(Site site, List<Planting> plantings, LocalDate today) {
		Hemisphere hemisphere = site.point().hemisphere();
		Season current = Season.containing(today, hemisphere);
		List<Season> seasons = List.of(current.previous(), current, current.next());
		PlaceMarkers markers = this.climate.markersAt(site.place());
		SiteFacts ground = new SiteFacts("", site.county(), site.soil(), Set.of());
		Planner planner = new Planner(this.packs.all());
		List<PlannedTask> planned = new ArrayList<>();
		List<Gap> gaps = new ArrayList<>();
		for (Planting planting : plantings) {
			Optional<Species> species = this.catalogue.find(planting.species());
			if (species.isEmpty()) {
				gaps.add(new Gap(planting.id(), "", planting.label(), current.year(),
						"The species %s is no longer in the catalogue.".formatted(planting.species().value())));
				continue;
			}
			Plan plan = planner.plan(new Subject(planting, species.get(), hemisphere, ground), markers, seasons);
			planned.addAll(plan.tasks());
			gaps.addAll(plan.gaps());
		}
		gaps.sort(Gap.ORDER);
		return new Plan(planned, gaps);
	}

	private void write(Site site, PlanDiff diff, Instant now) {
		List<PlannedTask> explained = new ArrayList<>(diff.added());
		explained.addAll(diff.changed());
		explained.addAll(diff.explained());
		this.explanations.keep(explained.stream().map(PlannedTask::explanation).distinct().toList());
		this.tasks.add(site, diff.added(), names(diff.added()), now);
		this.tasks.change(diff.changed(), names(diff.changed()), now);
		this.tasks.explain(diff.explained(), names(diff.explained()));
		this.tasks.withdraw(diff.withdrawn(), now);
		if (diff.visible()) {
			this.events.publishEvent(new PlanChanged(site.id().value(), site.owner().value(), diff.added().size(),
					diff.changed().size(), diff.withdrawn().size(), now));
		}
	}

	private List<UUID> names(List<PlannedTask> planned) {
		return planned.stream().map((task) -> this.explanations.nameOf(task.explanation())).toList();
	}

	/**
	 * Asks for sites to be derived by {@link #drain}, on this node or another.
	 * @param sites the sites
	 */
	public void ask(List<SiteId> sites) {
		this.transaction.executeWithoutResult((status) -> this.queue.ask(sites, this.clock.instant()));
	}

	/** Asks for every site to be derived, page by page. */
	public void askAll() {
		int page = 0;
		List<Site> sites;
		do {
			sites = this.register.sites(page++, 200);
			ask(sites.stream().map(Site::id).toList());
		}
		while (!sites.isEmpty());
	}

	/**
	 * Derives due sites one by one until there are none left or the time is up. A site
	 * that fails is put off and does not stop the others.
	 * @param limit how long to go on
	 * @return number of sites derived
	 */
	public int drain(Duration limit) {
		Instant end = this.clock.instant().plus(limit);
		int derived = 0;
		while (!this.clock.instant().isAfter(end)) {
			List<SiteId> next = this.queue.peek(this.clock.instant());
			if (next.isEmpty()) {
				break;
			}
			try {
				boolean taken = Boolean.TRUE.equals(this.transaction.execute((status) -> deriveNext()));
				if (!taken) {
					break;
				}
				derived++;
			}
			catch (RuntimeException ex) {
				LOG.error("Deriving the tasks of site {} failed; it is tried again in {}", next.get(0), RETRY_AFTER,
						ex);
				Instant later = this.clock.instant().plus(RETRY_AFTER);
				this.transaction.executeWithoutResult(
						(status) -> this.queue.putOff(next.get(0), later, String.valueOf(ex.getMessage())));
			}
		}
		return derived;
	}

	private boolean deriveNext() {
		List<SiteId> taken = this.queue.take(this.clock.instant());
		for (SiteId site : taken) {
			this.tasks.lock(site);
			this.register.find(site).ifPresent(this::derive);
		}
		return !taken.isEmpty();
	}

	/** Forgets explanations that no task has any more. */
	public void tidy() {
		Integer forgotten = this.transaction.execute((status) -> this.explanations.forgetUnused());
		LOG.info("{} unused explanations forgotten", forgotten);
	}

}
