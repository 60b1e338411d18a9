package org.leafward.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.care.core.amount.PlantCover;
import org.leafward.care.core.amount.PlantLight;
import org.leafward.care.core.amount.PlantSoil;
import org.leafward.care.core.amount.PlantWater;
import org.leafward.care.core.plan.Figures;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.TestedSoil;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.Rule;
import org.leafward.measure.DayWindow;

/** What is worked out for the plantings of one site as it is today. */
record SiteFigures(PlantLight light, PlantWater water, PlantCover cover, PlantSoil ground) implements Figures {

	@Override
	public Optional<Amount> amount(Rule rule, Subject subject, DayWindow window) {
		Computes computes = rule.computes();
		if (computes == null) {
			return Optional.empty();
		}
		return switch (computes) {
			case COVER -> this.cover.amount(rule.hurt(), subject, window);
			case GYPSUM, TESTED_LEACHING -> this.ground.amount(computes, subject, window);
			default -> this.water.amount(computes, subject, window);
		};
	}

	@Override
	public Optional<TestedSoil> soil(Subject subject) {
		return this.ground.tested(subject);
	}

	@Override
	public List<Amount> steps(RampLight light, Subject subject, LocalDate first, int days) {
		return this.light.steps(light, subject, first, days);
	}

	@Override
	public Optional<HardeningRamp> ramp(RampLight light, Subject subject, LocalDate first, int days) {
		return this.light.ramp(light, subject, first, days);
	}

}
