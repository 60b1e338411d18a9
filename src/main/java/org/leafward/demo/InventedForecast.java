package org.leafward.demo;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ObservedDay;

/** Writes made-up days down as a forecast in the plain CSV that the server reads. */
final class InventedForecast {

	/**
	 * Humidity in the afternoon, percent; one figure for all, for it is made up anyway.
	 */
	private static final int HUMIDITY = 55;

	private InventedForecast() {
	}

	static String of(List<ObservedDay> days, Instant issued) {
		StringBuilder csv = new StringBuilder("# issued: " + issued + "\n# invented for the demonstration\n"
				+ "date,min_c,max_c,precip_mm,wind_ms,min_rh_percent\n");
		for (ObservedDay day : days) {
			csv.append(day.day())
				.append(',')
				.append(tenths(day.minimum()))
				.append(',')
				.append(tenths(day.maximum()))
				.append(',')
				.append(tenths(day.precipitation()))
				.append(',')
				.append(tenths(day.wind()))
				.append(',')
				.append(HUMIDITY)
				.append('\n');
		}
		return csv.toString();
	}

	private static String tenths(@Nullable Integer value) {
		return (value == null) ? "" : String.format(Locale.ROOT, "%.1f", value / 10.0);
	}

}
