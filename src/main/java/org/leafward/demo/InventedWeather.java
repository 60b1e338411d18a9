package org.leafward.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ObservedDay;

/**
 * Makes up daily weather that behaves like that of a cool-temperate inland region: a
 * yearly wave of temperature, spells that last some days and are shared by the whole
 * region, wet days that follow wet days, snow that lies and melts. The same seed gives
 * the same record on any machine. Minima and maxima are whole degrees Fahrenheit and kept
 * as tenths of a degree Celsius, as United States records are.
 */
final class InventedWeather {

	private static final LocalDate FIRST = LocalDate.of(1995, 1, 1);

	/** Share of one day's departure from the season's mean that is left the next day. */
	private static final double PERSISTENCE = 0.72;

	/** How much of a spell a station shares with the region; the rest is its own. */
	private static final double SHARED = 0.94;

	/** One value in three hundred is missing, so that gaps are seen. */
	private static final double MISSING = 1 / 300.0;

	private final long seed;

	InventedWeather(long seed) {
		this.seed = seed;
	}

	/**
	 * What makes one station different from the next.
	 *
	 * @param mean yearly mean temperature, °C
	 * @param amplitude half the difference between the warmest and the coldest time of
	 * the year, °C
	 * @param coldestDay day of the year around which it is coldest
	 * @param nightChill factor on the fall of temperature in clear nights; above 1 in
	 * hollows
	 * @param wind mean wind speed, m/s
	 */
	record Character(double mean, double amplitude, double coldestDay, double nightChill, double wind) {
	}

	/**
	 * The record of one station.
	 * @param number of the station, from 0; gives it noise of its own
	 * @param character what it is like
	 * @param last last day; an earlier one gives the beginning of the same record
	 * @return every day from 1995 on
	 */
	List<ObservedDay> record(int number, Character character, LocalDate last) {
		SplittableRandom region = new SplittableRandom(this.seed);
		SplittableRandom own = new SplittableRandom(this.seed * 31 + number + 1);
		List<ObservedDay> days = new ArrayList<>();
		double regionalSpell = 0;
		double ownSpell = 0;
		boolean wet = false;
		double snow = 0;
		for (LocalDate day = FIRST; !day.isAfter(last); day = day.plusDays(1)) {
			double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - character.coldestDay()) / 365.25);
			double width = 3.9 + 1.1 * wave;
			double step = Math.sqrt(1 - PERSISTENCE * PERSISTENCE);
			regionalSpell = PERSISTENCE * regionalSpell + step * normal(region);
			ownSpell = PERSISTENCE * ownSpell + step * normal(own);
			wet = region.nextDouble() < (wet ? 0.45 : 0.25);
			double amount = wet ? -Math.log(1 - region.nextDouble()) * (7 - 3 * wave) * (0.7 + 0.6 * own.nextDouble())
					: 0;
			double mean = character.mean() - character.amplitude() * wave
					+ width * (SHARED * regionalSpell + (1 - SHARED) * 3 * ownSpell);
			double half = Math.max(1.5, (wet ? 3.6 : 6.1) * (wet ? 1 : character.nightChill()) + 0.9 * normal(own));
			snow = snow(snow, mean, amount);
			double wind = character.wind() * Math.exp(0.35 * normal(own) - 0.06);
			days.add(new ObservedDay(day, known(own, wholeFahrenheit(mean - half)),
					known(own, wholeFahrenheit(mean + half)), known(own, (int) Math.round(amount * 10)),
					known(own, (int) Math.round(snow)), known(own, (int) Math.round(wind * 10))));
		}
		return days;
	}

	/**
	 * Snow depth, mm: a tenth of a metre for each 10 mm of water that falls as snow, 8 mm
	 * a day lost for each degree.
	 */
	private static double snow(double depth, double mean, double amount) {
		return (mean < 0.5) ? depth * 0.985 + amount * 10 : Math.max(0, depth - 8 * mean - amount);
	}

	private static @Nullable Integer known(SplittableRandom random, int value) {
		return (random.nextDouble() < MISSING) ? null : value;
	}

	private static int wholeFahrenheit(double celsius) {
		long fahrenheit = Math.round(celsius * 9 / 5 + 32);
		return (int) Math.round((fahrenheit - 32) * 50 / 9.0);
	}

	/** A standard normal value by the method of Box and Muller (1958). */
	private static double normal(SplittableRandom random) {
		double u = 1 - random.nextDouble();
		return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
	}

}
