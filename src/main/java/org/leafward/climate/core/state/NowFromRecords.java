package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.GroundReading;
import org.leafward.climate.PlaceDay;
import org.leafward.climate.PlaceNow;
import org.leafward.climate.WaterBalance;
import org.leafward.climate.WaterBed;
import org.leafward.climate.WaterView;
import org.leafward.climate.WeatherSeries;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.SoilTemperature;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.water.BedBalance;
import org.leafward.climate.core.water.NearStation;
import org.leafward.climate.core.water.PlaceWeather;
import org.leafward.measure.GeoPoint;

/** Draws up what is known of a place on a day from the records of its stations. */
public final class NowFromRecords {

	/** Days of water that are shown. */
	private static final int WATER_DAYS = 14;

	/** Days before today that are looked at. */
	public static final int DAYS = WaterBalance.RUN_IN_DAYS + WATER_DAYS;

	private static final String SOIL = "loam";

	private final GeoPoint point;

	private final LocalDate today;

	private final List<NearStation> stations;

	private NowFromRecords(GeoPoint point, LocalDate today, List<NearStation> stations) {
		this.point = point;
		this.today = today;
		this.stations = stations;
	}

	/**
	 * Draws it up; days from today on in the records don't count.
	 * @param point the place
	 * @param today the day there
	 * @param stations its stations, nearest first
	 * @param forecast today and days after it
	 * @return what is known
	 */
	public static PlaceNow of(GeoPoint point, LocalDate today, List<NearStation> stations, List<PlaceDay> forecast) {
		return new NowFromRecords(point, today, stations).draw(forecast);
	}

	private PlaceNow draw(List<PlaceDay> forecast) {
		LocalDate from = this.today.minusDays(DAYS);
		WeatherSeries series = PlaceWeather.of(this.point, this.stations, from, this.today.minusDays(1));
		List<PlaceDay> observed = new ArrayList<>(DAYS);
		for (WeatherSeries.Day day : series.days()) {
			observed.add(new PlaceDay(day.date(), day.minimum(), day.maximum(), day.rain(), null,
					first(Element.SNWD, day.date(), 1), first(Element.AWND, day.date(), 10), null,
					soil(day.date(), true), soil(day.date(), false)));
		}
		WaterView water = BedBalance.of(WaterBed.shrubs(SOIL, Map.of()), series, this.today.minusDays(WATER_DAYS))
			.orElse(null);
		return new PlaceNow(this.point, this.today, observed,
				forecast.stream().filter((day) -> !day.day().isBefore(this.today)).toList(), ground(), water);
	}

	/** Of the nearest station that has it. */
	private @Nullable Double first(Element element, LocalDate day, double per) {
		for (NearStation station : this.stations) {
			short value = station.climate().record().value(element, day);
			if (value != DailyRecord.MISSING) {
				return value / per;
			}
		}
		return null;
	}

	private @Nullable Double soil(LocalDate day, boolean upper) {
		for (NearStation station : this.stations) {
			StationClimate climate = station.climate();
			SoilTemperature soil = upper ? climate.upperSoil() : climate.soil();
			float celsius = soil.celsius(day.toEpochDay());
			if (!Float.isNaN(celsius)) {
				return celsius - station.colderBy();
			}
		}
		return null;
	}

	private @Nullable GroundReading ground() {
		for (NearStation station : this.stations) {
			GroundReading reading = StationGround
				.read(station.climate().station(), station.climate().soil(), this.today, station.colderBy())
				.orElse(null);
			if (reading != null) {
				return reading;
			}
		}
		return null;
	}

}
