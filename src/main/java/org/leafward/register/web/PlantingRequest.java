package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Given;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;

/**
 * A planting as somebody gives it, in a form or as JSON; nothing is checked yet.
 *
 * @param species id of a species of the catalogue
 * @param label what its people call it
 * @param count number of plants; 1 when left out
 * @param plantedOn day it was or will be planted
 * @param placement ground or container; ground when left out
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 */
record PlantingRequest(@Schema(requiredMode = RequiredMode.REQUIRED) @Nullable String species,
		@Schema(requiredMode = RequiredMode.REQUIRED, maxLength = 100) @Nullable String label,
		@Schema(types = "integer", format = "int32", minimum = "1", maximum = "100000") @Nullable String count,
		@Schema(types = "string", format = "date", requiredMode = RequiredMode.REQUIRED) @Nullable String plantedOn,
		@Nullable String placement, @Nullable Boolean wintersIndoors, @Nullable Boolean saltExposed) {

	NewPlanting toPlanting() {
		return new NewPlanting(new SpeciesId(Given.text("species", this.species)), Given.text("label", this.label),
				Given.whole("count", SiteRequest.or(this.count, "1")), Given.date("plantedOn", this.plantedOn),
				Given.word("placement", SiteRequest.or(this.placement, "ground"), Placement.class),
				Boolean.TRUE.equals(this.wintersIndoors), Boolean.TRUE.equals(this.saltExposed));
	}

}
