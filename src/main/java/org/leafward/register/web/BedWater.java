package org.leafward.register.web;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.WaterBalance;
import org.leafward.climate.WaterView;
import org.leafward.measure.BadInput;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Component;

/** The water in a bed of a site, with what was watered. */
@Component
class BedWater {

	private final WaterBalance balance;

	private final Register register;

	private final Waterings waterings;

	BedWater(WaterBalance balance, Register register, Waterings waterings) {
		this.balance = balance;
		this.register = register;
		this.waterings = waterings;
	}

	/**
	 * The balance of a bed.
	 * @param site the site
	 * @param bed what grows there
	 * @param from first day
	 * @param to last day
	 * @return empty when no station can tell
	 * @throws BadInput when the bed or the period can't be used
	 */
	Optional<WaterView> water(Site site, BedRequest bed, LocalDate from, LocalDate to) {
		WaterBalance.checkPeriod(from, to);
		PlantingId planting = bed.planting().orElse(null);
		if (planting != null && this.register.find(planting).filter((one) -> one.site().equals(site.id())).isEmpty()) {
			throw new BadInput("%s is not a planting of this site".formatted(planting), "bed",
					"choose one of its plantings, or none");
		}
		return this.balance.of(site.point(),
				bed.toBed(site,
						this.waterings.depths(site.id(), planting, from.minusDays(WaterBalance.RUN_IN_DAYS), to)),
				from, to);
	}

}
