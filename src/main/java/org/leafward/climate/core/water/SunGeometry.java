package org.leafward.climate.core.water;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The sun as the evapotranspiration formulas need it. Source: FAO Irrigation and Drainage
 * Paper 56, chapter 3, by equation number. The declination of equation 24 is up to 1.2°
 * off in fall: fine here, too coarse for times of sunrise, for which there is
 * {@link org.leafward.climate.core.light.SunPosition}. Every method throws
 * {@link IllegalArgumentException} for a day outside 1 to 366 or a latitude outside -90
 * to 90°.
 */
public final class SunGeometry {

	/** MJ/m² per minute. */
	static final double SOLAR_CONSTANT = 0.0820;

	private static final double YEAR = 2 * Math.PI / 365;

	/** What hangs on the day alone is computed once for the 366 days. */
	private static final double[] INVERSE_DISTANCE = days((day) -> 1 + 0.033 * Math.cos(YEAR * day));

	private static final double[] DECLINATION = days((day) -> 0.409 * Math.sin(YEAR * day - 1.39));

	private SunGeometry() {
	}

	private static double[] days(IntToDoubleFunction formula) {
		return IntStream.rangeClosed(0, 366).mapToDouble(formula).toArray();
	}

	/**
	 * Inverse square of the relative distance to the sun, equation 23.
	 * @param day of the year
	 * @return about 1
	 */
	public static double inverseDistance(int day) {
		return INVERSE_DISTANCE[Bounds.day(day)];
	}

	/**
	 * Declination of the sun, equation 24.
	 * @param day of the year
	 * @return radians north
	 */
	public static double declination(int day) {
		return DECLINATION[Bounds.day(day)];
	}

	/**
	 * Hour angle of sunset, equation 25.
	 * @param latitude degrees north
	 * @param day of the year
	 * @return radians, 0 in the polar night and π in the polar day
	 */
	public static double sunsetAngle(double latitude, int day) {
		double cosine = -Math.tan(radians(latitude)) * Math.tan(declination(day));
		return Math.acos(Math.max(-1, Math.min(1, cosine)));
	}

	/**
	 * Hours of daylight from horizon to horizon of the sun's centre, without refraction,
	 * equation 34.
	 * @param latitude degrees north
	 * @param day of the year
	 * @return hours, 0 to 24
	 */
	public static double dayLength(double latitude, int day) {
		return 24 / Math.PI * sunsetAngle(latitude, day);
	}

	/**
	 * Radiation of a day above the atmosphere, equation 21.
	 * @param latitude degrees north
	 * @param day of the year
	 * @return MJ/m²
	 */
	public static double extraterrestrial(double latitude, int day) {
		double sunset = sunsetAngle(latitude, day);
		return between(latitude, day, -sunset, sunset);
	}

	/**
	 * Radiation above the atmosphere between two hour angles, equation 28; night counts
	 * nothing.
	 * @param latitude degrees north
	 * @param day of the year
	 * @param from hour angle, radians, morning is negative
	 * @param to hour angle, radians
	 * @return MJ/m² in the whole span, 0 when it is empty
	 */
	public static double extraterrestrial(double latitude, int day, double from, double to) {
		double sunset = sunsetAngle(latitude, day);
		return between(latitude, day, Math.max(from, -sunset), Math.min(to, sunset));
	}

	private static double between(double latitude, int day, double begin, double end) {
		if (end <= begin) {
			return 0;
		}
		double phi = radians(latitude);
		double delta = declination(day);
		double sines = (end - begin) * Math.sin(phi) * Math.sin(delta);
		double cosines = Math.cos(phi) * Math.cos(delta) * (Math.sin(end) - Math.sin(begin));
		return Math.max(0, 12 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance(day) * (sines + cosines));
	}

	/**
	 * What solar time is ahead of mean time, equations 32 and 33.
	 * @param day of the year
	 * @return hours
	 */
	public static double seasonalCorrection(int day) {
		double b = 2 * Math.PI * (Bounds.day(day) - 81) / 364;
		return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
	}

	/**
	 * Hour angle at a time of the clock, equation 31. FAO-56 counts longitudes to the
	 * west; here, as everywhere in this project, they are counted to the east.
	 * @param hour standard time, hours since midnight
	 * @param offset of the clock from universal time, hours
	 * @param longitude degrees east
	 * @param day of the year
	 * @return radians, 0 at solar noon, not wrapped
	 */
	public static double hourAngle(double hour, double offset, double longitude, int day) {
		return Math.PI / 12 * (hour + (longitude - 15 * offset) / 15 + seasonalCorrection(day) - 12);
	}

	private static double radians(double latitude) {
		return Math.toRadians(Bounds.check("latitude in degrees", latitude, -90, 90));
	}

}
