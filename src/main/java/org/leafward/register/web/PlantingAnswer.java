package org.leafward.register.web;

import java.time.LocalDate;
import java.util.UUID;
import org.leafward.register.Planting;

/**
 * A planting as the API answers it.
 *
 * @param id identifier
 * @param site where it grows
 * @param species id of its species
 * @param label what its people call it
 * @param count number of plants
 * @param plantedOn day it was or will be planted
 * @param placement ground or container
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 */
record PlantingAnswer(UUID id, UUID site, String species, String label, int count, LocalDate plantedOn,
		String placement, boolean wintersIndoors, boolean saltExposed) {

	static PlantingAnswer of(Planting planting) {
		return new PlantingAnswer(planting.id().value(), planting.site().value(), planting.species().value(),
				planting.label(), planting.count(), planting.plantedOn(), SiteAnswer.word(planting.placement()),
				planting.wintersIndoors(), planting.saltExposed());
	}

}
