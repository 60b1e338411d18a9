package org.leafward.climate.core.light;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.GeoPoint;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Where the sun stands, from the library commons-suncalc; the only class that knows it.
 *
 * @param azimuth degrees clockwise from north, 0 to 360
 * @param altitude of the sun's centre over the horizon, without refraction, degrees
 * @param apparentAltitude the same as the eye sees it, with refraction, degrees
 */
public record SunPosition(double azimuth, double altitude, double apparentAltitude) {

	/**
	 * The position at an instant.
	 * @param point the place; its height counts too little to matter
	 * @param instant when
	 * @return the position, good to about 0.02°
	 */
	public static SunPosition at(GeoPoint point, Instant instant) {
		org.shredzone.commons.suncalc.SunPosition sun = org.shredzone.commons.suncalc.SunPosition.compute()
			.on(instant)
			.at(point.latitude(), point.longitude())
			.execute();
		return new SunPosition(sun.getAzimuth(), sun.getTrueAltitude(), sun.getAltitude());
	}

	/**
	 * The declination of the sun, which is its altitude at the north pole.
	 * @param instant when
	 * @return degrees north, good to about 0.02°
	 */
	public static double declination(Instant instant) {
		return at(new GeoPoint(90, 0, 0), instant).altitude();
	}

	/**
	 * Sunrise and sunset of a day of the calendar at a place, over a level horizon at sea
	 * level: upper edge of the sun, with refraction.
	 * @param point the place
	 * @param date the day of the zone's calendar, from midnight to midnight
	 * @param zone whose calendar
	 * @return the times, good to about a minute
	 */
	public static Day day(GeoPoint point, LocalDate date, ZoneId zone) {
		SunTimes times = SunTimes.compute()
			.on(date)
			.timezone(zone)
			.at(point.latitude(), point.longitude())
			.oneDay()
			.execute();
		return new Day(times.getRise(), times.getSet(), times.getNoon(), times.isAlwaysUp(), times.isAlwaysDown());
	}

	/**
	 * The sun's day.
	 *
	 * @param rise sunrise, null when there is none on that day
	 * @param set sunset, null when there is none on that day
	 * @param noon when the sun is highest, null when that isn't on that day
	 * @param alwaysUp whether the sun stays up all day
	 * @param alwaysDown whether it stays down all day
	 */
	public record Day(@Nullable ZonedDateTime rise, @Nullable ZonedDateTime set, @Nullable ZonedDateTime noon,
			boolean alwaysUp, boolean alwaysDown) {
	}

}
