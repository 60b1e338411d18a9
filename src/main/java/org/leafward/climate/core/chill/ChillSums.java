package org.leafward.climate.core.chill;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Gaps;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * The chill of the winter before a season, from daily minima and maxima.
 * <p>
 * It begins on 1 September for the dynamic and the Utah model and on 1 November for chill
 * hours (University of California Cooperative Extension), and ends with February (common
 * practice); in the south half a year later. Utah units count from the day on which their
 * sum is lowest (from memory of Richardson's own rule), for warm days of fall are
 * negative.
 *
 * @param hoursTo45 hours at or below 45 °F
 * @param hours32To45 hours from 32 to 45 °F
 * @param utah units of {@link UtahModel}, 0 or more
 * @param portions of {@link DynamicModel}
 * @param missing days whose minimum or maximum was missing and bridged, 0 to 10
 */
public record ChillSums(int hoursTo45, int hours32To45, double utah, double portions, int missing) {

	/** Bridged days that a winter may have; more than that leave it out. */
	public static final int MISSING_ALLOWED = 10;

	/**
	 * The first day of the winter before a season.
	 * @param season whose spring ends the winter
	 * @return 1 September, in the south 1 March
	 */
	public static LocalDate begin(Season season) {
		return (season.hemisphere() == Hemisphere.NORTH) ? LocalDate.of(season.year() - 1, Month.SEPTEMBER, 1)
				: LocalDate.of(season.year(), Month.MARCH, 1);
	}

	/**
	 * The last day of the winter before a season.
	 * @param season whose spring ends the winter
	 * @return the last day of February, in the south 31 August
	 */
	public static LocalDate end(Season season) {
		return begin(season).plusMonths(6).minusDays(1);
	}

	/**
	 * The sums of the winter before a season.
	 * @param record the station's record
	 * @param season whose spring ends the winter
	 * @param daylight hours from sunrise to sunset on a date, 0 to 24
	 * @return empty when more than ten days, or more than five in a row, are missing
	 */
	public static Optional<ChillSums> before(DailyRecord record, Season season, ToDoubleFunction<LocalDate> daylight) {
		return until(record, season, daylight, TemperatureShift.height(0), end(season));
	}

	/**
	 * The sums of the winter before a season up to a day, at a place that may be colder
	 * than the station.
	 * @param record the station's record
	 * @param season whose spring ends the winter
	 * @param daylight hours from sunrise to sunset on a date, 0 to 24
	 * @param shift how the place differs from the station
	 * @param last last day that counts; the minimum of the day after it is needed. Days
	 * after the winter don't count
	 * @return empty when more than ten days, or more than five in a row, are missing
	 */
	public static Optional<ChillSums> until(DailyRecord record, Season season, ToDoubleFunction<LocalDate> daylight,
			TemperatureShift shift, LocalDate last) {
		return until(record, season, daylight, shift, List.of(last)).get(0);
	}

	/**
	 * The same up to several days, in one way through the winter.
	 * @param record the station's record
	 * @param season whose spring ends the winter
	 * @param daylight hours from sunrise to sunset on a date, 0 to 24
	 * @param shift how the place differs from the station
	 * @param lasts last days that count, earlier ones first
	 * @return for each of the days; empty where it would be by itself
	 */
	public static List<Optional<ChillSums>> until(DailyRecord record, Season season,
			ToDoubleFunction<LocalDate> daylight, TemperatureShift shift, List<LocalDate> lasts) {
		LocalDate begin = begin(season);
		LocalDate end = end(season);
		LocalDate hoursBegin = begin.plusMonths(2);
		Running running = new Running();
		int missing = 0;
		List<Optional<ChillSums>> sums = new ArrayList<>();
		LocalDate date = begin;
		for (LocalDate last : lasts) {
			boolean whole = sums.isEmpty() || sums.get(sums.size() - 1).isPresent();
			for (; whole && !date.isAfter(last) && !date.isAfter(end); date = date.plusDays(1)) {
				long day = date.toEpochDay();
				missing += Gaps.temperatureMissing(record, day) ? 1 : 0;
				double[] hours = HourlyTemperature.of(day(record, day - 1, shift), day(record, day, shift),
						low(record, day + 1, shift), daylight.applyAsDouble(date));
				whole = missing <= MISSING_ALLOWED && !Double
					.isNaN(hours[0] + hours[HourlyTemperature.HOURS / 2] + hours[HourlyTemperature.HOURS - 1]);
				if (whole) {
					running.add(hours, !date.isBefore(hoursBegin));
				}
			}
			sums.add(whole ? Optional.of(running.sums(missing)) : Optional.empty());
		}
		return sums;
	}

	private static HourlyTemperature.Day day(DailyRecord record, long day, TemperatureShift shift) {
		return new HourlyTemperature.Day(low(record, day, shift),
				Gaps.bridged(record, Element.TMAX, day) / 10 - shift.high());
	}

	private static double low(DailyRecord record, long day, TemperatureShift shift) {
		return Gaps.bridged(record, Element.TMIN, day) / 10 - shift.low();
	}

	private static final class Running {

		private final DynamicModel model = new DynamicModel();

		private int to45;

		private int from32;

		private double utah;

		private double lowestUtah;

		ChillSums sums(int missing) {
			return new ChillSums(this.to45, this.from32, this.utah - this.lowestUtah, this.model.portions(), missing);
		}

		void add(double[] hours, boolean countHours) {
			for (double hour : hours) {
				this.model.hour(hour);
				this.utah += UtahModel.units(hour);
				this.to45 += (countHours && ChillHours.UP_TO_45F.counts(hour)) ? 1 : 0;
				this.from32 += (countHours && ChillHours.FROM_32_TO_45F.counts(hour)) ? 1 : 0;
			}
			this.lowestUtah = Math.min(this.lowestUtah, this.utah);
		}

	}

}
