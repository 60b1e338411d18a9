package org.leafward.care.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.leafward.care.RulePacks;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.measure.Season;

/** Plans gardens with the configured packs, as the server does: three seasons at once. */
final class GardenPlanner {

	static final RulePacks PACKS = ConfiguredPacks.read();

	private static final Planner PLANNER = new Planner(PACKS.all(), PACKS.phenology());

	private GardenPlanner() {
	}

	static Plan plan(Garden garden) {
		return plan(garden, garden.subjects());
	}

	static Plan plan(Garden garden, List<Subject> subjects) {
		return plan(PLANNER, garden, subjects);
	}

	/** The same with rules, packs and plantings in another order. */
	static Plan shuffled(Garden garden, long seed) {
		Random random = new Random(seed);
		List<RulePack> packs = new ArrayList<>();
		for (RulePack pack : PACKS.all()) {
			var rules = new ArrayList<>(pack.rules());
			Collections.shuffle(rules, random);
			packs.add(new RulePack(pack.id(), pack.version(), pack.title(), pack.region(), rules));
		}
		Collections.shuffle(packs, random);
		List<Subject> subjects = new ArrayList<>(garden.subjects());
		Collections.shuffle(subjects, random);
		return plan(new Planner(packs, PACKS.phenology()), garden, subjects);
	}

	/** With other weather, figures or observations, on another day. */
	static Plan plan(PlanSite site, List<Subject> subjects, LocalDate today) {
		Season season = new Season(Garden.SEASON, site.hemisphere());
		return PLANNER.plan(site, subjects, List.of(season.previous(), season, season.next()), today);
	}

	private static Plan plan(Planner planner, Garden garden, List<Subject> subjects) {
		Season season = new Season(Garden.SEASON, garden.hemisphere());
		return planner.plan(garden.site(), subjects, List.of(season.previous(), season, season.next()), garden.today());
	}

}
