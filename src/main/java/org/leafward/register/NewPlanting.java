package org.leafward.register;

import java.time.LocalDate;
import org.leafward.measure.BadInput;
import org.leafward.plants.SpeciesId;

/**
 * A planting to be added to a site.
 *
 * @param species species of the catalogue
 * @param label what its people call it, 1 to 100 characters
 * @param count number of plants, 1 to 100,000
 * @param plantedOn day it was or will be planted, 1700 to 2199
 * @param placement in the ground or in a container
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 */
public record NewPlanting(SpeciesId species, String label, int count, LocalDate plantedOn, Placement placement,
		boolean wintersIndoors, boolean saltExposed) {

	public NewPlanting {
		label = Words.line("label", label, 1, 100);
		if (count < 1 || count > 100_000) {
			throw new BadInput("count %d is outside 1 to 100,000".formatted(count), "count",
					"give the number of plants");
		}
		if (plantedOn.getYear() < 1700 || plantedOn.getYear() > 2199) {
			throw new BadInput("planting date %s is outside 1700 to 2199".formatted(plantedOn), "plantedOn",
					"write the date as year-month-day, for example 2026-05-12");
		}
	}

}
