package org.leafward.advisories.desk;

import java.time.Instant;
import java.util.Set;
import org.leafward.advisories.Questions;
import org.leafward.lookalikes.AskedCases;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Component;

/**
 * Questions are the cases of which the help desk was asked. It stands here since the help
 * desk lies below.
 */
@Component
class AskedAtHelpDesk implements Questions {

	private final AskedCases cases;

	private final Regions regions;

	AskedAtHelpDesk(AskedCases cases, Regions regions) {
		this.cases = cases;
		this.regions = regions;
	}

	@Override
	public long asked(Set<String> counties, Instant from, Instant to) {
		// Cases know the name of their county only.
		return this.cases.asked(
				counties.stream().flatMap((code) -> this.regions.find(code).stream()).map(County::name).toList(), from,
				to);
	}

}
