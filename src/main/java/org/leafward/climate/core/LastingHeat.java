package org.leafward.climate.core;

import java.lang.ref.WeakReference;
import java.time.MonthDay;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;

/**
 * The running sums of heat at the place that was asked for last, kept while there is
 * room: a place asks for many sums at once, and the next place lies at another height.
 * Safe for use by threads; two that ask for places at different heights push each other
 * out, to no other effect than the time.
 */
final class LastingHeat {

	/** A bound for the memory that odd bases and starts could eat. */
	private static final int MOST_COUNTS = 12;

	private final Map<Count, Kept> kept = new ConcurrentHashMap<>(2);

	/**
	 * The sums of a place.
	 * @param record gets the station's record, always the same one
	 * @param count how heat is counted
	 * @param place how cold the place is, and which seasons
	 * @return the sums
	 */
	HeatSums of(Supplier<DailyRecord> record, Count count, Place place) {
		Kept known = this.kept.get(count);
		HeatSums sums = (known != null && known.place.equals(place)) ? known.sums.get() : null;
		if (sums != null) {
			return sums;
		}
		HeatSums drawn = HeatSums.of(record.get().means(), place.period, place.hemisphere, count.base, count.start,
				place.limit / 100.0);
		if (known != null || this.kept.size() < MOST_COUNTS) {
			this.kept.put(count, new Kept(place, new WeakReference<>(drawn)));
		}
		return drawn;
	}

	/**
	 * How heat is counted.
	 *
	 * @param base the threshold
	 * @param start first day that counts
	 */
	record Count(TemperatureThreshold base, MonthDay start) {
	}

	/**
	 * Where and over which seasons.
	 *
	 * @param limit how much colder it is than at the station, hundredths of °C
	 * @param hemisphere whose seasons
	 * @param period which seasons
	 */
	record Place(int limit, Hemisphere hemisphere, SeasonPeriod period) {
	}

	private record Kept(Place place, WeakReference<@Nullable HeatSums> sums) {
	}

}
