package org.leafward.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leafward.climate.core.comfort.HeatBand;
import org.leafward.climate.core.comfort.HeatIndex;
import org.leafward.climate.core.comfort.WindChill;

/**
 * Cautions for people who work outside, from a forecast: the heat index of the maximum
 * with the lowest humidity, which come together in the afternoon, and the wind chill of
 * the minimum with the day's mean wind.
 */
public final class WorkCautions {

	/**
	 * At and below this wind chill, °F, bare skin can freeze within 30 minutes (National
	 * Weather Service, wind chill chart of 2001, read in copies).
	 */
	public static final int FROSTBITE = -18;

	/** From here on cold deserves a word, °F; our choice, not a band of anybody's. */
	private static final int COLD = 0;

	private static final double MILES_PER_HOUR = 3600 / 1609.344;

	private static final double WARM = 80;

	private WorkCautions() {
	}

	/**
	 * A day that asks for care.
	 *
	 * @param day the day
	 * @param words a sentence or two
	 */
	public record Caution(LocalDate day, String words) {
	}

	/**
	 * The cautions of a forecast.
	 * @param days days of the forecast at its station
	 * @param today days before it are passed over
	 * @param colderBy how much colder the place is than the station, °C
	 * @return a line for each day that asks for care
	 */
	public static List<Caution> of(List<ForecastDay> days, LocalDate today, double colderBy) {
		List<Caution> cautions = new ArrayList<>();
		for (ForecastDay day : days) {
			if (!day.day().isBefore(today)) {
				heat(day, colderBy).ifPresent((words) -> cautions.add(new Caution(day.day(), words)));
				cold(day, colderBy).ifPresent((words) -> cautions.add(new Caution(day.day(), words)));
			}
		}
		return cautions;
	}

	private static Optional<String> heat(ForecastDay day, double colderBy) {
		if (day.maximum() == null) {
			return Optional.empty();
		}
		double high = fahrenheit(day.maximum(), colderBy);
		if (day.lowestHumidity() == null) {
			return (high < WARM) ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
					"%.0f °F in the shade; the forecast has no humidity, so the heat index isn't known. Take it "
							+ "for higher than that.",
					high));
		}
		double index = HeatIndex.fahrenheit(high, day.lowestHumidity());
		return HeatBand.of(index)
			.map((band) -> String.format(Locale.ROOT,
					"Heat index %.0f °F in the afternoon, %s; full sun can add 15 °F. %s", index, band.words(),
					HeatBand.work(index)));
	}

	private static Optional<String> cold(ForecastDay day, double colderBy) {
		if (day.minimum() == null || day.wind() == null) {
			return Optional.empty();
		}
		double low = fahrenheit(day.minimum(), colderBy);
		OptionalDouble chill = WindChill.fahrenheit(low, day.wind() / 10.0 * MILES_PER_HOUR);
		if (chill.isEmpty() || chill.getAsDouble() > COLD) {
			return Optional.empty();
		}
		String words = String.format(Locale.ROOT, "Wind chill %.0f °F around sunrise. ", chill.getAsDouble())
			.replace('-', '\u2212');
		return Optional.of(words
				+ ((chill.getAsDouble() <= FROSTBITE) ? "Bare skin can freeze within 30 minutes: cover it, or stay in."
						: "Dress for it, and mind ice where pipes have dripped."));
	}

	private static double fahrenheit(int tenths, double colderBy) {
		return (tenths / 10.0 - colderBy) * 1.8 + 32;
	}

}
