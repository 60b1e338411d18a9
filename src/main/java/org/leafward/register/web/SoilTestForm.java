package org.leafward.register.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.NewSoilTest;
import org.leafward.register.PlantingId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;

/**
 * A soil test as somebody types it from the report, in a form or as JSON; nothing is
 * checked yet.
 *
 * @param day on which the sample was taken
 * @param planting from whose bed; the whole site when left out
 * @param ph pH
 * @param ec electrical conductivity, dS/m
 * @param extract in which that was measured; saturated paste when left out
 * @param sar sodium adsorption ratio; this or the next
 * @param esp exchangeable sodium, %; it goes before the ratio
 * @param cec cation exchange capacity, meq/100 g; may be left out
 * @param depth of the sample, cm; 15 when left out
 * @param drainage how water leaves the bed; untested when left out
 * @param note for those who read it later
 */
record SoilTestForm(
		@Schema(types = "string", format = "date", requiredMode = RequiredMode.REQUIRED) @Nullable String day,
		@Schema(types = "string", format = "uuid") @Nullable String planting,
		@Schema(types = "number", format = "double", requiredMode = RequiredMode.REQUIRED) @Nullable String ph,
		@Schema(types = "number", format = "double", requiredMode = RequiredMode.REQUIRED) @Nullable String ec,
		@Schema(allowableValues = {
				"saturated-paste", "one-to-two" }) @Nullable String extract,
		@Schema(types = "number", format = "double") @Nullable String sar,
		@Schema(types = "number", format = "double") @Nullable String esp,
		@Schema(types = "number", format = "double") @Nullable String cec,
		@Schema(types = "number", format = "double") @Nullable String depth,
		@Schema(allowableValues = { "good", "slow", "none", "untested" }) @Nullable String drainage,
		@Schema(maxLength = 200) @Nullable String note){

	static SoilTestForm on(LocalDate day) {
		return new SoilTestForm(day.toString(), null, null, null, SiteAnswer.word(SoilExtract.SATURATED_PASTE), null,
				null, null, "15", SiteAnswer.word(SoilDrainage.UNTESTED), null);
	}

	NewSoilTest toTest() {
		Findings all = new Findings();
		Supplier<LocalDate> when = all.read(() -> Given.date("day", this.day));
		Supplier<Optional<PlantingId>> bed = all.read(() -> WateringRequest.plantingId("planting", this.planting));
		Supplier<SoilFigures> figures = all.read(this::figures);
		Supplier<Double> deep = all.read(() -> number("depth", this.depth, "cm").orElse(NewSoilTest.USUAL_DEPTH));
		Supplier<SoilDrainage> drains = all
			.read(() -> Given.word("drainage", SiteRequest.or(this.drainage, "untested"), SoilDrainage.class));
		return all.give(() -> new NewSoilTest(bed.get().orElse(null), when.get(), figures.get(), deep.get(),
				drains.get(), (this.note != null) ? this.note : ""));
	}

	private SoilFigures figures() {
		Findings all = new Findings();
		Supplier<Double> acidity = all.read(() -> Given.number("ph", this.ph, "units of pH"));
		Supplier<Double> salt = all.read(() -> Given.number("ec", this.ec, "dS/m, the same as mmhos/cm"));
		Supplier<SoilExtract> drawn = all
			.read(() -> Given.word("extract", SiteRequest.or(this.extract, "saturated-paste"), SoilExtract.class));
		Supplier<Optional<Double>> ratio = all.read(() -> number("sar", this.sar, "the unit of the report"));
		Supplier<Optional<Double>> percent = all.read(() -> number("esp", this.esp, "per cent"));
		Supplier<Optional<Double>> exchange = all.read(() -> number("cec", this.cec, "meq/100 g"));
		if (isBlank(this.sar) && isBlank(this.esp)) {
			all.check(() -> {
				throw new BadInput("sodium is missing", "sar", "fill in SAR or ESP from the report");
			});
		}
		return all.give(() -> new SoilFigures(acidity.get(), salt.get(), drawn.get(), ratio.get().orElse(null),
				percent.get().orElse(null), exchange.get().orElse(null)));
	}

	private static boolean isBlank(@Nullable String given) {
		return given == null || given.isBlank();
	}

	private static Optional<Double> number(String field, @Nullable String given, String unit) {
		return isBlank(given) ? Optional.empty() : Optional.of(Given.number(field, given, unit));
	}

}
