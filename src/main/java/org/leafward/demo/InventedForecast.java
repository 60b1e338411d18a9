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
				+ "date,min_c,max_c,precip_mm,snow_mm,wind_ms,min_rh_percent\n");
		Integer depth = null;
		for (ObservedDay day : days) {
			csv.append(day.day())
				.append(',')
				.append(tenths(day.minimum()))
				.append(',')
				.append(tenths(day.maximum()))
				.append(',')
				.append(tenths(day.precipitation()))
				.append(',')
				.append(newSnow(depth, day.snowDepth()))
				.append(',')
				.append(tenths(day.wind()))
				.append(',')
				.append(HUMIDITY)
				.append('\n');
			depth = day.snowDepth();
		}
		return csv.toString();
	}

	/** What the depth grew by; nothing where that isn't known. */
	private static String newSnow(@Nullable Integer before, @Nullable Integer depth) {
		return (before == null || depth == null) ? "" : String.valueOf(Math.max(0, depth - before));
	}

	private static String tenths(@Nullable Integer value) {
		return (value == null) ? "" : String.format(Locale.ROOT, "%.1f", value / 10.0);
	}

}
