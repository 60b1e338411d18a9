package org.leafward.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.limits.WateringLimitTable;
import org.leafward.care.core.amount.PlantCover;
import org.leafward.care.core.amount.PlantLight;
import org.leafward.care.core.amount.PlantSoil;
import org.leafward.care.core.amount.PlantWater;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.core.plan.InputFingerprint;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlanFingerprint;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.WeatherOutlook;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;

/** Plans a site with the rules in use: brings together what the planner asks for. */
@Component
class SitePlanner {

	private final Catalogue catalogue;

	private final LocalClimate climate;

	private final RulePacks packs;

	private final ClimateAnswers weather;

	private final WateringLimitTable limits;

	private volatile @Nullable Ready ready;

	SitePlanner(Catalogue catalogue, LocalClimate climate, RulePacks packs, ClimateAnswers weather,
			WateringLimitTable limits) {
		this.catalogue = catalogue;
		this.climate = climate;
		this.packs = packs;
		this.weather = weather;
		this.limits = limits;
	}

	/**
	 * Rules that are ready to plan with.
	 *
	 * @param fingerprint of the packs that the planner was made from
	 * @param planner the planner
	 */
	record Ready(String fingerprint, Planner planner) {
	}

	/**
	 * A plan.
	 *
	 * @param plan the plan, gaps in their order
	 * @param hash its fingerprint
	 */
	record Planned(Plan plan, byte[] hash) {
	}

	/** A fingerprint of all that a plan with some rules is made from. */
	byte[] fingerprint(SiteInputs inputs, Ready rules) {
		return InputFingerprint.of(inputs.ground(), inputs.plantings(), inputs.observed(), inputs.waterings(),
				inputs.soilTests(), inputs.surroundings().fingerprint(inputs.site().point()),
				rules.fingerprint() + this.catalogue.fingerprint() + this.limits.fingerprint(), inputs.today());
	}

	/** A plan. */
	Planned plan(SiteInputs inputs, Planner planner) {
		Site site = inputs.site();
		LocalDate today = inputs.today();
		Hemisphere hemisphere = site.point().hemisphere();
		Season current = Season.containing(today, hemisphere);
		List<Subject> subjects = new ArrayList<>();
		List<Gap> gaps = new ArrayList<>();
		for (Planting planting : inputs.plantings()) {
			Optional<Species> species = this.catalogue.find(planting.species());
			species.ifPresentOrElse((known) -> subjects.add(Subject.of(planting, known)),
					() -> gaps.add(new Gap(planting.id(), "", planting.label(), current.year(),
							"The species %s is no longer in the catalogue.".formatted(planting.species().value()))));
		}
		SiteFacts ground = new SiteFacts(site.region(), site.county(), site.soil(), site.features());
		WeatherOutlook outlook = this.weather.outlook(inputs);
		WeatherAnswers answers = this.weather.at(inputs, outlook);
		SiteFigures figures = new SiteFigures(new PlantLight(inputs.ground()),
				new PlantWater(inputs.ground(), today, inputs.waterings(),
						(roots, given) -> this.weather.water(inputs, roots, given),
						this.limits.of(site.county()).orElse(null)),
				new PlantCover(outlook::lowest), new PlantSoil(site.soil(), inputs.soilTests(), inputs.plantings()));
		List<Season> seasons = List.of(current.previous(), current, current.next());
		// All markers of a plan come from one version of each record.
		return this.climate.answer(site.place(), inputs.surroundings(), (markers) -> {
			PlanSite place = new PlanSite(site.id(), hemisphere, ground, markers, inputs.observed(), answers, figures);
			Plan plan = planner.plan(place, subjects, seasons, today);
			List<Gap> all = new ArrayList<>(gaps);
			all.addAll(plan.gaps());
			all.sort(Gap.ORDER);
			Plan sorted = new Plan(plan.tasks(), all);
			return new Planned(sorted, PlanFingerprint.of(place, sorted, today.toEpochDay()));
		});
	}

	/**
	 * The newest rules that were published. Asked once for some sites, in the transaction
	 * that takes them off the queue, so that none of them is planned with rules that were
	 * replaced before, nor with others than its fingerprint tells.
	 */
	Ready latest() {
		RulePacks latest = this.packs.latest();
		Ready known = this.ready;
		if (known == null || !known.fingerprint().equals(latest.fingerprint())) {
			known = new Ready(latest.fingerprint(), new Planner(latest.all(), latest.phenology()));
			this.ready = known;
		}
		return known;
	}

}
