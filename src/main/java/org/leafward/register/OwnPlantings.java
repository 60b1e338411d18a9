package org.leafward.register;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.register.store.PlantingRepository;
import org.springframework.stereotype.Component;

/** Whose bed something happened in. */
@Component
class OwnPlantings {

	private final PlantingRepository plantings;

	OwnPlantings(PlantingRepository plantings) {
		this.plantings = plantings;
	}

	/**
	 * Refuses a planting of another site.
	 * @param site the site
	 * @param planting one of its plantings; null for the whole site
	 */
	void check(SiteId site, @Nullable PlantingId planting) {
		if (planting != null && this.plantings.findById(planting.value())
			.filter((row) -> row.toPlanting().site().equals(site))
			.isEmpty()) {
			throw new BadInput("%s is not a planting of this site".formatted(planting), "planting",
					"choose one of its plantings, or none for the whole site");
		}
	}

}
