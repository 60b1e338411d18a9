package org.leafward.care.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PlantFacts;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.SoilTexture;

/**
 * The rules of all packs, found by what a planting is. In the order of their names, so
 * that the order in which packs and rules are written makes no difference. Safe for use
 * by threads.
 */
final class RuleIndex {

	private static final SiteFacts SOMEWHERE = new SiteFacts("", "", SoilTexture.LOAM, Set.of());

	private final List<IndexedRule> rules;

	private final List<IndexedRule> forSites;

	private final Map<Anchor, Integer> slots = new HashMap<>();

	private final Map<Kind, List<IndexedRule>> byKind = new ConcurrentHashMap<>();

	RuleIndex(List<RulePack> packs) {
		List<RuleOfPack> all = new ArrayList<>();
		packs.forEach((pack) -> pack.rules().forEach((rule) -> all.add(new RuleOfPack(pack, rule))));
		all.sort(Comparator.comparing((one) -> one.pack().reference(one.rule())));
		List<IndexedRule> indexed = new ArrayList<>();
		for (RuleOfPack one : all) {
			indexed.add(new IndexedRule(one.pack(), one.rule(), indexed.size(), this::slot));
		}
		this.rules = List.copyOf(indexed);
		this.forSites = this.rules.stream().filter((rule) -> !rule.rule().concern().site().isEmpty()).toList();
	}

	private record RuleOfPack(RulePack pack, Rule rule) {
	}

	/** What tells plantings apart before place and age are looked at. */
	private record Kind(SpeciesId species, Placement placement, boolean wintersIndoors, boolean saltExposed) {
	}

	/** Numbers the anchors whose date is the same for all plantings of a site. */
	private int slot(Anchor anchor) {
		return isShared(anchor) ? this.slots.computeIfAbsent(anchor, (one) -> this.slots.size()) : -1;
	}

	private static boolean isShared(Anchor anchor) {
		return anchor instanceof CalendarAnchor || (anchor instanceof MarkerAnchor marker && marker.sameForAll());
	}

	int size() {
		return this.rules.size();
	}

	/** How many anchors have the same date for all plantings of a site. */
	int slots() {
		return this.slots.size();
	}

	/** The rules for a site as a whole. */
	List<IndexedRule> forSite(SiteFacts site) {
		return this.forSites.stream().filter((rule) -> rule.rule().concern().appliesTo(site)).toList();
	}

	/** The rules for a planting, whatever its age. */
	List<IndexedRule> forPlanting(Planting planting, Species species, SiteFacts site) {
		List<IndexedRule> candidates = this.byKind.computeIfAbsent(
				new Kind(species.id(), planting.placement(), planting.wintersIndoors(), planting.saltExposed()),
				(kind) -> {
					PlantFacts plant = facts(planting, species, SOMEWHERE);
					return this.rules.stream().filter((rule) -> rule.mayConcern(plant)).toList();
				});
		PlantFacts here = facts(planting, species, site);
		for (IndexedRule rule : candidates) {
			if (!rule.concernsHere(here)) {
				return candidates.stream().filter((one) -> one.concernsHere(here)).toList();
			}
		}
		return candidates;
	}

	private static PlantFacts facts(Planting planting, Species species, SiteFacts site) {
		return new PlantFacts(species.id(), Set.copyOf(species.groups()), species.traits(), planting.placement(),
				planting.wintersIndoors(), planting.saltExposed(), 0, site);
	}

}
