package org.leafward.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.SeasonProjection;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.chill.ChillSums;
import org.leafward.climate.core.season.ChillCourse;
import org.leafward.climate.core.season.HeatCourse;
import org.leafward.climate.core.season.Observed;
import org.leafward.climate.core.season.SeasonExplanation;
import org.leafward.climate.core.season.TemperatureCourse;
import org.leafward.climate.core.water.NearStation;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.springframework.stereotype.Service;

/**
 * How far a season has come at a place: heat, chill and temperatures beside the normal
 * ones, from the nearest station whose record covers ten seasons, moved to the height of
 * the place, minima also by what its lie does to its nights.
 */
@Service
public class SeasonSoFar {

	/** The base that most published sums have. */
	public static final TemperatureThreshold USUAL_BASE = new TemperatureThreshold(50, true);

	/** Sums whose dates are told. */
	public static final List<Integer> GOALS = List.of(100, 200, 500, 1000, 2000);

	private static final int LATE_DAYS = 7;

	private final LocalWeather weather;

	private final Forecasts forecasts;

	SeasonSoFar(LocalWeather weather, Forecasts forecasts) {
		this.weather = weather;
		this.forecasts = forecasts;
	}

	/**
	 * The season of a place.
	 * @param place the place
	 * @param season year of the season
	 * @param today the day at the place
	 * @return empty when no station within 150 km has a record of ten seasons
	 * @throws BadInput when the season is outside 1700 to 2198
	 */
	public Optional<SeasonView> of(Place place, int season, LocalDate today) {
		check(season);
		return OneVersion.of(() -> {
			List<Speaker> speakers = speakers(place.point());
			return speakers.isEmpty() ? Optional.empty()
					: Optional.of(view(place, speakers, new Season(season, place.point().hemisphere()), today));
		});
	}

	/**
	 * The chill of the winter before a season.
	 * @param place the place
	 * @param season year of the season
	 * @return empty when no station within 150 km has a record of ten seasons
	 * @throws BadInput when the season is outside 1700 to 2198
	 */
	public Optional<ChillSoFar> chill(Place place, int season) {
		check(season);
		return OneVersion.of(() -> speaker(place.point())
			.map((found) -> chill(place, found, new Season(season, place.point().hemisphere()))));
	}

	/**
	 * The season whose winter of chill is running on a day, or was the last to run.
	 * @param day the day
	 * @param hemisphere where
	 * @return year of the season
	 */
	public static int winterOn(LocalDate day, Hemisphere hemisphere) {
		int season = Season.containing(day, hemisphere).year();
		Season next = new Season(season + 1, hemisphere);
		return day.isBefore(ChillSums.begin(next)) ? season : season + 1;
	}

	private static void check(int season) {
		if (season < DailyRecord.FIRST_YEAR || season >= DailyRecord.LAST_YEAR) {
			throw new BadInput("season %d is outside %d to %d".formatted(season, DailyRecord.FIRST_YEAR,
					DailyRecord.LAST_YEAR - 1), "season", "give the year of its spring, for example 2027");
		}
	}

	/** A station that speaks for a place, with the seasons that are its normals. */
	record Speaker(NearStation near, SeasonPeriod normals) {
	}

	/** Ask, and use the record, within one {@link OneVersion}. */
	Optional<Speaker> speaker(GeoPoint place) {
		return speakers(place).stream().findFirst();
	}

	/** Up to three stations that could speak for a place, the one that does first. */
	private List<Speaker> speakers(GeoPoint place) {
		LocalDate first = LocalDate.of(DailyRecord.FIRST_YEAR, 1, 1);
		LocalDate last = LocalDate.of(DailyRecord.LAST_YEAR, 12, 31);
		return this.weather.near(place, first, last)
			.stream()
			.flatMap((near) -> near.climate()
				.period(place.hemisphere())
				.filter((period) -> period.seasons() >= Sample.FEWEST_SEASONS)
				.filter((period) -> Observed.last(near.climate().record()).isPresent())
				.map((period) -> new Speaker(near, period))
				.stream())
			.toList();
	}

	private static ChillSoFar chill(Place place, Speaker found, Season season) {
		return ChillCourse.of(found.near().climate().record(), found.normals(), shift(place, found.near()), season,
				place.point().latitude());
	}

	private static TemperatureShift shift(Place place, NearStation near) {
		return new TemperatureShift(near.colderBy(), place.microclimate().minimumOffset());
	}

	private SeasonView view(Place place, List<Speaker> speakers, Season season, LocalDate today) {
		Speaker found = speakers.get(0);
		StationClimate climate = found.near().climate();
		TemperatureShift shift = shift(place, found.near());
		StationForecast forecast = this.forecasts.of(climate.station().id()).orElse(null);
		HeatSoFar heat = HeatCourse.of(climate.record(), found.normals(), shift, season, USUAL_BASE, usable(forecast),
				GOALS);
		LocalDate last = Observed.last(climate.record()).orElseThrow();
		HeatSoFar.Sum latest = heat.latest();
		List<HeatAround> around = (latest == null) ? List.of()
				: speakers.stream().skip(1).map((other) -> around(place, other.near(), season, latest.day())).toList();
		return new SeasonView(season.year(), climate.station(), shift, last,
				recordEnd(climate.station(), last, TemperatureCourse.from(season), today), heat, around,
				TemperatureCourse.of(climate.record(), found.normals(), shift, season), forecast,
				SeasonExplanation.of(found.near(), found.normals(), last, place.microclimate(), heat, forecast));
	}

	private static HeatAround around(Place place, NearStation near, Season season, LocalDate day) {
		OptionalDouble sum = HeatCourse.sumBy(near.climate().record(), shift(place, near), season, USUAL_BASE, day);
		return new HeatAround(near.climate().station(), near.distance(),
				sum.isPresent() ? Double.valueOf(sum.getAsDouble()) : null);
	}

	private static @Nullable String recordEnd(Station station, LocalDate last, LocalDate seasonBegins,
			LocalDate today) {
		boolean before = last.isBefore(seasonBegins);
		if (!before && !last.isBefore(today.minusDays(LATE_DAYS))) {
			return null;
		}
		return "The record of %s ends on %s; what follows is the normal course.".formatted(station.name(),
				SeasonExplanation.day(last));
	}

	/** The days of a forecast that a sum can go on with: fresh, both temperatures. */
	private static List<SeasonProjection.ForecastDay> usable(@Nullable StationForecast forecast) {
		List<SeasonProjection.ForecastDay> days = new ArrayList<>();
		if (forecast == null || forecast.stale()) {
			return days;
		}
		LocalDate next = null;
		for (ForecastDay day : forecast.days()) {
			if (day.minimum() == null || day.maximum() == null || (next != null && !day.day().equals(next))) {
				return days;
			}
			days.add(new SeasonProjection.ForecastDay(day.day(), day.minimum() / 10.0, day.maximum() / 10.0));
			next = day.day().plusDays(1);
		}
		return days;
	}

}
