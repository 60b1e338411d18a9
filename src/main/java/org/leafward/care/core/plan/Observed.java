package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.register.PlantingId;

/** What people saw and logged at a site. */
public interface Observed {

	/** Nothing was logged. */
	Observed NOTHING = new Observed() {

		@Override
		public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
			return Optional.empty();
		}

		@Override
		public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
			return Optional.empty();
		}

		@Override
		public String log() {
			return "";
		}

	};

	/**
	 * The day on which a planting reached a phase.
	 * @param planting the planting
	 * @param phase name of the phase
	 * @param season year of the season
	 * @return empty when nobody logged it
	 */
	Optional<LocalDate> phase(PlantingId planting, String phase, int season);

	/**
	 * The latest day on which an event was logged for a planting or its whole site.
	 * @param planting the planting; null asks for the site alone
	 * @param event name of the event
	 * @param season year of the season
	 * @return empty when nobody logged it
	 */
	Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season);

	/**
	 * The days of a ramp that were told, up to today, and those that somebody left out
	 * ahead.
	 * @param planting the planting
	 * @param rule the ramp, {@code pack/rule}
	 * @param season year of the season
	 * @return by number
	 */
	default List<RampDay> ramp(PlantingId planting, String rule, int season) {
		return List.of();
	}

	/**
	 * All that was logged, in one text.
	 * @return the same text gives the same answers
	 */
	String log();

}
