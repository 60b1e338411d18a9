package org.leafward.register.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Watering;

/**
 * A watering as the API answers it.
 *
 * @param id identifier
 * @param site where
 * @param planting whose bed; null for the whole site
 * @param day on which
 * @param millimetres depth over the ground that was watered
 * @param note for those who read it later
 * @param by id of the person who entered it; null for an operator
 * @param enteredAt when
 */
record WateringAnswer(UUID id, UUID site, @Nullable UUID planting, LocalDate day, double millimetres, String note,
		@Nullable UUID by, Instant enteredAt) {

	static WateringAnswer of(Watering watering) {
		return new WateringAnswer(watering.id().value(), watering.site().value(),
				(watering.planting() != null) ? watering.planting().value() : null, watering.day(),
				watering.millimetres(), watering.note(), (watering.by() != null) ? watering.by().value() : null,
				watering.enteredAt());
	}

}
