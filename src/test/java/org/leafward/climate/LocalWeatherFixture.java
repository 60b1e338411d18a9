package org.leafward.climate;

/** Wires {@link LocalWeather} by hand for tests. */
public final class LocalWeatherFixture {

	private LocalWeatherFixture() {
	}

	/**
	 * Wires it.
	 * @param wired the other services
	 * @return the service
	 */
	public static LocalWeather on(ClimateFixture wired) {
		return new LocalWeather(wired.stations(), wired.tables().stations(), wired.climate());
	}

}
