package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;

/**
 * An estimate of the soil temperature under bare ground, at 10 cm (4 inches) or in a
 * layer above it, from the air alone.
 * <p>
 * After Zheng, Hunt and Running (1993), "A daily soil temperature model based on air
 * temperature and precipitation for continental applications", Climate Research
 * 2:183-191. The paper itself was not at hand: the step and its rates are taken at second
 * hand, as models that build on it state them; each day the soil goes a quarter of the
 * way to the mean air temperature, under snow a tenth. The eleven-day mean to start from
 * is from memory of the paper. Neither the heat given off by freezing water nor the
 * soil's texture and moisture are in it, so the ground freezes somewhat too early here. A
 * probe in the ground beats it.
 */
public final class SoilTemperature {

	/** Depth from which snow counts, mm (one inch); our choice. */
	static final int SNOW_DEPTH = 25;

	private static final int START_DAYS = 11;

	/** After so many days without air temperature the estimate starts anew. */
	private static final int LONGEST_GAP = 10;

	private final long firstDay;

	private final float[] celsius;

	private SoilTemperature(long firstDay, float[] celsius) {
		this.firstDay = firstDay;
		this.celsius = celsius;
	}

	/**
	 * Estimates the whole series of a station at 4 inches.
	 * @param record the station's record
	 * @return the series
	 */
	public static SoilTemperature estimate(DailyRecord record) {
		return estimate(record, SoilLayer.FOUR_INCHES);
	}

	/**
	 * Estimates the whole series of a station. A day whose snow depth is missing counts
	 * as open ground.
	 * @param record the station's record
	 * @param layer where in the soil
	 * @return the series
	 */
	public static SoilTemperature estimate(DailyRecord record, SoilLayer layer) {
		Optional<LocalDate> first = record.firstDay(Element.TMIN);
		Optional<LocalDate> last = record.lastDay(Element.TMIN);
		if (first.isEmpty() || last.isEmpty()) {
			return new SoilTemperature(0, new float[0]);
		}
		long begin = first.get().toEpochDay();
		float[] soil = new float[(int) (last.get().toEpochDay() - begin + 1)];
		Arrays.fill(soil, Float.NaN);
		double now = Double.NaN;
		int gap = 0;
		for (int index = 0; index < soil.length; index++) {
			double air = air(record, begin + index);
			gap = Double.isNaN(air) ? gap + 1 : 0;
			if (gap > LONGEST_GAP) {
				now = Double.NaN;
			}
			else if (gap == 0) {
				now = Double.isNaN(now) ? start(record, begin + index)
						: now + rate(record, begin + index, layer) * (air - now);
			}
			soil[index] = (float) now;
		}
		return new SoilTemperature(begin, soil);
	}

	private static double rate(DailyRecord record, long day, SoilLayer layer) {
		return layer.rate(record.value(Element.SNWD, day) >= SNOW_DEPTH);
	}

	private static double air(DailyRecord record, long day) {
		short low = record.value(Element.TMIN, day);
		short high = record.value(Element.TMAX, day);
		return (low == DailyRecord.MISSING || high == DailyRecord.MISSING) ? Double.NaN : (low + high) / 20.0;
	}

	private static double start(DailyRecord record, long day) {
		double sum = 0;
		int days = 0;
		for (int ahead = 0; ahead < START_DAYS; ahead++) {
			double air = air(record, day + ahead);
			if (!Double.isNaN(air)) {
				sum += air;
				days++;
			}
		}
		return sum / days;
	}

	/**
	 * The estimate of a day.
	 * @param epochDay days since 1970-01-01
	 * @return °C, NaN where it is not known
	 */
	public float celsius(long epochDay) {
		long index = epochDay - this.firstDay;
		return (index >= 0 && index < this.celsius.length) ? this.celsius[(int) index] : Float.NaN;
	}

}
