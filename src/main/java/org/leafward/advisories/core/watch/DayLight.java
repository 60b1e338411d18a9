package org.leafward.advisories.core.watch;

import org.jspecify.annotations.Nullable;
import org.leafward.climate.PlaceDay;
import org.leafward.climate.core.water.Radiation;
import org.leafward.climate.core.water.Setting;
import org.leafward.climate.core.water.SunGeometry;

/**
 * The light of a day beside that of a clear day, from the range of its temperatures
 * (FAO-56, equations 37 and 50): under clouds days stay cool and nights warm. It is an
 * estimate; a day on which air masses change fools it, so a day with rain never counts as
 * clear.
 */
final class DayLight {

	/** Rain from which a day is no clear one, mm; our choice. */
	private static final double WET = 1;

	/** The most that a day with rain has, percent; our choice. */
	private static final double WET_DAY = 50;

	private DayLight() {
	}

	/**
	 * The share of a day.
	 * @param day the day
	 * @param latitude degrees
	 * @param metres height above sea level
	 * @return percent of a clear day's light; null when its temperatures or its rain
	 * aren't known
	 */
	static @Nullable Double share(PlaceDay day, double latitude, double metres) {
		if (day.minimum() == null || day.maximum() == null || day.rain() == null) {
			return null;
		}
		double above = SunGeometry.extraterrestrial(latitude, day.day().getDayOfYear());
		double clear = Radiation.clearSky(above, metres);
		double share = 100 * Radiation.fromTemperatures(day.minimum(), day.maximum(), above, clear, Setting.INTERIOR)
				/ clear;
		return (day.rain() >= WET) ? Math.min(WET_DAY, share) : share;
	}

}
