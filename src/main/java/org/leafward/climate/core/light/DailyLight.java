package org.leafward.climate.core.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.water.Bounds;
import org.leafward.climate.core.water.Radiation;
import org.leafward.climate.core.water.SunGeometry;
import org.leafward.measure.GeoPoint;

/**
 * The light that plants can use in a day: daily light integral, mol/m² of photons between
 * 400 and 700 nm.
 */
public final class DailyLight {

	/**
	 * Part of the sun's radiation between 400 and 700 nm. Faust and Logan (2018),
	 * HortScience 53:1250-1257, read on an extension page.
	 */
	public static final double PHOTOSYNTHETIC_PART = 0.45;

	private static final double SECONDS_PER_HOUR = 3600;

	private static final double MICRO = 1e-6;

	private DailyLight() {
	}

	/**
	 * Photons in a megajoule of the sun's radiation: 0.45 times 4.57 µmol/J. Other
	 * sources have 2.02 to 2.3.
	 * @return mol/MJ, about 2.06
	 */
	public static double molesPerMegajoule() {
		return PHOTOSYNTHETIC_PART * LightSource.DAYLIGHT.micromolesPerJoule();
	}

	/**
	 * The integral from the sun's radiation.
	 * @param megajoules MJ/m², 0 to 60
	 * @return mol/m²
	 * @throws IllegalArgumentException when the radiation is out of its bounds
	 */
	public static double ofRadiation(double megajoules) {
		return Bounds.check("radiation in MJ/m²", megajoules, 0, 60) * molesPerMegajoule();
	}

	/**
	 * The integral from a mean photon flux density.
	 * @param flux µmol/m²s, 0 to 10,000
	 * @param hours how long, 0 to 24
	 * @return mol/m²
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double ofFlux(double flux, double hours) {
		return Bounds.check("photon flux density in µmol/m²s", flux, 0, 10_000)
				* Bounds.check("light in h", hours, 0, 24) * SECONDS_PER_HOUR * MICRO;
	}

	/**
	 * The most that a day can have, under a clear sky.
	 * @param point the place
	 * @param date the day
	 * @return mol/m²
	 */
	public static double clearSky(GeoPoint point, LocalDate date) {
		double above = SunGeometry.extraterrestrial(point.latitude(), date.getDayOfYear());
		return ofRadiation(Radiation.clearSky(above, point.elevationMetres()));
	}

	/**
	 * What is left under shade.
	 * @param moles mol/m² in the open
	 * @param shade part that is held back, 0 to 1, for example 0.3 under a 30 % cloth
	 * @return mol/m²
	 * @throws IllegalArgumentException when the shade is out of its bounds
	 */
	public static double underShade(double moles, double shade) {
		return moles * (1 - Bounds.check("shade", shade, 0, 1));
	}

	/**
	 * Part of a day's light that comes between two times of the clock, for example from
	 * sunrise to 10:30. It is shared out like the radiation above the atmosphere
	 * (equation 28 of FAO-56), so the thicker air at low sun is not in it: mornings and
	 * evenings have somewhat less in truth.
	 * @param point the place
	 * @param date the day
	 * @param zone whose clock, daylight saving included
	 * @param from from when, null for sunrise
	 * @param to until when, null for sunset; a time before {@code from} gives nothing
	 * @return 0 to 1; 0 in the polar night
	 */
	public static double part(GeoPoint point, LocalDate date, ZoneId zone, @Nullable LocalTime from,
			@Nullable LocalTime to) {
		int day = date.getDayOfYear();
		double whole = SunGeometry.extraterrestrial(point.latitude(), day);
		if (whole <= 0) {
			return 0;
		}
		double clock = zone.getRules().getOffset(date.atTime(LocalTime.NOON)).getTotalSeconds() / SECONDS_PER_HOUR;
		// Islands that keep the date of the other side are a day ahead of their sun.
		double offset = (point.longitude() - Math.IEEEremainder(point.longitude() - 15 * clock, 360)) / 15;
		double begin = (from != null) ? angle(from, offset, point, day) : -Math.PI;
		double end = (to != null) ? angle(to, offset, point, day) : Math.PI;
		return Math.min(1, SunGeometry.extraterrestrial(point.latitude(), day, begin, end) / whole);
	}

	private static double angle(LocalTime time, double offset, GeoPoint point, int day) {
		return SunGeometry.hourAngle(time.toSecondOfDay() / SECONDS_PER_HOUR, offset, point.longitude(), day);
	}

}
