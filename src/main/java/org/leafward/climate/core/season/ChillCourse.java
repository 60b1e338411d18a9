package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ChillSoFar;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Quantiles;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.chill.ChillSums;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.Season;

/**
 * Lays the chill of a winter, as far as it has come, beside the medians of past winters.
 */
public final class ChillCourse {

	private ChillCourse() {
	}

	/**
	 * The course of the winter before a season.
	 * @param record the station's record
	 * @param normals the past seasons; the season itself is passed over
	 * @param shift how the place differs from the station
	 * @param season whose spring ends the winter
	 * @param latitude of the place, degrees north
	 * @return what is known; what isn't is said in words
	 */
	public static ChillSoFar of(DailyRecord record, SeasonPeriod normals, TemperatureShift shift, Season season,
			double latitude) {
		ToDoubleFunction<LocalDate> daylight = (date) -> SunGeometry.dayLength(latitude, date.getDayOfYear());
		LocalDate begin = ChillSums.begin(season);
		LocalDate end = ChillSums.end(season);
		// The night after the last day needs the next minimum.
		LocalDate last = record.lastDay(Element.TMIN)
			.flatMap((low) -> Observed.last(record).map((both) -> low.isAfter(both) ? both : both.minusDays(1)))
			.map((day) -> day.isBefore(end) ? day : end)
			.orElse(begin.minusDays(1));
		boolean begun = !last.isBefore(begin);
		ChillSoFar.Chill observed = begun
				? ChillSums.until(record, season, daylight, shift, last).map(ChillCourse::chill).orElse(null) : null;
		List<ChillSums> soFar = new ArrayList<>();
		List<ChillSums> whole = new ArrayList<>();
		for (int year = normals.from(); year <= normals.to(); year++) {
			Season then = new Season(year, season.hemisphere());
			if (year != season.year()) {
				LocalDate same = ChillSums.begin(then).plusDays(last.toEpochDay() - begin.toEpochDay());
				List<Optional<ChillSums>> sums = ChillSums.until(record, then, daylight, shift,
						List.of(begun ? same : ChillSums.begin(then).minusDays(1), ChillSums.end(then)));
				if (begun) {
					sums.get(0).ifPresent(soFar::add);
				}
				sums.get(1).ifPresent(whole::add);
			}
		}
		return new ChillSoFar(season.year(), begin, end, (observed != null) ? last : null, observed, medians(soFar),
				medians(whole), whole.size(), missing(begun, observed, whole.size()));
	}

	private static @Nullable String missing(boolean begun, ChillSoFar.@Nullable Chill observed, int years) {
		if (!begun) {
			return "No day of this winter has been observed.";
		}
		if (observed == null) {
			return "Too many days of this winter have no temperature to tell its chill.";
		}
		return (years < Sample.FEWEST_SEASONS) ? "Fewer than %d past winters are complete enough to say what is normal."
			.formatted(Sample.FEWEST_SEASONS) : null;
	}

	private static ChillSoFar.@Nullable Chill medians(List<ChillSums> sums) {
		return (sums.size() < Sample.FEWEST_SEASONS) ? null : new ChillSoFar.Chill(median(sums, ChillSums::hours32To45),
				median(sums, ChillSums::utah), median(sums, ChillSums::portions));
	}

	private static double median(List<ChillSums> sums, ToDoubleFunction<ChillSums> value) {
		double[] values = sums.stream().mapToDouble(value).toArray();
		Arrays.sort(values);
		return Quantiles.type7(values, 0.5);
	}

	private static ChillSoFar.Chill chill(ChillSums sums) {
		return new ChillSoFar.Chill(sums.hours32To45(), sums.utah(), sums.portions());
	}

}
