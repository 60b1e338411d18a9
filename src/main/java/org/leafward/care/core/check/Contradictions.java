package org.leafward.care.core.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.leafward.care.TaskKind;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

/**
 * Compares each do and ramp with each hold-off from the same work that can be for the
 * same planting.
 */
public final class Contradictions {

	private static final int YEAR = 365;

	/** Stands in for the plant where rules are about a site. */
	private static final Species NO_PLANT = new Species(new SpeciesId("none"), "None", "none", List.of(), List.of(),
			Set.of());

	private static final Comparator<Contradiction> WORST = Comparator.comparing(Contradiction::never)
		.thenComparing(Contradiction::shared);

	private final List<Species> catalogue;

	private final List<ReferenceDates> climates;

	private Contradictions(Collection<Species> catalogue, Phenology phenology) {
		this.catalogue = catalogue.stream().sorted(Comparator.comparing((one) -> one.id().value())).toList();
		this.climates = ReferenceClimate.ALL.stream().map((climate) -> new ReferenceDates(climate, phenology)).toList();
	}

	private record Named(String reference, Rule rule) {
	}

	/**
	 * Finds contradictions.
	 * @param packs all packs
	 * @param catalogue the species to try
	 * @param phenology the estimates of phases
	 * @return each pair of rules once, with the example where they share most days
	 */
	public static List<Contradiction> among(List<RulePack> packs, Collection<Species> catalogue, Phenology phenology) {
		Contradictions search = new Contradictions(catalogue, phenology);
		List<Named> holdOffs = named(packs, Set.of(TaskKind.HOLD_OFF));
		List<Contradiction> found = new ArrayList<>();
		for (Named task : named(packs, Set.of(TaskKind.DO, TaskKind.RAMP_DAY))) {
			for (Named holdOff : holdOffs) {
				if (task.rule.work() == holdOff.rule.work()) {
					search.compare(task, holdOff).ifPresent(found::add);
				}
			}
		}
		return found;
	}

	private static List<Named> named(List<RulePack> packs, Set<TaskKind> kinds) {
		return packs.stream()
			.flatMap((pack) -> pack.rules()
				.stream()
				.filter((rule) -> kinds.contains(rule.kind()))
				.map((rule) -> new Named(pack.reference(rule), rule)))
			.toList();
	}

	private Optional<Contradiction> compare(Named task, Named holdOff) {
		Pair pair = new Pair(task.rule, holdOff.rule);
		if (!pair.canMeet() || !pair.datedAlike()) {
			return Optional.empty();
		}
		Stream<Species> plants = pair.aboutSite() ? Stream.of(NO_PLANT)
				: this.catalogue.stream().filter(pair::addresses).limit(pair.differsBySpecies() ? Long.MAX_VALUE : 1);
		return plants.map((plant) -> compare(task, holdOff, pair, plant)).flatMap(Optional::stream).max(WORST);
	}

	private Optional<Contradiction> compare(Named task, Named holdOff, Pair pair, Species plant) {
		Contradiction worst = null;
		boolean always = pair.holdsForAllOfTask();
		boolean judged = false;
		for (Pair.Spot spot : pair.spots()) {
			for (ReferenceDates dates : this.climates) {
				Optional<Stretch> wanted = dates.window(task.rule, spot.of(task.rule), plant);
				if (wanted.isEmpty()) {
					continue;
				}
				Optional<Stretch> forbidden = spot.holds() ? dates.window(holdOff.rule, spot.of(holdOff.rule), plant)
						: Optional.empty();
				judged |= forbidden.isPresent();
				int shared = forbidden.map((one) -> shared(wanted.get(), one, pair.everySeason())).orElse(0);
				int left = forbidden.map((one) -> left(wanted.get(), one, pair.everySeason()))
					.orElse(wanted.get().days());
				always &= left == 0;
				if (shared > 0 && (worst == null || shared > worst.shared())) {
					worst = new Contradiction(task.reference, holdOff.reference, pair.aboutSite() ? null : plant.id(),
							dates.place(), shared, left, task.rule.despite().contains(holdOff.reference), false);
				}
			}
		}
		boolean never = always && judged;
		return Optional.ofNullable(worst)
			.map((one) -> new Contradiction(one.task(), one.holdOff(), one.example(), one.place(), one.shared(),
					one.left(), one.settled(), never));
	}

	private static int shared(Stretch wanted, Stretch forbidden, boolean everySeason) {
		return seasons(forbidden, everySeason).mapToInt(wanted::shared).sum();
	}

	private static int left(Stretch wanted, Stretch forbidden, boolean everySeason) {
		return seasons(forbidden, everySeason).reduce(wanted, Stretch::without, (one, other) -> other).days();
	}

	/** A hold-off through winter reaches into the season after its own. */
	private static Stream<Stretch> seasons(Stretch forbidden, boolean every) {
		return every ? Stream.of(forbidden.shifted(-YEAR), forbidden, forbidden.shifted(YEAR)) : Stream.of(forbidden);
	}

}
