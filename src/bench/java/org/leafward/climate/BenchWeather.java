package org.leafward.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.measure.GeoPoint;

/**
 * Stations, places and thirty years of all five elements, made up from a seed: a yearly
 * wave, spells that last some days, one value in three hundred missing. Plausible enough
 * to make the engine do its usual work, no more.
 */
public final class BenchWeather {

	private static final LocalDate FIRST = LocalDate.of(1995, 1, 1);

	private static final LocalDate LAST = LocalDate.of(2024, 12, 31);

	private static final double PERSISTENCE = 0.72;

	private BenchWeather() {
	}

	public static Station station(int number) {
		return new Station(new StationId("ZZ%09d".formatted(number)), "Station " + number, point(number, 1), true);
	}

	/** A point of a region as large as the lower United States. */
	static GeoPoint point(int number, long seed) {
		SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
		return new GeoPoint(30 + 18 * random.nextDouble(), -120 + 45 * random.nextDouble(), 800 * random.nextDouble());
	}

	public static List<ObservedDay> days(int number) {
		return days(number, LAST);
	}

	/** As many years as reach up to a day. */
	public static List<ObservedDay> days(int number, LocalDate last) {
		SplittableRandom random = new SplittableRandom(number);
		GeoPoint point = point(number, 1);
		double mean = 28 - (point.latitude() - 20) - 0.0065 * point.elevationMetres();
		List<ObservedDay> days = new ArrayList<>();
		double spell = 0;
		double snow = 0;
		for (LocalDate day = FIRST; !day.isAfter(last); day = day.plusDays(1)) {
			double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - 18) / 365.25);
			spell = PERSISTENCE * spell + 4 * random.nextGaussian() * Math.sqrt(1 - PERSISTENCE * PERSISTENCE);
			double temperature = mean - 13 * wave + spell;
			double half = 3 + 3 * random.nextDouble();
			double rain = (random.nextDouble() < 0.3) ? 15 * random.nextDouble() : 0;
			snow = (temperature < 0) ? snow + 10 * rain : Math.max(0, snow - 8 * temperature);
			days.add(new ObservedDay(day, known(random, 10 * (temperature - half)),
					known(random, 10 * (temperature + half)), known(random, 10 * rain), known(random, snow),
					known(random, 20 + 30 * random.nextDouble())));
		}
		return days;
	}

	private static Integer known(SplittableRandom random, double value) {
		return (random.nextDouble() < 1 / 300.0) ? null : Integer.valueOf((int) Math.round(value));
	}

	static DailyRecord record(int number) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (ObservedDay day : days(number)) {
			set(builder, Element.TMIN, day.day(), day.minimum());
			set(builder, Element.TMAX, day.day(), day.maximum());
			set(builder, Element.PRCP, day.day(), day.precipitation());
			set(builder, Element.SNWD, day.day(), day.snowDepth());
			set(builder, Element.AWND, day.day(), day.wind());
		}
		return builder.build();
	}

	private static void set(DailyRecord.Builder builder, Element element, LocalDate day, Integer value) {
		if (value != null) {
			builder.set(element, day, value);
		}
	}

}
