package org.leafward.climate.core.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WeatherSeries;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.measure.GeoPoint;

/**
 * Lays the weather of a place together: each day both temperatures, and the wind with
 * them, from the nearest station that has both, moved to the height of the place; rain
 * from the nearest that has it, as it fell there.
 */
public final class PlaceWeather {

	/**
	 * Height of the instruments that GHCN-Daily takes wind from, m. The data don't tell;
	 * this is the standard height of WMO.
	 */
	static final double WIND_HEIGHT = 10;

	private PlaceWeather() {
	}

	/**
	 * The weather of a period.
	 * @param place the place
	 * @param stations its stations, nearest first
	 * @param from first day
	 * @param to last day, not before {@code from}
	 * @return the series
	 */
	public static WeatherSeries of(GeoPoint place, List<NearStation> stations, LocalDate from, LocalDate to) {
		ReferenceEt.Ground ground = new ReferenceEt.Ground(place.latitude(), place.elevationMetres(), Setting.INTERIOR);
		WeatherTally tally = new WeatherTally(stations.size());
		List<WeatherSeries.Day> days = new ArrayList<>();
		for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
			days.add(day(date, stations, ground, tally));
		}
		return new WeatherSeries(place, days, tally.explanation(stations, from, to));
	}

	private static WeatherSeries.Day day(LocalDate date, List<NearStation> stations, ReferenceEt.Ground ground,
			WeatherTally tally) {
		Double rain = rain(date, stations, tally);
		for (int at = 0; at < stations.size(); at++) {
			NearStation station = stations.get(at);
			WeatherDay weather = weather(date, station);
			if (weather != null) {
				ReferenceEt amount = ReferenceEt.of(weather, ground);
				tally.temperatures(at, amount);
				return new WeatherSeries.Day(date, weather.minimum(), weather.maximum(), rain, amount.millimetres(),
						amount.method().words(), Substitute.words(amount.substitutes()),
						station.climate().station().id());
			}
		}
		return new WeatherSeries.Day(date, null, null, rain, null, null, List.of(), null);
	}

	private static @Nullable WeatherDay weather(LocalDate date, NearStation station) {
		DailyRecord record = station.climate().record();
		short low = record.value(Element.TMIN, date);
		short high = record.value(Element.TMAX, date);
		if (low == DailyRecord.MISSING || high == DailyRecord.MISSING) {
			return null;
		}
		short wind = record.value(Element.AWND, date);
		return new WeatherDay(date.getDayOfYear(), low / 10.0 - station.colderBy(), high / 10.0 - station.colderBy(),
				null, null, (wind == DailyRecord.MISSING) ? null : new Wind(wind / 10.0, WIND_HEIGHT));
	}

	private static @Nullable Double rain(LocalDate date, List<NearStation> stations, WeatherTally tally) {
		for (int at = 0; at < stations.size(); at++) {
			short rain = stations.get(at).climate().record().value(Element.PRCP, date);
			if (rain != DailyRecord.MISSING) {
				tally.rain(at);
				return rain / 10.0;
			}
		}
		return null;
	}

}
