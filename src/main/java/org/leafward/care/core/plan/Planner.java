package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.RulePack;
import org.leafward.measure.Season;

/**
 * Derives the task windows of a site: a fold over its plantings, the rules that concern
 * them and the seasons asked for. The same arguments always give the same plan, in
 * whatever order packs, rules and plantings come. Making one takes a while, so keep it as
 * long as the packs stay the same. Safe for use by threads.
 */
public final class Planner {

	private final RuleIndex index;

	private final Estimates estimates;

	/**
	 * Creates a planner.
	 * @param packs the rules
	 * @param phenology when phases are expected where nobody observed them
	 */
	public Planner(List<RulePack> packs, Phenology phenology) {
		this.index = new RuleIndex(packs);
		this.estimates = new Estimates(phenology);
	}

	/**
	 * Plans for a site and its plantings.
	 * @param site the site
	 * @param plantings its plantings; species are the same as in earlier calls
	 * @param seasons the seasons to plan for, one after the other
	 * @param today the day at the site, for the weather
	 * @return tasks by subject, the site first, then by rule, season and occurrence
	 */
	public Plan plan(PlanSite site, List<Subject> plantings, List<Season> seasons, LocalDate today) {
		SitePlan plan = new SitePlan(this.index, this.estimates, site, List.copyOf(seasons), today);
		plan.add(Subject.of(site.id()));
		plantings.forEach(plan::add);
		return plan.result();
	}

}
