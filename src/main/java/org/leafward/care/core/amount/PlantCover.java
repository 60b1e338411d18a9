package org.leafward.care.core.amount;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.leafward.amounts.Amount;
import org.leafward.amounts.cover.Cover;
import org.leafward.amounts.cover.CoverTonight;
import org.leafward.amounts.cover.NightSky;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Hurt;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.plants.SpeciesId;

/**
 * Covers for cold nights at a site.
 *
 * @param lowest what is forecast for a day at the site, °C
 */
public record PlantCover(Function<LocalDate, OptionalDouble> lowest) {

	/** Far outside what any forecast has. */
	private static final double COLDEST = -60;

	/**
	 * The cover for a night.
	 * @param hurt the temperature that hurts
	 * @param subject which planting
	 * @param window the days of the task; its night begins on the last of them
	 * @return empty when the forecast or the temperature isn't known
	 */
	public Optional<Amount> amount(Hurt hurt, Subject subject, DayWindow window) {
		SpeciesId species = (subject.species() != null) ? subject.species().id() : null;
		TemperatureThreshold harm = (species != null) ? hurt.of(species) : null;
		OptionalDouble low = this.lowest.apply(window.to().plusDays(1));
		if (harm == null || low.isEmpty() || low.getAsDouble() < COLDEST) {
			return Optional.empty();
		}
		// The forecast is carried to the site already.
		return Optional
			.of(CoverTonight.judge(low.getAsDouble(), 0, NightSky.UNKNOWN, harm.celsius(), EnumSet.allOf(Cover.class))
				.amount());
	}

}
