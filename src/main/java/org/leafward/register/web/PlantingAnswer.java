package org.leafward.register.web;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Planting;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;

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
 * @param squareMetres area of the bed or above the roots; null when not known
 * @param calliperMillimetres thickness of one trunk; null when not known
 * @param potLitres volume of one pot; null when not known
 * @param raisedIn where it stands before it goes out; null when not known
 * @param lampMicromoles light of the lamps, µmol/m²s; null when not known
 * @param lampHours hours a day that the lamps are on; null when not known
 * @param bed the bed in which it stands; null for none
 */
record PlantingAnswer(UUID id, UUID site, String species, String label, int count, LocalDate plantedOn,
		String placement, boolean wintersIndoors, boolean saltExposed, @Nullable Double squareMetres,
		@Nullable Double calliperMillimetres, @Nullable Double potLitres, @Nullable String raisedIn,
		@Nullable Double lampMicromoles, @Nullable Double lampHours, @Nullable UUID bed) {

	static PlantingAnswer of(Planting planting) {
		PlantingSize size = planting.size();
		Raised raised = planting.raised();
		return new PlantingAnswer(planting.id().value(), planting.site().value(), planting.species().value(),
				planting.label(), planting.count(), planting.plantedOn(), SiteAnswer.word(planting.placement()),
				planting.wintersIndoors(), planting.saltExposed(), size.squareMetres(), size.calliperMillimetres(),
				size.potLitres(), (raised != null) ? SiteAnswer.word(raised.in()) : null,
				(raised != null) ? raised.micromoles() : null, (raised != null) ? raised.hours() : null,
				(planting.bed() != null) ? planting.bed().value() : null);
	}

}
