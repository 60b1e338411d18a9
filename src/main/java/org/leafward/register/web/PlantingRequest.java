package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.plants.SpeciesId;
import org.leafward.register.BedId;
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
 * @param area of the bed or above the roots, m² or with its unit
 * @param calliper thickness of one trunk, mm or with its unit
 * @param pot volume of one pot, l or with its unit
 * @param raisedIn where it stands before it goes out
 * @param lampMicromoles light of the lamps, µmol/m²s
 * @param lampHours hours a day that the lamps are on
 * @param bed identifier of the bed in which it stands; none when left out
 */
record PlantingRequest(@Schema(requiredMode = RequiredMode.REQUIRED) @Nullable String species,
		@Schema(requiredMode = RequiredMode.REQUIRED, maxLength = 100) @Nullable String label,
		@Schema(types = "integer", format = "int32", minimum = "1", maximum = "100000") @Nullable String count,
		@Schema(types = "string", format = "date", requiredMode = RequiredMode.REQUIRED) @Nullable String plantedOn,
		@Nullable String placement, @Nullable Boolean wintersIndoors, @Nullable Boolean saltExposed, @Schema(types = {
				"number", "string" }, example = "130 sq ft") @Nullable String area,
		@Schema(types = { "number", "string" }, example = "2 in") @Nullable String calliper,
		@Schema(types = { "number", "string" }, example = "5 gal") @Nullable String pot, @Nullable String raisedIn,
		@Schema(types = "number") @Nullable String lampMicromoles, @Schema(types = "number") @Nullable String lampHours,
		@Schema(types = "string", format = "uuid") @Nullable String bed){

	/** The same of another species. */
	PlantingRequest of(String other) {
		return new PlantingRequest(other, this.label, this.count, this.plantedOn, this.placement, this.wintersIndoors,
				this.saltExposed, this.area, this.calliper, this.pot, this.raisedIn, this.lampMicromoles,
				this.lampHours, this.bed);
	}

	NewPlanting toPlanting() {
		Findings all = new Findings();
		Supplier<SpeciesId> kind = all.read(() -> new SpeciesId(Given.text("species", this.species)));
		Supplier<String> name = all.read(() -> Given.text("label", this.label));
		Supplier<Integer> number = all.read(() -> Given.whole("count", SiteRequest.or(this.count, "1")));
		Supplier<LocalDate> planted = all.read(() -> Given.date("plantedOn", this.plantedOn));
		Supplier<Placement> roots = all
			.read(() -> Given.word("placement", SiteRequest.or(this.placement, "ground"), Placement.class));
		Supplier<SizeRequest.Read> size = all.read(() -> new SizeRequest(this.area, this.calliper, this.pot,
				this.raisedIn, this.lampMicromoles, this.lampHours)
			.read());
		Supplier<Optional<BedId>> part = all.read(() -> BedForm.id("bed", this.bed));
		return all.give(() -> new NewPlanting(kind.get(), name.get(), number.get(), planted.get(), roots.get(),
				Boolean.TRUE.equals(this.wintersIndoors), Boolean.TRUE.equals(this.saltExposed), size.get().size(),
				size.get().raised(), part.get().orElse(null)));
	}

}
