package org.leafward.register;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.register.store.AddedListTable;
import org.leafward.register.store.PlantingEntity;
import org.leafward.register.store.PlantingRepository;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** What is done to plantings, within a transaction and a turn of {@link Register}. */
@Component
class PlantingCommands {

	private static final int MOST_PLANTINGS = 1000;

	private final PlantingRepository plantings;

	private final AddedListTable lists;

	private final Beds beds;

	private final Catalogue catalogue;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	PlantingCommands(PlantingRepository plantings, AddedListTable lists, Beds beds, Catalogue catalogue,
			ApplicationEventPublisher events, Clock clock) {
		this.plantings = plantings;
		this.lists = lists;
		this.beds = beds;
		this.catalogue = catalogue;
		this.events = events;
		this.clock = clock;
	}

	List<Planting> add(SiteId site, List<NewPlanting> added) {
		for (NewPlanting planting : added) {
			if (this.catalogue.find(planting.species()).isEmpty()) {
				throw new BadInput("species '%s' is not in the catalogue".formatted(planting.species().value()),
						"species", "look it up with GET /api/v1/species?search=");
			}
		}
		added.stream().map(NewPlanting::bed).distinct().forEach((bed) -> this.beds.check(site, bed));
		if (this.plantings.countBySite(site.value()) + added.size() > MOST_PLANTINGS) {
			throw new BadInput("one site has at most %d plantings".formatted(MOST_PLANTINGS), "plantings",
					"put plants of one species that are cared for alike into one planting");
		}
		List<Planting> saved = added.stream()
			.map((planting) -> new PlantingEntity(UUID.randomUUID(), site, planting, this.clock.instant()))
			.map((row) -> this.plantings.save(row).toPlanting())
			.toList();
		this.events.publishEvent(new PlantingsChanged(site.value()));
		return saved;
	}

	boolean addList(SiteId site, UUID key, List<NewPlanting> added) {
		byte[] digest = digest(added);
		if (!this.lists.claim(site, key, digest, this.clock.instant())) {
			if (!this.lists.isOf(site, key, digest)) {
				throw new BadInput("A list was added from this form before, and this one differs from it", "key",
						"look at the site first; what is new here can be added once you left out what is there");
			}
			return false;
		}
		add(site, added);
		return true;
	}

	/** What tells one list from another; records write all that they hold. */
	private static byte[] digest(List<NewPlanting> added) {
		try {
			return MessageDigest.getInstance("SHA-256").digest(added.toString().getBytes(StandardCharsets.UTF_8));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java has SHA-256", ex);
		}
	}

	Planting changeFigures(PlantingId planting, UnaryOperator<PlantingFigures> change) {
		PlantingEntity row = row(planting);
		PlantingFigures now = PlantingFigures.of(row.toPlanting());
		PlantingFigures next = change.apply(now);
		if (!next.equals(now)) {
			row.put(next);
			this.plantings.save(row);
			this.events.publishEvent(new PlantingsChanged(row.toPlanting().site().value()));
		}
		return row.toPlanting();
	}

	PlantingId remove(PlantingId planting) {
		PlantingEntity row = row(planting);
		this.plantings.delete(row);
		this.events.publishEvent(new PlantingsChanged(row.toPlanting().site().value()));
		return planting;
	}

	private PlantingEntity row(PlantingId planting) {
		return this.plantings.findById(planting.value())
			.orElseThrow(() -> new NotThere("There is no planting " + planting));
	}

}
