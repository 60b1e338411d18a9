package org.leafward.climate.core;

import java.lang.ref.WeakReference;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;

/**
 * The dates of sums of heat at the places that were asked for last, kept while there is
 * room. A place asks for many sums, mostly those that the place before it asked for, but
 * lies at another height; so all sums that were ever asked for are looked for together.
 * Safe for use by threads.
 */
final class LastingHeat {

	/** A bound for the memory that odd bases and starts could eat. */
	private static final int MOST_COUNTS = 12;

	/** A bound for the time that odd sums could eat; others are looked for alone. */
	private static final int MOST_SUMS = 200;

	/** Two threads may ask for two places, each with some counts. */
	private static final int MOST_DRAWN = 6;

	private static final int BYTES_OF_DRAWN = 250;

	private final Map<Count, int[]> sums = new ConcurrentHashMap<>(2);

	private final Map<Drawn, WeakReference<HeatSums>> drawn = new LinkedHashMap<>(4, 0.75f, true) {

		@Override
		protected boolean removeEldestEntry(Map.Entry<Drawn, WeakReference<HeatSums>> eldest) {
			return size() > MOST_DRAWN;
		}

	};

	/**
	 * The dates of a sum at a place.
	 * @param record gets the station's record, always the same one
	 * @param count how heat is counted
	 * @param place how cold the place is, and which seasons
	 * @param sum degree-days in the unit of the base
	 * @return the dates
	 */
	Sample of(Supplier<DailyRecord> record, Count count, Place place, int sum) {
		int[] known = this.sums.get(count);
		if (known == null || Arrays.binarySearch(known, sum) < 0) {
			remember(count, sum);
			return dates(draw(record, count, place, new int[] { sum }), sum);
		}
		Drawn key = new Drawn(count, place);
		HeatSums before = kept(key);
		Sample sample = (before != null) ? before.sample(sum) : null;
		if (sample != null) {
			return sample;
		}
		HeatSums all = draw(record, count, place, known);
		synchronized (this.drawn) {
			this.drawn.put(key, new WeakReference<>(all));
		}
		return dates(all, sum);
	}

	/**
	 * About how much memory is taken, without the dates, which go when there is no room.
	 * @return bytes
	 */
	long bytes() {
		synchronized (this.drawn) {
			return this.sums.values().stream().mapToLong((known) -> 100 + Integer.BYTES * known.length).sum()
					+ this.drawn.size() * (long) BYTES_OF_DRAWN;
		}
	}

	private @Nullable HeatSums kept(Drawn key) {
		synchronized (this.drawn) {
			WeakReference<HeatSums> known = this.drawn.get(key);
			return (known != null) ? known.get() : null;
		}
	}

	/** The next place is likely to ask for it, too. */
	private void remember(Count count, int sum) {
		if (this.sums.size() >= MOST_COUNTS && !this.sums.containsKey(count)) {
			return;
		}
		this.sums.merge(count, new int[] { sum }, (known, one) -> {
			int place = Arrays.binarySearch(known, sum);
			if (place >= 0 || known.length >= MOST_SUMS) {
				return known;
			}
			int[] more = Arrays.copyOf(known, known.length + 1);
			more[known.length] = sum;
			Arrays.sort(more);
			return more;
		});
	}

	private static HeatSums draw(Supplier<DailyRecord> record, Count count, Place place, int[] sums) {
		return HeatSums.of(record.get().means(), place.period, place.hemisphere, count.base, count.start,
				place.limit / 100.0, sums);
	}

	private static Sample dates(HeatSums drawn, int sum) {
		return Objects.requireNonNull(drawn.sample(sum), "every sum that is looked for has a sample");
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

	private record Drawn(Count count, Place place) {
	}

}
