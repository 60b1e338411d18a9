package org.leafward.register.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.SoilFigures;

/**
 * A soil test as the API answers it.
 *
 * @param id identifier
 * @param site where
 * @param planting from whose bed; null for the whole site
 * @param day on which the sample was taken
 * @param ph pH
 * @param ec electrical conductivity, dS/m
 * @param extract in which that was measured
 * @param sar sodium adsorption ratio, or null
 * @param esp exchangeable sodium, %, or null
 * @param cec cation exchange capacity, meq/100 g, or null
 * @param depth of the sample, cm
 * @param drainage how water leaves the bed
 * @param note for those who read it later
 * @param by id of the person who entered it; null for an operator
 * @param enteredAt when
 */
record SoilTestAnswer(UUID id, UUID site, @Nullable UUID planting, LocalDate day, double ph, double ec, String extract,
		@Nullable Double sar, @Nullable Double esp, @Nullable Double cec, double depth, String drainage, String note,
		@Nullable UUID by, Instant enteredAt) {

	static SoilTestAnswer of(KeptSoilTest test) {
		SoilFigures figures = test.figures();
		return new SoilTestAnswer(test.id().value(), test.site().value(),
				(test.planting() != null) ? test.planting().value() : null, test.day(), figures.acidity(),
				figures.conductivity(), SiteAnswer.word(figures.extract()), figures.sodiumRatio(),
				figures.sodiumPercent(), figures.exchange(), test.depthCentimetres(), SiteAnswer.word(test.drainage()),
				test.note(), (test.by() != null) ? test.by().value() : null, test.enteredAt());
	}

}
