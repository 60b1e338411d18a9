package org.leafward.lookalikes;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.plants.SpeciesId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * What a case begins with.
 *
 * @param site where it grows; null for a plant that is in no register
 * @param planting which planting; null as well then
 * @param species its species; null when the catalogue doesn't have it
 * @param plant what readers call it, 1 to 200 characters on a line
 * @param county county of the place; empty when not known
 * @param zone time zone of the place
 * @param seen the day on which it was first seen
 * @param follows the case of an earlier year that is looked at again; null for none
 */
public record NewCase(@Nullable SiteId site, @Nullable PlantingId planting, @Nullable SpeciesId species, String plant,
		String county, ZoneId zone, LocalDate seen, @Nullable CaseId follows) {

	private static final int LONGEST = 200;

	/**
	 * Checks the name of the plant.
	 * @throws BadInput when it is empty or too long
	 */
	public NewCase {
		plant = Given.line("plant", Given.text("plant", plant));
		if (plant.length() > LONGEST) {
			throw new BadInput("the plant’s name has %d characters".formatted(plant.length()), "plant",
					"use at most %d".formatted(LONGEST));
		}
	}

}
