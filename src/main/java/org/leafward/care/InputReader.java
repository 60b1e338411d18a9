package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leafward.care.core.plan.Observed;
import org.leafward.care.core.plan.SoilMoisture;
import org.leafward.care.store.SeenTable;
import org.leafward.climate.Surroundings;
import org.leafward.climate.SurroundingsReader;
import org.leafward.climate.WaterBalance;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTests;
import org.leafward.register.WateredDepths;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Component;

/**
 * Reads what the plans of some sites are made from, with a few questions for all of them.
 */
@Component
class InputReader {

	/** Days back that a plan looks at waterings. */
	private static final int WATERED = SoilMoisture.DAYS + WaterBalance.RUN_IN_DAYS;

	private final Register register;

	private final Beds beds;

	private final SeenTable seen;

	private final Waterings waterings;

	private final SoilTests soilTests;

	private final SurroundingsReader surroundings;

	InputReader(Register register, Beds beds, SeenTable seen, Waterings waterings, SoilTests soilTests,
			SurroundingsReader surroundings) {
		this.register = register;
		this.beds = beds;
		this.seen = seen;
		this.waterings = waterings;
		this.soilTests = soilTests;
		this.surroundings = surroundings;
	}

	/**
	 * Reads.
	 * @param ids the sites
	 * @param now says which day it is at each
	 * @return those that are there
	 */
	List<SiteInputs> of(List<SiteId> ids, Instant now) {
		List<Site> sites = this.register.find(ids);
		Map<SiteId, List<Planting>> plantings = this.register.plantingsOf(ids);
		Map<SiteId, List<Bed>> beds = this.beds.ofSites(ids);
		// Somewhere it is still yesterday, elsewhere tomorrow.
		LocalDate around = LocalDate.ofInstant(now, ZoneOffset.UTC);
		Map<SiteId, Observed> observed = this.seen.of(ids, around);
		Map<SiteId, WateredDepths> waterings = this.waterings.depths(ids, around.minusDays(WATERED + 1),
				around.plusDays(1));
		Map<SiteId, List<KeptSoilTest>> tests = this.soilTests.latest(ids);
		Surroundings surroundings = this.surroundings.of(sites.stream().map(Site::point).toList());
		List<SiteInputs> inputs = new ArrayList<>(sites.size());
		for (Site site : sites) {
			LocalDate today = LocalDate.ofInstant(now, site.zone());
			WateredDepths given = waterings.getOrDefault(site.id(), WateredDepths.NONE)
				.between(today.minusDays(WATERED), today);
			inputs.add(new SiteInputs(site, beds.getOrDefault(site.id(), List.of()),
					plantings.getOrDefault(site.id(), List.of()), observed.getOrDefault(site.id(), Observed.NOTHING),
					given, tests.getOrDefault(site.id(), List.of()), surroundings, today));
		}
		return inputs;
	}

}
