package org.leafward.climate;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.season.YearCourse;
import org.leafward.measure.BadInput;
import org.springframework.stereotype.Service;

/** Looks back on the weather of calendar years. */
@Service
public class WeatherYears {

	private final LocalWeather weather;

	WeatherYears(LocalWeather weather) {
		this.weather = weather;
	}

	/**
	 * The weather of a year at a place, from the nearest station that observed any of it
	 * and whose record covers ten seasons.
	 * @param place the place
	 * @param year the year
	 * @param today the day at the place
	 * @return empty when the year has not begun, or no station within 150 km can tell
	 * @throws BadInput when the year is outside 1700 to 2198
	 */
	public Optional<WeatherYear> of(Place place, int year, LocalDate today) {
		if (year < DailyRecord.FIRST_YEAR || year >= DailyRecord.LAST_YEAR) {
			throw new BadInput(
					"year %d is outside %d to %d".formatted(year, DailyRecord.FIRST_YEAR, DailyRecord.LAST_YEAR - 1),
					"year", "give a calendar year, for example 2026");
		}
		LocalDate first = LocalDate.of(year, 1, 1);
		if (!first.isBefore(today)) {
			return Optional.empty();
		}
		LocalDate last = LocalDate.of(year, 12, 31);
		LocalDate to = last.isBefore(today) ? last : today.minusDays(1);
		return OneVersion.of(() -> YearCourse.of(year, today, place.point().hemisphere(), place.microclimate(),
				this.weather.near(place.point(), first, to), SeasonSoFar.USUAL_BASE));
	}

}
