package org.leafward.climate;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.core.water.BedBalance;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/** The water in the soil of a bed, from the weather around it. */
@Service
public class WaterBalance {

	/**
	 * Days that a balance runs before those that are asked for, so that its start, a full
	 * root zone, hardly matters any more.
	 */
	public static final int RUN_IN_DAYS = 180;

	private final LocalWeather weather;

	WaterBalance(LocalWeather weather) {
		this.weather = weather;
	}

	/**
	 * Checks a period before anything is looked up for it.
	 * @param from first day
	 * @param to last day
	 * @throws BadInput when it is no period or longer than three years
	 */
	public static void checkPeriod(LocalDate from, LocalDate to) {
		LocalWeather.check(from, to);
	}

	/**
	 * The balance of a bed.
	 * @param place where it lies, with its height
	 * @param bed soil, plants and waterings, also those of the 180 days before
	 * @param from first day
	 * @param to last day
	 * @return empty when no station within 150 km has temperatures of those days or the
	 * 180 before
	 * @throws BadInput when the bed or the period is out of bounds, or the period is
	 * longer than three years
	 */
	public Optional<WaterView> of(GeoPoint place, WaterBed bed, LocalDate from, LocalDate to) {
		LocalWeather.check(from, to);
		BedBalance.zone(bed);
		return BedBalance.of(bed, this.weather.unchecked(place, from.minusDays(RUN_IN_DAYS), to), from);
	}

	/**
	 * As {@link #of(GeoPoint, WaterBed, LocalDate, LocalDate)}, with stations that were
	 * read before.
	 * @param place where it lies, with its height
	 * @param surroundings the stations around it
	 * @param bed soil, plants and waterings, also those of the 180 days before
	 * @param from first day
	 * @param to last day
	 * @return empty when no station within 150 km has temperatures of those days or the
	 * 180 before
	 * @throws BadInput when the bed or the period is out of bounds, or the period is
	 * longer than three years
	 */
	public Optional<WaterView> of(GeoPoint place, Surroundings surroundings, WaterBed bed, LocalDate from,
			LocalDate to) {
		LocalWeather.check(from, to);
		BedBalance.zone(bed);
		return BedBalance.of(bed,
				this.weather.unchecked(place, surroundings.stations(), from.minusDays(RUN_IN_DAYS), to), from);
	}

}
