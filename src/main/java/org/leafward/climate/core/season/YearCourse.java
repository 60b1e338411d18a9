package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Microclimate;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.WeatherYear;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Gaps;
import org.leafward.climate.core.Quantiles;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonOutcome;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.water.DrySpell;
import org.leafward.climate.core.water.NearStation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

/**
 * Looks back on a calendar year in the record of a station. Its spring and its fall are
 * those that lie in the year: in the south the fall is that of the season before.
 */
public final class YearCourse {

	private static final TemperatureThreshold FREEZING = new TemperatureThreshold(32, true);

	/** Four days in ninety may lack rain, as in the sums of droughts. */
	private static final double MISSING_RAIN_ALLOWED = 4.0 / 90;

	private final int year;

	private final LocalDate from;

	private final LocalDate today;

	private final Hemisphere hemisphere;

	private YearCourse(int year, LocalDate today, Hemisphere hemisphere) {
		this.year = year;
		this.from = LocalDate.of(year, 1, 1);
		this.today = today;
		this.hemisphere = hemisphere;
	}

	/**
	 * The weather of a year.
	 * @param year the year, not later than today's
	 * @param today the day at the place; it is not over, so the day before is the last
	 * @param hemisphere where
	 * @param microclimate what the nights at the place are like
	 * @param near stations with any day of the year, nearest first
	 * @param base the temperature above which heat counts
	 * @return empty when none of them has both a temperature of the year and ten seasons
	 */
	public static Optional<WeatherYear> of(int year, LocalDate today, Hemisphere hemisphere, Microclimate microclimate,
			List<NearStation> near, TemperatureThreshold base) {
		YearCourse course = new YearCourse(year, today, hemisphere);
		for (NearStation one : near) {
			LocalDate last = course.lastTemperature(one.climate().record());
			Optional<SeasonPeriod> normals = one.climate()
				.period(hemisphere)
				.filter((period) -> period.seasons() >= Sample.FEWEST_SEASONS);
			if (last != null && normals.isPresent()) {
				return Optional.of(course.of(one, normals.get(), last, microclimate, near, base));
			}
		}
		return Optional.empty();
	}

	/** Last day of the year with both temperatures; null when there is none. */
	private @Nullable LocalDate lastTemperature(DailyRecord record) {
		for (LocalDate day = end(); !day.isBefore(this.from); day = day.minusDays(1)) {
			if (!Gaps.temperatureMissing(record, day.toEpochDay())) {
				return day;
			}
		}
		return null;
	}

	private LocalDate end() {
		LocalDate last = LocalDate.of(this.year, 12, 31);
		return last.isBefore(this.today) ? last : this.today.minusDays(1);
	}

	private WeatherYear of(NearStation near, SeasonPeriod normals, LocalDate last, Microclimate microclimate,
			List<NearStation> all, TemperatureThreshold base) {
		DailyRecord record = near.climate().record();
		TemperatureShift shift = new TemperatureShift(near.colderBy(), microclimate.minimumOffset());
		int missing = 0;
		for (LocalDate day = this.from; !day.isAfter(last); day = day.plusDays(1)) {
			missing += Gaps.temperatureMissing(record, day.toEpochDay()) ? 1 : 0;
		}
		HeatSoFar heat = HeatCourse.of(record, normals, shift, new Season(this.year, this.hemisphere), base, List.of(),
				List.of());
		boolean south = this.hemisphere == Hemisphere.SOUTH;
		return new WeatherYear(this.year, last, last.equals(LocalDate.of(this.year, 12, 31)), near.climate().station(),
				near.distance(), normals.from(), normals.to(), last.getDayOfYear(), missing,
				freeze(MarkerKind.LAST_SPRING_FREEZE, new Season(this.year, this.hemisphere), near, normals,
						microclimate),
				freeze(MarkerKind.FIRST_FALL_FREEZE, new Season(south ? this.year - 1 : this.year, this.hemisphere),
						near, normals, microclimate),
				extreme(record, Element.TMAX, last, shift.high()), extreme(record, Element.TMIN, last, shift.low()),
				heat(heat),
				(heat.latest() == null && heat.missing() == null)
						? "No day since %s has been observed.".formatted(SeasonExplanation.day(heat.from()))
						: heat.missing(),
				rain(all));
	}

	private static WeatherYear.@Nullable Heat heat(HeatSoFar heat) {
		HeatSoFar.Sum latest = heat.latest();
		if (latest == null) {
			return null;
		}
		HeatSoFar.Normal normal = heat.normalOn(latest.day());
		return new WeatherYear.Heat(heat.base(), heat.from(), latest.day(), latest.sum(),
				(normal != null) ? normal.middle() : null, (normal != null) ? normal.low() : null,
				(normal != null) ? normal.high() : null);
	}

	private WeatherYear.Freeze freeze(MarkerKind kind, Season season, NearStation near, SeasonPeriod normals,
			Microclimate microclimate) {
		double colderBy = near.colderBy() - kind.nightShare() * microclimate.minimumOffset();
		LocalDate last = near.climate()
			.record()
			.lastDay(Element.TMIN)
			.filter((day) -> day.isBefore(this.today))
			.orElse(this.today.minusDays(1));
		SeasonOutcome outcome = near.climate().freezeSoFar(kind, FREEZING, colderBy, season, last);
		boolean spring = kind == MarkerKind.LAST_SPRING_FREEZE;
		// A first freeze stays the first, a last one only when midsummer is near.
		boolean settled = spring ? !last.isBefore(season.midsummer().minusDays(1))
				: outcome.date() != null || !last.isBefore(season.fallSearchEnd());
		WeatherYear.Seen seen = switch (outcome.state()) {
			case DATED -> WeatherYear.Seen.OBSERVED;
			case WITHOUT -> settled ? WeatherYear.Seen.NONE : WeatherYear.Seen.NOT_YET;
			case LEFT_OUT -> WeatherYear.Seen.UNKNOWN;
		};
		Sample sample = near.climate().sample(kind, FREEZING, colderBy, this.hemisphere, normals);
		String undefined = sample.undefined().orElse(null);
		return new WeatherYear.Freeze(seen, outcome.date(), settled, date(sample, 50, season, undefined),
				date(sample, 10, season, undefined), date(sample, 90, season, undefined), undefined);
	}

	private static @Nullable LocalDate date(Sample sample, int percent, Season season, @Nullable String undefined) {
		return (undefined != null) ? null : SeasonDay.toDate(sample.quantile(percent), season.year());
	}

	private WeatherYear.@Nullable Extreme extreme(DailyRecord record, Element element, LocalDate last,
			double colderBy) {
		int sign = (element == Element.TMAX) ? 1 : -1;
		LocalDate found = null;
		int most = 0;
		for (LocalDate day = this.from; !day.isAfter(last); day = day.plusDays(1)) {
			short value = record.value(element, day);
			if (value != DailyRecord.MISSING && (found == null || sign * value > most)) {
				found = day;
				most = sign * value;
			}
		}
		return (found == null) ? null : new WeatherYear.Extreme(found, sign * most / 10.0 - colderBy);
	}

	/** The rain of the nearest station that hardly misses a day, else of the nearest. */
	private WeatherYear.@Nullable Rain rain(List<NearStation> all) {
		List<NearStation> with = all.stream().filter((one) -> lastRain(one.climate().record()) != null).toList();
		for (NearStation one : with) {
			WeatherYear.Rain rain = rain(one);
			int later = end().getDayOfYear() - rain.to().getDayOfYear();
			if (rain.missing() + later <= allowed(end().getDayOfYear())) {
				return rain;
			}
		}
		return with.isEmpty() ? null : rain(with.get(0));
	}

	private @Nullable LocalDate lastRain(DailyRecord record) {
		for (LocalDate day = end(); !day.isBefore(this.from); day = day.minusDays(1)) {
			if (record.value(Element.PRCP, day) != DailyRecord.MISSING) {
				return day;
			}
		}
		return null;
	}

	private static int allowed(int days) {
		return (int) Math.ceil(days * MISSING_RAIN_ALLOWED);
	}

	private WeatherYear.Rain rain(NearStation near) {
		DailyRecord record = near.climate().record();
		LocalDate to = lastRain(record);
		if (to == null) {
			throw new IllegalArgumentException(near.climate().station().name() + " has no rain of the year");
		}
		double[] days = new double[to.getDayOfYear()];
		double sum = 0;
		int missing = 0;
		for (int i = 0; i < days.length; i++) {
			short value = record.value(Element.PRCP, this.from.plusDays(i));
			days[i] = (value == DailyRecord.MISSING) ? Double.NaN : value / 10.0;
			sum += (value == DailyRecord.MISSING) ? 0 : value / 10.0;
			missing += (value == DailyRecord.MISSING) ? 1 : 0;
		}
		double[] past = pastRain(record, near.climate().period(this.hemisphere).orElse(null), to);
		String why = (past.length < Sample.FEWEST_SEASONS)
				? "Fewer than %d past years are complete enough to say what is normal.".formatted(Sample.FEWEST_SEASONS)
				: (missing > allowed(days.length)) ? "Too many days are missing to compare it with past years." : null;
		boolean known = why == null;
		return new WeatherYear.Rain(near.climate().station(), near.distance(), to, sum, missing,
				known ? Quantiles.type7(past, 0.5) : null, known ? Quantiles.type7(past, 0.1) : null,
				known ? Quantiles.type7(past, 0.9) : null, past.length, why, driest(days));
	}

	/**
	 * Sums of the same days of past years, sorted; few missing days count as the mean.
	 */
	private double[] pastRain(DailyRecord record, @Nullable SeasonPeriod normals, LocalDate to) {
		List<Double> sums = new ArrayList<>();
		int first = (normals != null) ? normals.from() : this.year - SeasonPeriod.NORMAL;
		int latest = (normals != null) ? normals.to() : this.year - 1;
		for (int past = first; past <= latest; past++) {
			if (past == this.year) {
				continue;
			}
			int known = 0;
			double sum = 0;
			// 29 February becomes the 28th in other years.
			LocalDate last = to.withYear(past);
			for (LocalDate day = LocalDate.of(past, 1, 1); !day.isAfter(last); day = day.plusDays(1)) {
				short value = record.value(Element.PRCP, day);
				known += (value == DailyRecord.MISSING) ? 0 : 1;
				sum += (value == DailyRecord.MISSING) ? 0 : value / 10.0;
			}
			int days = last.getDayOfYear();
			if (known > 0 && days - known <= allowed(days)) {
				sums.add(sum * days / known);
			}
		}
		double[] sorted = sums.stream().mapToDouble(Double::doubleValue).toArray();
		Arrays.sort(sorted);
		return sorted;
	}

	private WeatherYear.@Nullable Spell driest(double[] days) {
		int[] lengths = DrySpell.lengths(days);
		int longest = 0;
		for (int i = 0; i < lengths.length; i++) {
			longest = (lengths[i] > lengths[longest]) ? i : longest;
		}
		if (lengths.length == 0 || lengths[longest] == 0) {
			return null;
		}
		LocalDate to = this.from.plusDays(longest);
		return new WeatherYear.Spell(to.minusDays(lengths[longest] - 1L), to, lengths[longest]);
	}

}
