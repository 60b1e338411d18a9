package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.PhaseOrder;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.leafward.register.Planting;

/** The phases of the plantings of a site in order, where some were seen. */
final class PhaseOrders {

	private final AnchorDates dates;

	private final Observed observed;

	private final Estimates estimates;

	private final Map<Key, Map<String, PhaseOrder.Kept>> known = new HashMap<>();

	PhaseOrders(AnchorDates dates, Observed observed, Estimates estimates) {
		this.dates = dates;
		this.observed = observed;
		this.estimates = estimates;
	}

	private record Key(UUID subject, int season) {
	}

	/** By phase; empty where nothing was seen of a planting in a season. */
	Map<String, PhaseOrder.Kept> of(Season season, Subject subject) {
		if (this.observed == Observed.NOTHING) {
			return Map.of();
		}
		Key key = new Key(subject.id(), season.year());
		Map<String, PhaseOrder.Kept> order = this.known.get(key);
		if (order == null) {
			order = order(season, subject);
			this.known.put(key, order);
		}
		return order;
	}

	private Map<String, PhaseOrder.Kept> order(Season season, Subject subject) {
		if (this.estimates.phases().stream().noneMatch((phase) -> seen(phase.name(), season, subject).isPresent())) {
			return Map.of();
		}
		List<PhaseOrder.Dated> dated = new ArrayList<>();
		for (Phase phase : this.estimates.phases()) {
			LocalDate usual = day(phase.name(), season, subject, false);
			LocalDate now = day(phase.name(), season, subject, true);
			if (usual != null && now != null) {
				dated.add(new PhaseOrder.Dated(phase.name(), usual, now,
						seen(phase.name(), season, subject).isPresent()));
			}
		}
		return PhaseOrder.keep(dated);
	}

	private Optional<LocalDate> seen(String phase, Season season, Subject subject) {
		Planting planting = subject.planting();
		return (planting != null) ? this.observed.phase(planting.id(), phase, season.year()) : Optional.empty();
	}

	/** The day of a phase, before any order. */
	private @Nullable LocalDate day(String phase, Season season, Subject subject, boolean asSeen) {
		Optional<LocalDate> seen = asSeen ? seen(phase, season, subject) : Optional.empty();
		Species species = subject.species();
		if (seen.isPresent() || species == null) {
			return seen.orElse(null);
		}
		Optional<Estimate> estimate = this.estimates.of(phase, species).map(Estimates.Known::estimate);
		if (estimate.isPresent() && estimate.get().at() instanceof PhaseAnchor other) {
			Season its = other.nextSeason() ? season.next() : season;
			LocalDate base = day(other.phase(), its, subject, asSeen);
			return (base == null) ? null
					: other.bounds().keep(base.plusDays(AnchorDates.days(other.days(), subject)), its);
		}
		return estimate.map((one) -> this.dates.of(one.at(), season, subject).date()).orElse(null);
	}

}
