package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.leafward.climate.GroundReading;
import org.leafward.climate.Station;
import org.leafward.climate.core.GroundSearch;
import org.leafward.climate.core.SoilTemperature;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * Tells from the modelled soil of a station whether the ground of a place is frozen. It
 * is after five days in a row at or below freezing, until five in a row above 1.1 °C, the
 * same that date the markers of frozen and thawed ground.
 */
public final class StationGround {

	/** Soil that was last known so many days ago says nothing of today; our choice. */
	public static final int STALE_AFTER = 5;

	/** How far back either spell is looked for, days. */
	private static final int LOOK_BACK = 270;

	private StationGround() {
	}

	/**
	 * The reading of a day.
	 * @param station the station
	 * @param soil its soil at 4 inches
	 * @param today only days before it count
	 * @param colder what the place is colder than the station, °C
	 * @return empty when the soil of late, or that since the last spell, isn't known
	 */
	public static Optional<GroundReading> read(Station station, SoilTemperature soil, LocalDate today, double colder) {
		long last = today.toEpochDay() - 1;
		while (Float.isNaN(soil.celsius(last)) && last > today.toEpochDay() - STALE_AFTER) {
			last--;
		}
		int frozen = 0;
		int thawed = 0;
		for (long day = last; day > last - LOOK_BACK; day--) {
			double celsius = soil.celsius(day) - colder;
			if (Double.isNaN(celsius)) {
				return Optional.empty();
			}
			frozen = (celsius <= GroundSearch.FROZEN) ? frozen + 1 : 0;
			thawed = (celsius > GroundSearch.THAWED) ? thawed + 1 : 0;
			if (frozen == GroundSearch.DAYS || thawed == GroundSearch.DAYS) {
				return Optional
					.of(reading(station, LocalDate.ofEpochDay(last), soil.celsius(last) - colder, frozen > thawed));
			}
		}
		return Optional.empty();
	}

	private static GroundReading reading(Station station, LocalDate day, double celsius, boolean frozen) {
		String figure = String.format(Locale.ROOT, "%.1f °C", celsius).replace('-', '\u2212');
		return new GroundReading(day, frozen, Explanation.of("Ground at 4 inches", frozen ? "frozen" : "open")
			.withDetail("Estimated from the air at %s%s: %s on %s. Frozen after %d days at or below 0 °C, ".formatted(
					station.name(), station.invented() ? " (invented station)" : "", figure, DayWords.of(day),
					GroundSearch.DAYS) + "open again after as many above 1.1 °C. A probe in the ground beats it."));
	}

}
