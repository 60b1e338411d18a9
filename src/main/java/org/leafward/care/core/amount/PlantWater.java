package org.leafward.care.core.amount;

import java.util.Optional;
import org.leafward.amounts.Amount;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Computes;
import org.leafward.measure.DayWindow;

/** The water of a site's plantings. */
public record PlantWater() {

	public Optional<Amount> amount(Computes computes, Subject subject, DayWindow window) {
		return Optional.empty();
	}

}
