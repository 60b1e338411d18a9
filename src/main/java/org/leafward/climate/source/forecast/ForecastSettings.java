package org.leafward.climate.source.forecast;

import java.net.URI;
import java.util.List;
import java.util.Map;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Where forecasts are fetched; nothing is by default.
 *
 * @param nws the US National Weather Service
 * @param csv address of a forecast as plain CSV for each station identifier
 */
@ConfigurationProperties("leafward.forecast")
public record ForecastSettings(@DefaultValue Nws nws, @DefaultValue Map<String, URI> csv) {

	public ForecastSettings {
		csv = Map.copyOf(csv);
	}

	/**
	 * The US National Weather Service.
	 *
	 * @param stations identifiers of the stations whose forecast is fetched
	 * @param url the service's address
	 */
	public record Nws(@DefaultValue List<String> stations, @DefaultValue("https://api.weather.gov") URI url) {

		public Nws {
			stations = List.copyOf(stations);
		}

	}

}
