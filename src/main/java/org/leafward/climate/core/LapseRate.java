package org.leafward.climate.core;

import org.leafward.measure.GeoPoint;

/**
 * Temperature against height: 6.5 °C per km, the lapse rate of the ICAO Standard
 * Atmosphere (Doc 7488). It holds for the air at large; what a hollow or a slope does to
 * clear nights is {@link org.leafward.climate.Microclimate}.
 */
public final class LapseRate {

	/** °C per km. */
	public static final double ICAO = 6.5;

	private LapseRate() {
	}

	/**
	 * How much colder it is at a site than at a station because it lies higher.
	 * @param site the site
	 * @param station the station
	 * @return °C, negative when the site lies lower
	 */
	public static double colderBy(GeoPoint site, GeoPoint station) {
		return ICAO * (site.elevationMetres() - station.elevationMetres()) / 1000;
	}

}
