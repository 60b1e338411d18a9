package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Station;
import org.leafward.climate.StationForecast;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.water.NearStation;
import org.leafward.measure.Explanation;

/** Tells how a season so far came about. */
public final class SeasonExplanation {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

	private SeasonExplanation() {
	}

	/**
	 * A day with its year.
	 * @param day the day
	 * @return for example "24 Nov 2026"
	 */
	public static String day(LocalDate day) {
		return DAY.format(day);
	}

	/**
	 * The explanation.
	 * @param near the station that speaks for the place
	 * @param normals the seasons that are normal
	 * @param last last observed day
	 * @param microclimate what the nights of the place are like
	 * @param heat what came out
	 * @param forecast the newest forecast, or null
	 * @return the steps
	 */
	public static Explanation of(NearStation near, SeasonPeriod normals, LocalDate last, Microclimate microclimate,
			HeatSoFar heat, @Nullable StationForecast forecast) {
		Station station = near.climate().station();
		List<Explanation> steps = new ArrayList<>();
		steps.add(Explanation
			.of("Station",
					String.format(
							Locale.ROOT, "%s, %.0f km away%s", station.name(), near.distance(),
							station.invented() ? " (invented)" : ""))
			.withDetail(
					"Its record ends on %s. The nearest station whose record covers ten seasons speaks for the place; "
						.formatted(day(last)) + "height counts as distance too."));
		steps.add(Explanation.of("Moved to the height of the place", colder(near.colderBy()))
			.withSource("lapse rate of the ICAO standard atmosphere, 6.5 °C per kilometre"));
		steps.add(nights(new TemperatureShift(near.colderBy(), microclimate.minimumOffset()), microclimate));
		steps.add(Explanation.of("Degree-days", "mean of minimum and maximum above %s".formatted(heat.base().words()))
			.withDetail("Counted from %s; %d days with a missing temperature bridged so far."
				.formatted(day(heat.from()), heat.bridged()))
			.withSource("simple average, the method of most published sums"));
		steps.add(Explanation
			.of("Normal", "%d of the seasons %d to %d".formatted(heat.years(), normals.from(), normals.to()))
			.withDetail("The band holds eight years in ten, the line is the median. Seasons with more than ten missing "
					+ "days are left out."));
		steps.add(
				Explanation.of("What follows", "%d days of forecast, then as past years".formatted(heat.forecastDays()))
					.withDetail((forecast == null) ? "There is no forecast for this station."
							: forecast.stale() ? "The forecast is too old to lean on, so it isn't used."
									: "The forecast is from the source '%s'.".formatted(forecast.source())));
		return new Explanation("How the season so far came about",
				"record of %s to %s".formatted(station.name(), day(last)), null, null, steps);
	}

	private static Explanation nights(TemperatureShift shift, Microclimate microclimate) {
		if (microclimate.effects().isEmpty()) {
			return Explanation.of("Nights at the place", "as on open, level ground");
		}
		List<Explanation> effects = microclimate.effects()
			.stream()
			.map((one) -> Explanation.of(one.name(), colder(-one.celsius())).withSource(one.source()))
			.toList();
		return new Explanation("Nights at the place", colder(-shift.warmerNights()) + " than open, level ground",
				"Together minima are taken as %s than at the station, maxima as %s, and the mean of a day, which degree-days add up, as %s."
					.formatted(colder(shift.low()), colder(shift.high()), colder(shift.mean())),
				null, effects);
	}

	private static String colder(double celsius) {
		return String.format(Locale.ROOT, "%.1f °C %s", Math.abs(celsius), (celsius >= 0) ? "colder" : "warmer");
	}

}
