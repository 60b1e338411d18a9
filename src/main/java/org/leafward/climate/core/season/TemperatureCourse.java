package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.TemperatureSeason;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * Lays the minima and maxima of a season's year beside their means over past years. A
 * mean is taken over 15 days around the day, for single days scatter (our choice).
 */
public final class TemperatureCourse {

	private static final int EACH_SIDE = 7;

	private static final int YEAR = 365;

	private TemperatureCourse() {
	}

	/**
	 * First day of the year that is shown.
	 * @param season the season
	 * @return 1 January, in the south 1 July
	 */
	public static LocalDate from(Season season) {
		return LocalDate.of(season.year(), (season.hemisphere() == Hemisphere.NORTH) ? Month.JANUARY : Month.JULY, 1);
	}

	/**
	 * The course of a year.
	 * @param record the station's record
	 * @param normals the past seasons; the season itself is passed over
	 * @param shift how the place differs from the station
	 * @param season the season
	 * @return every day of the year
	 */
	public static TemperatureSeason of(DailyRecord record, SeasonPeriod normals, TemperatureShift shift,
			Season season) {
		double[] lows = means(record, Element.TMIN, normals, season);
		double[] highs = means(record, Element.TMAX, normals, season);
		LocalDate from = from(season);
		long last = Observed.last(record).map(LocalDate::toEpochDay).orElse(Long.MIN_VALUE);
		List<TemperatureSeason.Day> days = new ArrayList<>();
		int missing = 0;
		for (LocalDate day = from; day.isBefore(from.plusYears(1)); day = day.plusDays(1)) {
			Double low = value(record, Element.TMIN, day, shift.low());
			Double high = value(record, Element.TMAX, day, shift.high());
			missing += ((low == null || high == null) && day.toEpochDay() <= last) ? 1 : 0;
			int at = (int) ChronoUnit.DAYS.between(from, day) % YEAR;
			days.add(new TemperatureSeason.Day(day, low, high, mean(lows[at], shift.low()),
					mean(highs[at], shift.high())));
		}
		return new TemperatureSeason(days, missing);
	}

	private static @Nullable Double value(DailyRecord record, Element element, LocalDate day, double colderBy) {
		short value = record.value(element, day);
		return (value == DailyRecord.MISSING) ? null : value / 10.0 - colderBy;
	}

	private static @Nullable Double mean(double tenths, double colderBy) {
		return Double.isNaN(tenths) ? null : tenths / 10 - colderBy;
	}

	private static double[] means(DailyRecord record, Element element, SeasonPeriod normals, Season season) {
		double[] sums = new double[YEAR];
		int[] counts = new int[YEAR];
		for (int year = normals.from(); year <= normals.to(); year++) {
			long begin = from(new Season(year, season.hemisphere())).toEpochDay();
			for (int i = 0; i < YEAR && year != season.year(); i++) {
				short value = record.value(element, begin + i);
				if (value != DailyRecord.MISSING) {
					sums[i] += value;
					counts[i]++;
				}
			}
		}
		double[] means = new double[YEAR];
		for (int i = 0; i < YEAR; i++) {
			double sum = 0;
			int count = 0;
			for (int away = -EACH_SIDE; away <= EACH_SIDE; away++) {
				int at = Math.floorMod(i + away, YEAR);
				sum += sums[at];
				count += counts[at];
			}
			means[i] = (count == 0) ? Double.NaN : sum / count;
		}
		return means;
	}

}
