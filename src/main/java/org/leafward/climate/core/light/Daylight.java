package org.leafward.climate.core.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Season;

/**
 * The time from sunrise to sunset, upper edge of the sun, with 34' of refraction over a
 * level horizon: the hour angle at which the sun's centre stands at -0.833°, as in the
 * calculator of NOAA's Global Monitoring Laboratory.
 */
public final class Daylight {

	/** Altitude of the sun's centre at sunrise and sunset, degrees. */
	private static final double HORIZON = -0.833;

	private static final double MINUTES = 24 * 60;

	private static final double HALF_TURN = 180;

	private Daylight() {
	}

	/**
	 * How long the day is.
	 * @param point the place; its height doesn't count
	 * @param day the day
	 * @return minutes, 0 in the polar night and 1440 in the polar day, good to about a
	 * minute
	 */
	public static double minutes(GeoPoint point, LocalDate day) {
		long fromNoon = Math.round(point.longitude() / HALF_TURN * MINUTES / 2 * 60);
		double declination = Math.toRadians(
				SunPosition.declination(day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC).minusSeconds(fromNoon)));
		double latitude = Math.toRadians(point.latitude());
		double cosine = (Math.sin(Math.toRadians(HORIZON)) - Math.sin(latitude) * Math.sin(declination))
				/ (Math.cos(latitude) * Math.cos(declination));
		return MINUTES / Math.PI * Math.acos(Math.max(-1, Math.min(1, cosine)));
	}

	/**
	 * First day after the winter solstice that is at least so long.
	 * @param point the place
	 * @param season the season, whose spring it is
	 * @param minutes how long
	 * @return empty when the shortest day is already that long, or the longest isn't
	 */
	public static Optional<LocalDate> lengthensTo(GeoPoint point, Season season, int minutes) {
		LocalDate summer = summerSolstice(season);
		LocalDate winter = summer.minusMonths(6);
		return (minutes(point, winter) >= minutes || minutes(point, summer) < minutes) ? Optional.empty()
				: Optional.of(first(point, winter, summer, minutes, true));
	}

	/**
	 * First day after the summer solstice that is no longer than so much.
	 * @param point the place
	 * @param season the season, whose fall it is
	 * @param minutes how long
	 * @return empty when the longest day is already that short, or the shortest isn't
	 */
	public static Optional<LocalDate> shortensTo(GeoPoint point, Season season, int minutes) {
		LocalDate summer = summerSolstice(season);
		LocalDate winter = summer.plusMonths(6);
		return (minutes(point, summer) <= minutes || minutes(point, winter) > minutes) ? Optional.empty()
				: Optional.of(first(point, summer, winter, minutes, false));
	}

	/** Between the two days the length only rises, or only falls. */
	private static LocalDate first(GeoPoint point, LocalDate before, LocalDate by, int minutes, boolean rising) {
		long low = before.toEpochDay();
		long high = by.toEpochDay();
		while (high - low > 1) {
			long middle = (low + high) / 2;
			double length = minutes(point, LocalDate.ofEpochDay(middle));
			if (rising ? length >= minutes : length <= minutes) {
				high = middle;
			}
			else {
				low = middle;
			}
		}
		return LocalDate.ofEpochDay(high);
	}

	/** 21 June, in the south 21 December; the true one is at most a day away. */
	private static LocalDate summerSolstice(Season season) {
		return season.midsummer().minusMonths(2).withDayOfMonth(21);
	}

}
