package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.NewWatering;
import org.leafward.register.PlantingId;
import org.leafward.register.WaterUnit;

/**
 * A watering as somebody gives it, in a form or as JSON; nothing is checked yet.
 *
 * @param day on which
 * @param amount in the unit
 * @param unit mm, inches, litres or gallons; mm when left out
 * @param area m² for litres, square feet for gallons; not looked at for depths
 * @param planting whose bed; the whole site when left out
 * @param note for those who read it later
 */
record WateringRequest(
		@Schema(types = "string", format = "date", requiredMode = RequiredMode.REQUIRED) @Nullable String day,
		@Schema(types = "number", format = "double", requiredMode = RequiredMode.REQUIRED) @Nullable String amount,
		@Schema(allowableValues = {
				"mm", "inches", "litres", "gallons" }) @Nullable String unit,
		@Schema(types = "number", format = "double") @Nullable String area,
		@Schema(types = "string", format = "uuid") @Nullable String planting,
		@Schema(maxLength = 200) @Nullable String note){

	static WateringRequest on(LocalDate day) {
		return new WateringRequest(day.toString(), null, "mm", null, null, null);
	}

	NewWatering toWatering() {
		Findings all = new Findings();
		Supplier<LocalDate> when = all.read(() -> Given.date("day", this.day));
		Supplier<Double> given = all.read(() -> Given.number("amount", this.amount, "the unit beside it"));
		Supplier<WaterUnit> in = all.read(() -> Given.word("unit", SiteRequest.or(this.unit, "mm"), WaterUnit.class));
		Supplier<Double> over = all.read(this::readArea);
		Supplier<Optional<PlantingId>> bed = all.read(() -> plantingId("planting", this.planting));
		return all.give(() -> new NewWatering(bed.get().orElse(null), when.get(),
				in.get().millimetres(given.get(), over.get()), (this.note != null) ? this.note : ""));
	}

	private double readArea() {
		if (WaterUnit.LITRES.name().equalsIgnoreCase(this.unit)
				|| WaterUnit.GALLONS.name().equalsIgnoreCase(this.unit)) {
			double square = Given.number("area", this.area, "m² for litres, square feet for gallons");
			if (!(square > 0)) {
				throw new BadInput("area %s is not above 0".formatted(square), "area",
						"give the ground that was watered");
			}
			return square;
		}
		return 1;
	}

	/** Nothing stands for the whole site. */
	static Optional<PlantingId> plantingId(String field, @Nullable String text) {
		try {
			return (text == null || text.isBlank()) ? Optional.empty()
					: Optional.of(new PlantingId(UUID.fromString(text.strip())));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("'%s' is not a planting of this site".formatted(text), field,
					"choose one of its plantings, or none for the whole site");
		}
	}

}
