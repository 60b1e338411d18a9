package org.leafward.care.web;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;

/**
 * An observation as somebody gives it as JSON.
 *
 * @param planting on which planting; the whole site when left out
 * @param kind phase or event
 * @param name its name in config/phenology, for example bud-break
 * @param day on which; today at the site when left out
 */
record ObservationRequest(@Schema(types = "string", format = "uuid") @Nullable String planting,
		@Schema(allowableValues = {
				"phase", "event" }, requiredMode = RequiredMode.REQUIRED) @Nullable String kind,
		@Schema(requiredMode = RequiredMode.REQUIRED) @Nullable String name,
		@Schema(types = "string", format = "date") @Nullable String day){

	NewObservation toObservation(LocalDate today) {
		Findings all = new Findings();
		Supplier<Optional<PlantingId>> where = all
			.read(() -> Optional.ofNullable(Mine.planting("planting", this.planting)));
		Supplier<Observation.Kind> what = all.read(() -> Given.word("kind", this.kind, Observation.Kind.class));
		Supplier<String> which = all.read(() -> Given.text("name", this.name));
		Supplier<LocalDate> when = all
			.read(() -> (this.day == null || this.day.isBlank()) ? today : Given.date("day", this.day));
		return all.give(() -> new NewObservation(where.get().orElse(null), what.get(), which.get(), when.get()));
	}

}
