package org.leafward.register;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * What the days, the amounts and the ramps of a planting's tasks go by, and may change.
 *
 * @param plantedOn day it was or will be planted (for seedlings: set out), 1700 to 2199
 * @param saltExposed whether de-icing salt reaches it
 * @param size how large it is, as far as anyone told
 * @param raised where it stands before it goes out; null when nobody told
 */
public record PlantingFigures(LocalDate plantedOn, boolean saltExposed, PlantingSize size, @Nullable Raised raised) {

	/**
	 * Checks the day.
	 * @throws BadInput when it is out of its bounds
	 */
	public PlantingFigures {
		NewPlanting.checkDay(plantedOn);
	}

	/**
	 * Those of a planting.
	 * @param planting the planting
	 * @return its figures
	 */
	public static PlantingFigures of(Planting planting) {
		return new PlantingFigures(planting.plantedOn(), planting.saltExposed(), planting.size(), planting.raised());
	}

}
