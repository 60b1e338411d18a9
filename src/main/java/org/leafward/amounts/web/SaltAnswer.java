package org.leafward.amounts.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.DeIcer;
import org.leafward.amounts.salt.Exposure;
import org.leafward.amounts.salt.Leaching;
import org.leafward.amounts.salt.LeachingRequirement;
import org.leafward.amounts.salt.SaltAdvice;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;

/**
 * What to do about salt in a bed.
 *
 * @param leaching the water
 * @param explanation how it came about
 * @param afterThaw what helps beside it
 * @param beforeWinter what helps next time
 */
record SaltAnswer(Leaching leaching, Explanation explanation, List<Explanation> afterThaw,
		List<Explanation> beforeWinter) {

	static SaltAnswer of(SaltedBed bed, @Nullable Conductivity now, double wanted, @Nullable Double water,
			Set<Exposure> exposures, DeIcer product) {
		Leaching leaching = (now != null) ? Leaching.to(bed, now.saturated(), wanted) : Leaching.half(bed);
		Explanation whole = leaching.amount().explanation();
		List<Explanation> steps = new ArrayList<>();
		if (now != null) {
			steps.add(now.explanation());
		}
		steps.addAll(whole.steps());
		if (water != null) {
			steps.add(water(water, wanted));
		}
		boolean winter = bed.cause() == SaltedBed.Cause.DE_ICING;
		return new SaltAnswer(leaching, whole.withSteps(steps),
				winter ? SaltAdvice.afterThaw(exposures, product) : List.of(),
				winter ? SaltAdvice.beforeWinter(exposures, product) : List.of());
	}

	/** Water that is saltier than the soil is to be can't rinse it (our choice). */
	private static Explanation water(double water, double wanted) {
		if (water > wanted) {
			throw new BadInput("water of %.1f dS/m is saltier than the soil is to be".formatted(water), "waterEc",
					"use water with less salt, such as rain");
		}
		double share = LeachingRequirement.share(water, wanted);
		return Explanation
			.of("So that the water’s own salt doesn’t gather",
					Math.round(share * 100) + " % of what the bed is watered with later has to pass through")
			.withDetail("Water with %s; for 25 mm that the plants use give %.0f mm."
				.formatted(Conductivity.words(water), LeachingRequirement.applied(25, share)))
			.withSource(LeachingRequirement.SOURCE);
	}

}
